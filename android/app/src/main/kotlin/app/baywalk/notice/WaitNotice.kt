package app.baywalk.notice

import android.app.Notification
import android.app.NotificationChannel
import android.app.NotificationManager
import android.content.Context
import app.baywalk.R

/**
 * A wait shown while the screen is off: the system counts it down by itself, so nothing of the app needs to run.
 * It only tells. What may be touched is told by a reading, never by the end of a wait.
 */
class WaitNotice(private val context: Context) {
    private val manager = context.getSystemService(NotificationManager::class.java)

    /** Shows a wait that ends at a wall time; it goes away by itself then. */
    fun show(endsAt: Long, now: Long, title: String, words: String, channel: String) {
        if (endsAt <= now) return hide()
        manager.createNotificationChannel(
            NotificationChannel(CHANNEL, channel, NotificationManager.IMPORTANCE_LOW),
        )
        manager.notify(CHANNEL, 0, Notification.Builder(context, CHANNEL)
            .setSmallIcon(R.drawable.mark)
            .setContentTitle(title)
            .setContentText(words)
            .setWhen(endsAt)
            .setUsesChronometer(true)
            .setChronometerCountDown(true)
            .setTimeoutAfter(endsAt - now)
            .setOngoing(true)
            .setVisibility(Notification.VISIBILITY_PUBLIC)
            .build())
    }

    fun hide() = manager.cancel(CHANNEL, 0)

    companion object { const val CHANNEL = "wait" }
}
