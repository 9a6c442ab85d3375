package app.baywalk.notice

import java.time.LocalDate

/** Something to be told on a day: the next walk of a rig, or its second look. */
data class Notice(
    /** What it is about, the same for as long as it is asked for: a kind and the rig's name for the machine. */
    val about: String,
    /** The rig's name for the machine, so that a tap opens it. */
    val rig: String,
    /** The local day. */
    val on: LocalDate,
    /** What its owner calls the rig. */
    val title: String,
    /** What is due and why, worded by the core. */
    val words: String,
) {
    /** This notice for this day: another day makes another notice, which is told again. */
    val key get() = "$about@$on"
}

/** Why a notice may be put off and for how long, worded by the core. */
data class Reason(val days: Int, val words: String)

/** A notice that was put off: until when, and why. */
data class Later(val until: LocalDate, val why: String)

/** The words that stand around notices, from the core. */
data class NoticeWords(val channel: String, val open: String, val reasons: List<Reason>)
