package app.baywalk.notice

import java.time.Duration
import java.time.Instant
import java.time.LocalDate
import java.time.LocalTime
import java.time.ZoneId
import java.time.ZonedDateTime

/** What is to be told and when. A day becomes an instant only here, in the zone where the phone is. */
data class NoticePlan(
    val notices: List<Notice> = emptyList(),
    val words: NoticeWords = NoticeWords("", "", emptyList()),
    val told: Set<String> = emptySet(),
    val later: Map<String, Later> = emptyMap(),
) {
    /** When the alarm rings next; nothing where all is told. A time that has passed rings at once. */
    fun rings(zone: ZoneId): Instant? = waiting().map { dayOf(it) }.minOrNull()?.let { at(it, zone) }

    /** What is to be told by now. */
    fun due(now: ZonedDateTime): List<Notice> =
        waiting().filter { !at(dayOf(it), now.zone).isAfter(now.toInstant()) }

    /** The plan once these have been told. */
    fun telling(what: List<Notice>): NoticePlan = copy(told = told + what.map { it.key })

    /**
     * The plan once clock or zone were set: what a clock that ran ahead told before its day waits again. Two days are
     * more than any two zones lie apart, so that a flight tells nothing twice.
     */
    fun clockSet(now: ZonedDateTime): NoticePlan {
        val soon = now.toInstant().plus(Duration.ofDays(2))
        return copy(told = told - notices.filter { at(dayOf(it), now.zone).isAfter(soon) }.map { it.key }.toSet())
    }

    /** The plan with one notice put off for a reason, counted from today. */
    fun puttingOff(key: String, reason: Reason, today: LocalDate): NoticePlan =
        copy(told = told - key, later = later + (key to Later(today.plusDays(reason.days.toLong()), reason.words)))

    /** The plan with what the core lists now; what it lists no longer is forgotten. */
    fun listing(notices: List<Notice>, words: NoticeWords): NoticePlan {
        val keys = notices.map { it.key }.toSet()
        return NoticePlan(notices, words, told intersect keys, later.filterKeys { it in keys })
    }

    private fun waiting() = notices.filter { it.key !in told }

    private fun dayOf(notice: Notice) = later[notice.key]?.until ?: notice.on

    private fun at(day: LocalDate, zone: ZoneId): Instant = day.atTime(HOUR).atZone(zone).toInstant()

    private companion object {
        /** In the morning, while a walk can still be planned for the day; our choice. */
        val HOUR: LocalTime = LocalTime.of(9, 0)
    }
}
