package app.baywalk

import android.app.Application
import android.app.Notification
import android.app.NotificationManager
import android.content.Intent
import android.os.Build
import android.os.Vibrator
import app.baywalk.feel.Feel
import app.baywalk.notice.WaitNotice
import app.baywalk.rest.Asleep
import org.junit.Assert.assertArrayEquals
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNull
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.RuntimeEnvironment
import org.robolectric.Shadows.shadowOf
import org.robolectric.annotation.Config

/** Waits, touch and sleep, against a simulated framework. */
@RunWith(RobolectricTestRunner::class)
@Config(sdk = [26, 34])
class PhoneTest {
    private val app: Application get() = RuntimeEnvironment.getApplication()
    private val shown get() = shadowOf(app.getSystemService(NotificationManager::class.java))

    @Test fun aWaitIsCountedDownByTheSystemAndGoesAwayAtItsEnd() {
        val now = 1_800_000_000_000L
        WaitNotice(app).show(now + 300_000, now, "Bay E", "Hands off", "Waits")
        val wait = shown.allNotifications.single()
        assertEquals(now + 300_000, wait.`when`)
        assertEquals(300_000L, wait.timeoutAfter)
        assertEquals(true, wait.extras.getBoolean(Notification.EXTRA_CHRONOMETER_COUNT_DOWN))
        WaitNotice(app).show(now, now, "Bay E", "Hands off", "Waits")
        assertEquals("a wait that is over is not shown", 0, shown.allNotifications.size)
    }

    @Test fun eachAnswerIsFeltByItsCount() {
        val vibrator = shadowOf(app.getSystemService(Vibrator::class.java))
        vibrator.setHasVibrator(true)
        val beats = mapOf(
            Feel.ONE to longArrayOf(0, 60), Feel.TWO to longArrayOf(0, 60, 120, 60),
            Feel.THREE to longArrayOf(0, 60, 120, 60, 120, 60), Feel.LONG to longArrayOf(0, 400),
            Feel.REFUSED to longArrayOf(0, 400, 120, 60),
        )
        for (feel in Feel.values()) {
            feel.play(app)
            assertArrayEquals(feel.name, beats.getValue(feel), vibrator.pattern)
        }
    }

    @Test fun thePermissionForNoticesIsAskedForWhereItIsNeeded() {
        val needed = if (Build.VERSION.SDK_INT >= 33) "android.permission.POST_NOTIFICATIONS" else null
        assertEquals(needed, Asleep(app).permission())
        shadowOf(app).grantPermissions("android.permission.POST_NOTIFICATIONS")
        assertNull(Asleep(app).permission())
    }

    @Test fun thePageAgainstBeingPutAsleepIsThatOfTheApp() {
        assertEquals(Intent.ACTION_AUTO_REVOKE_PERMISSIONS, Asleep(app).page().action)
        assertEquals("package:app.baywalk", Asleep(app).page().dataString)
        if (Build.VERSION.SDK_INT < 30) assertEquals(false, Asleep(app).possible())
    }
}
