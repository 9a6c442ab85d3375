package app.baywalk

import android.app.AlarmManager
import android.app.Application
import android.app.Notification
import android.app.NotificationManager
import android.app.PendingIntent
import android.content.Intent
import app.baywalk.notice.NoticePost
import app.baywalk.notice.NoticeReceiver
import app.baywalk.notice.NoticeStore
import app.baywalk.notice.NoticeWords
import app.baywalk.notice.Notices
import app.baywalk.notice.PutOffReceiver
import app.baywalk.notice.Reason
import app.baywalk.notice.RearmReceiver
import org.junit.After
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNotEquals
import org.junit.Assert.assertTrue
import org.junit.Before
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.RuntimeEnvironment
import org.robolectric.Shadows.shadowOf
import org.robolectric.annotation.Config
import org.robolectric.shadows.ShadowLooper
import java.time.LocalDate
import java.time.ZoneId
import java.time.ZonedDateTime
import java.util.TimeZone

/** Notices against a simulated framework, by the manifest that is shipped. */
@RunWith(RobolectricTestRunner::class)
@Config(sdk = [26, 34])
class NoticesTest {
    private val app: Application get() = RuntimeEnvironment.getApplication()
    private val alarms get() = app.getSystemService(AlarmManager::class.java)
    private val shown get() = shadowOf(app.getSystemService(NotificationManager::class.java))
    private val notices get() = Notices(app)
    private val words = NoticeWords("Next walk", "Open", listOf(Reason(7, "No time"), Reason(14, "Part missing")))
    private val far = notice("due-1", "2099-04-01")
    private val past = notice("due-2", "2020-04-01")
    private val zone: TimeZone = TimeZone.getDefault()

    @Before fun zoneOfTheTest() = TimeZone.setDefault(TimeZone.getTimeZone("America/New_York"))
    @After fun zoneAsItWas() = TimeZone.setDefault(zone)

    @Test fun oneAlarmIsArmedAtTheInstantWithoutAskingForExactness() {
        notices.list(listOf(far, notice("due-3", "2099-05-01")), words)
        val alarm = armed().single()
        assertEquals(AlarmManager.RTC_WAKEUP, alarm.type)
        assertEquals(millis("2099-04-01"), alarm.at)
        assertEquals(NoticeReceiver::class.java.name, shadowOf(alarm.operation).savedIntent.component?.className)
    }

    @Test fun listingTwiceKeepsOneAlarmAndListingNothingTakesItAway() {
        notices.list(listOf(far), words)
        notices.list(listOf(notice("due-1", "2099-06-01")), words)
        assertEquals(millis("2099-06-01"), armed().single().at)
        notices.list(emptyList(), words)
        assertEquals(0, armed().size)
    }

    @Test fun theAlarmTellsWhatIsDueOnceAndIsArmedForTheNext() {
        notices.list(listOf(past, far), words)
        send(armed().single().operation)
        val told = shown.allNotifications.single()
        assertEquals("Wren", told.extras.getString(Notification.EXTRA_TITLE))
        assertEquals("due 2020-04-01", told.extras.getString(Notification.EXTRA_TEXT))
        assertEquals(listOf("Open", "No time", "Part missing"), told.actions.map { it.title })
        assertEquals(millis("2099-04-01"), armed().single().at)
        app.getSystemService(NotificationManager::class.java).cancelAll()
        notices.ring(ZonedDateTime.now())
        assertEquals("told once", 0, shown.allNotifications.size)
    }

    @Test fun twoRigsHaveTwoNoticesEachOpeningItsOwn() {
        notices.list(listOf(past, notice("due-9", "2020-04-02")), words)
        notices.ring(ZonedDateTime.now())
        val opened = shown.allNotifications.map { shadowOf(it.contentIntent).savedIntent }
        assertEquals(setOf("rig-of-due-2", "rig-of-due-9"), opened.map { it.getStringExtra(NoticePost.RIG) }.toSet())
        assertTrue(opened.all { it.component?.className == "app.baywalk.MainActivity" })
        assertNotEquals(opened[0].data, opened[1].data)
    }

    @Test fun aReasonPutsOffFromTheNoticeItself() {
        notices.list(listOf(past), words)
        notices.ring(ZonedDateTime.now())
        send(shown.allNotifications.single().actions[2].actionIntent)
        assertEquals(0, shown.allNotifications.size)
        val until = NoticeStore(app).read().later.getValue(past.key).until
        assertEquals(LocalDate.now().plusDays(14), until)
        assertEquals(millis(until.toString()), armed().single().at)
        notices.ring(until.atTime(9, 0).atZone(ZoneId.systemDefault()))
        assertEquals("Part missing", shown.allNotifications.single().extras.getString(Notification.EXTRA_SUB_TEXT))
    }

    @Test fun aKeyOfANoticeThatIsGoneChangesNothing() {
        notices.list(listOf(far), words)
        notices.putOff("due-7@2020-01-01", 0, LocalDate.now())
        notices.putOff(far.key, 99, LocalDate.now())
        app.sendBroadcast(Intent(app, PutOffReceiver::class.java))
        ShadowLooper.idleMainLooper()
        assertEquals(emptyMap<String, Any>(), NoticeStore(app).read().later)
    }

    @Test fun aWalkThatWasDoneTakesItsNoticeAway() {
        notices.list(listOf(past), words)
        notices.ring(ZonedDateTime.now())
        notices.list(listOf(notice("due-2", "2099-04-01")), words)
        assertEquals(0, shown.allNotifications.size)
    }

    @Test fun eachChangeOfThePhoneArmsAnewThroughTheManifest() {
        val changes = listOf(Intent.ACTION_BOOT_COMPLETED, Intent.ACTION_MY_PACKAGE_REPLACED,
            Intent.ACTION_TIME_CHANGED, Intent.ACTION_TIMEZONE_CHANGED)
        for (change in changes) {
            notices.list(listOf(far), words)
            armed().forEach { alarms.cancel(it.operation) }
            val heard = app.packageManager.queryBroadcastReceivers(Intent(change).setPackage(app.packageName), 0)
            assertEquals(change, listOf(RearmReceiver::class.java.name), heard.map { it.activityInfo.name })
            app.sendBroadcast(Intent(change).setPackage(app.packageName))
            ShadowLooper.idleMainLooper()
            assertEquals(change, millis("2099-04-01"), armed().single().at)
        }
    }

    @Test fun anotherZoneMovesTheAlarmToNineThere() {
        notices.list(listOf(far), words)
        TimeZone.setDefault(TimeZone.getTimeZone("America/Los_Angeles"))
        app.sendBroadcast(Intent(Intent.ACTION_TIMEZONE_CHANGED).setPackage(app.packageName))
        ShadowLooper.idleMainLooper()
        assertEquals(millis("2099-04-01"), armed().single().at)
    }

    @Test fun whatAClockThatRanAheadToldIsToldAgainOnItsDay() {
        notices.list(listOf(far), words)
        notices.ring(LocalDate.parse("2099-04-02").atTime(9, 0).atZone(ZoneId.systemDefault()))
        assertEquals("told, and nothing waits", 0, armed().size)
        app.sendBroadcast(Intent(Intent.ACTION_TIME_CHANGED).setPackage(app.packageName))
        ShadowLooper.idleMainLooper()
        assertEquals(millis("2099-04-01"), armed().single().at)
    }

    @Test fun aFlightWestTellsNothingTwice() {
        val told = LocalDate.parse("2099-04-01").atTime(9, 0)
        notices.list(listOf(far), words)
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"))
        notices.ring(told.atZone(ZoneId.systemDefault()))
        val landed = told.atZone(ZoneId.systemDefault()).toInstant()
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Pago_Pago"))
        notices.arm(landed.atZone(ZoneId.systemDefault()))
        assertEquals(0, armed().size)
    }

    @Test fun aPlanThatCanNotBeReadCountsAsEmptyAndIsWrittenAnew() {
        app.getSharedPreferences("notices", 0).edit().putString("plan", "{\"notices\":7").commit()
        notices.arm(ZonedDateTime.now())
        assertEquals(0, armed().size)
        notices.list(listOf(far), words)
        assertEquals(listOf(far), NoticeStore(app).read().notices)
        assertEquals(words, NoticeStore(app).read().words)
    }

    private class Armed(val type: Int, val at: Long, val operation: PendingIntent)

    @Suppress("DEPRECATION") // the simulation's only way to an alarm's operation
    private fun armed() = shadowOf(alarms).scheduledAlarms.map { Armed(it.type, it.triggerAtTime, it.operation) }

    private fun millis(day: String) =
        LocalDate.parse(day).atTime(9, 0).atZone(ZoneId.systemDefault()).toInstant().toEpochMilli()

    private fun send(operation: PendingIntent) {
        operation.send()
        ShadowLooper.idleMainLooper()
    }
}
