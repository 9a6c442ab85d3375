package app.baywalk.notice

import android.app.Notification
import android.app.NotificationChannel
import android.app.NotificationManager
import android.app.PendingIntent
import android.content.Context
import android.content.Intent
import android.graphics.drawable.Icon
import android.net.Uri
import app.baywalk.R

/** Shows notices, each with a key to open its rig and one for each reason to put it off. */
class NoticePost(private val context: Context) {
    private val manager = context.getSystemService(NotificationManager::class.java)

    fun show(notice: Notice, plan: NoticePlan) {
        val channel = NotificationChannel(CHANNEL, plan.words.channel, NotificationManager.IMPORTANCE_DEFAULT)
        manager.createNotificationChannel(channel)
        val built = Notification.Builder(context, CHANNEL)
            .setSmallIcon(R.drawable.mark)
            .setContentTitle(notice.title)
            .setContentText(notice.words)
            .setStyle(Notification.BigTextStyle().bigText(notice.words))
            .setSubText(plan.later[notice.key]?.why)
            .setContentIntent(opening(notice))
            .setAutoCancel(true)
            .addAction(action(plan.words.open, opening(notice)))
        plan.words.reasons.forEachIndexed { number, reason ->
            built.addAction(action(reason.words, puttingOff(notice, number)))
        }
        manager.notify(notice.key, 0, built.build())
    }

    fun hide(key: String) = manager.cancel(key, 0)

    private fun action(words: String, does: PendingIntent) =
        Notification.Action.Builder(Icon.createWithResource(context, R.drawable.mark), words, does).build()

    private fun opening(notice: Notice): PendingIntent {
        val app = context.packageManager.getLaunchIntentForPackage(context.packageName) ?: Intent()
        // The data makes each notice's intent its own: extras alone would not tell two rigs apart.
        return PendingIntent.getActivity(context, 0, app.setData(uri(notice.key)).putExtra(RIG, notice.rig), FLAGS)
    }

    private fun puttingOff(notice: Notice, number: Int): PendingIntent {
        val off = Intent(context, PutOffReceiver::class.java).setData(uri("${notice.key}/$number"))
        return PendingIntent.getBroadcast(context, 0, off.putExtra(KEY, notice.key).putExtra(NUMBER, number), FLAGS)
    }

    private fun uri(part: String) = Uri.fromParts("notice", part, null)

    companion object {
        const val CHANNEL = "due"
        /** The rig that a tap opens. */
        const val RIG = "rig"
        internal const val KEY = "key"
        internal const val NUMBER = "number"
        private const val FLAGS = PendingIntent.FLAG_UPDATE_CURRENT or PendingIntent.FLAG_IMMUTABLE
    }
}
