package app.baywalk.bench

import app.baywalk.mobile.Baywalk
import app.baywalk.mobile.CardView
import app.baywalk.mobile.Room
import app.baywalk.screens.Ask
import app.baywalk.screens.Press
import java.io.File

private val room = Room(360.0, 1.0)

/** Turns of the run, and acts of each store in one of them; the first turns warm the machine and are not counted. */
private const val TURNS = 16
private const val WARM = 4
private const val ACTS = 25

/** `MainKt FOLDER SMALL LARGE YEARS`: the folder of three stores, and the rig that is looked at in each. */
fun main(args: Array<String>) {
    val folder = File(args[0])
    println("load of the machine: ${File("/proc/loadavg").readText().substringBeforeLast(' ')}")
    taps(folder, args[1], args[2])
    firstScreen(File(folder, "years"), args[3])
    println("load of the machine: ${File("/proc/loadavg").readText().substringBeforeLast(' ')}")
}

/** Acts of a walk in turns with bare writes, so that all of them meet the same machine. */
private fun taps(folder: File, smallRig: String, largeRig: String) {
    val small = Walk(File(folder, "small"), smallRig)
    val large = Walk(File(folder, "large"), largeRig)
    Raw(File(folder, "raw")).use { raw ->
        val spent = List(3) { mutableListOf<Long>() }
        repeat(TURNS) { turn ->
            listOf(small::tap, large::tap, raw::write).forEachIndexed { at, work ->
                repeat(ACTS) { timed(work).let { if (turn >= WARM) spent[at] += it } }
            }
        }
        val (few, many, bare) = spent.map { it.sorted() }
        println("tap to durable to next card, µs, ${few.size} each      p50     p99")
        listOf("200 points" to few, "5,000 points" to many, "200 bytes written and synced" to bare).forEach { (name, times) ->
            println("%-42s %8d %8d".format(name, times.part(50) / 1000, times.part(99) / 1000))
        }
        println("5,000 ÷ 200 points at p50: %.2f".format(many.part(50).toDouble() / few.part(50)))
    }
    small.close()
    large.close()
}

/** From opening a logbook of many years to the home of a rig, in a process that has opened others before. */
private fun firstScreen(store: File, rig: String) {
    val spent = List(11) {
        timed {
            Baywalk.open(store.path, listOf("en")).use { core ->
                core.rigs()
                core.rig(rig, 328.0)
                core.letGo()
            }
        }
    }.drop(1).sorted()
    val raw = Raw(File(store.parentFile, "raw")).use { raw -> List(100) { timed(raw::write) }.sorted() }
    println("opening, all rigs, one rig, after ${store.walk().sumOf { it.length() } / 1_000_000} MB, µs: p50 ${spent.part(50) / 1000}, most ${spent.last() / 1000}")
    println("200 bytes written and synced, µs: p50 ${raw.part(50) / 1000}")
}

private fun timed(work: () -> Unit): Long {
    val begun = System.nanoTime()
    work()
    return System.nanoTime() - begun
}

private fun List<Long>.part(percent: Int): Long = this[(size - 1) * percent / 100]

/** A walk that answers each card by its first key, as a person does who finds all in order. */
private class Walk(store: File, private val rig: String) : AutoCloseable {
    private val core = Baywalk.open(store.path, listOf("en")).also { it.start(rig, "Ada", emptyList(), false) }
    private var view: CardView = core.card(rig, room)

    fun tap() {
        val card = view.card
        val key = card.keys.first()
        val typed = key.asks.map { ask ->
            when (ask) {
                is Ask.Words -> "outlet at the post"
                is Ask.Number -> if (card.kind != "known_live") "0.2" else if ("AC" in card.title) "121" else "12.8"
                is Ask.Choice -> ask.options.last().code
            }
        }
        view = checkNotNull(core.press(rig, Press(card.act, card.seq, card.point, key.code, typed), room).view) { "the walk ended" }
    }

    override fun close() {
        core.letGo()
        core.close()
    }
}
