package app.baywalk.notice

import android.content.BroadcastReceiver
import android.content.Context
import android.content.Intent
import java.time.LocalDate
import java.time.ZonedDateTime

/** The alarm rang. */
class NoticeReceiver : BroadcastReceiver() {
    override fun onReceive(context: Context, intent: Intent) = Notices(context).ring(ZonedDateTime.now())
}

/** A key of a notice that puts it off was pressed. */
class PutOffReceiver : BroadcastReceiver() {
    override fun onReceive(context: Context, intent: Intent) {
        val key = intent.getStringExtra(NoticePost.KEY) ?: return
        Notices(context).putOff(key, intent.getIntExtra(NoticePost.NUMBER, -1), LocalDate.now())
    }
}

/** The phone was started, the app replaced, or its clock or zone changed: alarms are gone or stand at a wrong time. */
class RearmReceiver : BroadcastReceiver() {
    override fun onReceive(context: Context, intent: Intent) {
        if (intent.action in ACTIONS) Notices(context).arm(ZonedDateTime.now())
    }

    private companion object {
        val ACTIONS = setOf(
            Intent.ACTION_BOOT_COMPLETED, Intent.ACTION_MY_PACKAGE_REPLACED,
            Intent.ACTION_TIME_CHANGED, Intent.ACTION_TIMEZONE_CHANGED,
        )
    }
}
