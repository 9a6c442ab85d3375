package app.baywalk

import app.baywalk.mobile.Baywalk
import app.baywalk.notice.Notice
import app.baywalk.notice.NoticeWords
import app.baywalk.notice.Reason
import java.time.LocalDate

private const val WEEK = 7

/** What the core wants told: the next walk of each rig, and its second look where one waits. */
fun noticesOf(core: Baywalk): List<Notice> = core.rigs().rigs.flatMap { rig ->
    val due = core.due(rig.id)
    val second = due.secondLook?.let { Notice("second-${rig.id}", rig.id, LocalDate.parse(it.on), due.rig, it.words) }
    listOfNotNull(Notice("walk-${rig.id}", rig.id, LocalDate.parse(due.on), due.rig, due.words), second)
}

/** The words around notices, in the person's language. */
fun noticeWordsOf(core: Baywalk): NoticeWords {
    val said = core.text()
    val say = { key: String -> said[key] ?: key }
    return NoticeWords(
        say("shell-notice-channel"),
        say("shell-notice-open"),
        listOf(Reason(WEEK, say("shell-notice-no-time")), Reason(2 * WEEK, say("shell-notice-part-missing"))),
    )
}
