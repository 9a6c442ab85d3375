package app.baywalk

import app.baywalk.mobile.Baywalk
import app.baywalk.notice.Notice
import app.baywalk.notice.NoticeWords
import app.baywalk.notice.Reason
import java.time.LocalDate

private const val WEEK = 7

/** What the core wants told, one notice a rig and day, the nearest first. */
fun noticesOf(core: Baywalk): List<Notice> =
    core.notices().map { Notice(it.rig, it.rig, LocalDate.parse(it.on), it.title, it.words) }

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
