package app.baywalk.notice

import android.content.Context
import java.time.LocalDate
import java.time.ZonedDateTime

/** Every act on notices: read the plan, change it, keep it, arm the alarm. */
class Notices(private val context: Context) {
    private val store = NoticeStore(context)
    private val post = NoticePost(context)

    /** Takes over what the core lists now; called at each start of the app and after each act that moves a day. */
    fun list(notices: List<Notice>, words: NoticeWords) {
        val before = store.read()
        keep(before.listing(notices, words))
        (before.notices.map { it.key } - notices.map { it.key }.toSet()).forEach(post::hide)
    }

    /** Tells what is due and arms the alarm for the rest. */
    fun ring(now: ZonedDateTime) {
        val plan = store.read()
        val due = plan.due(now)
        due.forEach { post.show(it, plan) }
        keep(plan.telling(due))
    }

    /** Puts a notice off for the reason of that number; one that is not listed any more is only hidden. */
    fun putOff(key: String, number: Int, today: LocalDate) {
        val plan = store.read()
        val reason = plan.words.reasons.getOrNull(number)
        if (reason != null && plan.notices.any { it.key == key }) keep(plan.puttingOff(key, reason, today))
        post.hide(key)
    }

    /** Arms the alarm anew, after a start of the phone or a change of its clock or zone. */
    fun arm(now: ZonedDateTime) = keep(store.read().clockSet(now))

    private fun keep(plan: NoticePlan) {
        store.write(plan)
        NoticeAlarm.arm(context, plan)
    }
}
