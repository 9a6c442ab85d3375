package app.baywalk

import app.baywalk.notice.Notice
import app.baywalk.notice.NoticePlan
import app.baywalk.notice.NoticeWords
import app.baywalk.notice.Reason
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Test
import java.time.Instant
import java.time.LocalDate
import java.time.ZoneId
import java.time.ZonedDateTime

/** Days, zones and clocks, by instants worked out by hand from the zones' published rules. */
class NoticePlanTest {
    private val york = ZoneId.of("America/New_York")
    private val spring = notice("due-1", "2027-04-01")
    private val plan = NoticePlan(listOf(spring))

    @Test fun aDayRingsAtNineWhereThePhoneIs() {
        assertEquals(Instant.parse("2027-04-01T13:00:00Z"), plan.rings(york))
        assertEquals(Instant.parse("2027-04-01T16:00:00Z"), plan.rings(ZoneId.of("America/Los_Angeles")))
        assertEquals(Instant.parse("2027-03-31T19:00:00Z"), plan.rings(ZoneId.of("Pacific/Kiritimati")))
    }

    @Test fun theClockThatWasPutForwardMovesTheInstantNotTheHour() {
        val saturday = NoticePlan(listOf(notice("a", "2027-03-13")))
        val sunday = NoticePlan(listOf(notice("a", "2027-03-14")))
        assertEquals(Instant.parse("2027-03-13T14:00:00Z"), saturday.rings(york))
        assertEquals(Instant.parse("2027-03-14T13:00:00Z"), sunday.rings(york))
    }

    @Test fun theEarliestOfAllRings() {
        val both = plan.copy(notices = listOf(spring, notice("settle-1", "2027-02-28")))
        assertEquals(Instant.parse("2027-02-28T14:00:00Z"), both.rings(york))
    }

    @Test fun nothingIsDueAMillisecondBeforeAndAllIsDueAtTheInstant() {
        val nine = ZonedDateTime.of(2027, 4, 1, 9, 0, 0, 0, york)
        assertEquals(emptyList<Notice>(), plan.due(nine.minusNanos(1_000_000)))
        assertEquals(listOf(spring), plan.due(nine))
        assertEquals(listOf(spring), plan.due(nine.plusYears(2)))
    }

    @Test fun whatWasToldIsNotToldAgain() {
        val told = plan.telling(listOf(spring))
        assertNull(told.rings(york))
        assertEquals(emptyList<Notice>(), told.due(ZonedDateTime.of(2028, 1, 1, 0, 0, 0, 0, york)))
    }

    @Test fun aNoticePutOffOverTheEndOfTheYearRingsAnewWithItsReason() {
        val late = notice("due-1", "2027-12-28")
        val off = NoticePlan(listOf(late)).telling(listOf(late))
            .puttingOff(late.key, Reason(7, "No time"), LocalDate.parse("2027-12-28"))
        assertEquals(Instant.parse("2028-01-04T14:00:00Z"), off.rings(york))
        assertEquals("No time", off.later.getValue(late.key).why)
    }

    @Test fun aNewListForgetsWhatItLacksAndKeepsWhatWasToldOfTheRest() {
        val other = notice("due-2", "2027-05-01")
        val before = NoticePlan(listOf(spring, other)).telling(listOf(spring, other))
        val after = before.listing(listOf(spring), NoticeWords("c", "o", emptyList()))
        assertEquals(setOf(spring.key), after.told)
        val moved = after.listing(listOf(notice("due-1", "2028-04-01")), NoticeWords("c", "o", emptyList()))
        assertTrue("another day is told again", moved.told.isEmpty())
        assertEquals(Instant.parse("2028-04-01T13:00:00Z"), moved.rings(york))
    }
}

internal fun notice(about: String, on: String) = Notice(about, "rig-of-$about", LocalDate.parse(on), "Wren", "due $on")
