package app.baywalk.notice

import android.app.AlarmManager
import android.app.PendingIntent
import android.content.Context
import android.content.Intent
import java.time.ZoneId

/** The one alarm of the app: it rings for whatever is told next, and is armed again each time. */
object NoticeAlarm {
    /** Arms the alarm for the next notice, or takes it away where nothing waits. */
    fun arm(context: Context, plan: NoticePlan) {
        val alarms = context.getSystemService(AlarmManager::class.java)
        val rings = plan.rings(ZoneId.systemDefault())
        if (rings == null) {
            alarms.cancel(operation(context))
        } else {
            // Some minutes late is soon enough for a walk, so no permission for exact alarms is asked.
            alarms.setAndAllowWhileIdle(AlarmManager.RTC_WAKEUP, rings.toEpochMilli(), operation(context))
        }
    }

    private fun operation(context: Context): PendingIntent = PendingIntent.getBroadcast(
        context, 0, Intent(context, NoticeReceiver::class.java),
        PendingIntent.FLAG_UPDATE_CURRENT or PendingIntent.FLAG_IMMUTABLE,
    )
}
