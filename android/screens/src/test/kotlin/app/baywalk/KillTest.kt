package app.baywalk

import app.baywalk.mobile.Baywalk
import app.baywalk.mobile.CardView
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNotEquals
import org.junit.Assert.assertTrue
import org.junit.Test
import java.io.File
import java.util.concurrent.TimeUnit
import kotlin.random.Random

/**
 * The process is killed for good (signal 9) at random moments of a walk, as a phone kills an app behind the camera. What a
 * person has seen is there afterwards, and the card is the one that stood. `BAYWALK_LONG=1` kills many times.
 */
class KillTest {
    private val kills = if (System.getenv("BAYWALK_LONG") == "1") 200 else 12

    @Test fun whatWasShownIsThereAfterAKill() = place { folder, rig ->
        val random = Random(7)
        var taps = 0
        repeat(kills) {
            val shown = killed(folder, rig, random.nextInt(1, 60), random.nextLong(8_000_000))
            taps += shown.size
            assertEquals("", judged(folder, rig, shown))
        }
        assertTrue("$taps cards in $kills kills", taps > kills)
    }

    @Test fun aCardShownBeforeItsActIsKeptIsFound() = place { folder, rig ->
        val shown = killed(folder, rig, Int.MAX_VALUE, 0, "early")
        assertNotEquals("", judged(folder, rig, shown))
    }

    private fun place(work: (File, String) -> Unit) = Scene().use { scene ->
        scene.core.letGo()
        work(scene.folder, scene.rig)
    }

    /** Starts the walk in a process of its own and kills it so many cards and nanoseconds later; gives what it had shown. */
    private fun killed(folder: File, rig: String, cards: Int, nanos: Long, vararg how: String): List<String> {
        val java = File(System.getProperty("java.home"), "bin/java").path
        val path = System.getProperty("surefire.test.class.path") ?: System.getProperty("java.class.path")
        val library = System.getProperty("jna.library.path")
        val command = listOf(java, "-Djna.library.path=$library", "-cp", path, "app.baywalk.KilledWalkKt", folder.path, rig) + how
        val child = ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start()
        val lines = child.inputStream.bufferedReader()
        val shown = mutableListOf<String>()
        while (shown.size < cards) shown += lines.readLine() ?: break
        val until = System.nanoTime() + nanos
        while (System.nanoTime() < until) Thread.onSpinWait()
        child.toHandle().destroyForcibly() // by its handle, which leaves what it printed to be read
        assertTrue("it ends when it is killed", child.waitFor(30, TimeUnit.SECONDS))
        return shown + lines.readLines().filter { it.endsWith(END) }
    }

    /** What is wrong with the logbook after a kill; nothing where all that was shown is there. */
    private fun judged(folder: File, rig: String, shown: List<String>): String =
        Baywalk.open(folder.resolve("store").path, listOf("en")).use { core ->
            val last = shown.last()
            val (told, there) = last.substringBefore(' ').toULong() to core.rig(rig, 328.0)
            val now = if (there.walking) told(core.card(rig, Sight().room)) else null
            val whole = core.verify().whole
            core.letGo()
            when {
                !whole -> "the logbook is not whole"
                now == null -> "the walk is gone".takeIf { "end" !in last }.orEmpty()
                now.substringBefore(' ').toULong() < told -> "shown was $last, there is $now"
                now.substringBefore(' ').toULong() > told + 1u -> "more than one act was not shown: $last, then $now"
                now.substringBefore(' ').toULong() == told && now != last -> "another card: shown was $last, there is $now"
                else -> ""
            }
        }
}

/** Ends each line, so that one that was cut off is no card. */
const val END = " ."

/** A card that is shown, in a line. */
fun told(view: CardView): String = "${view.card.seq} ${view.card.kind} ${view.card.point} ${view.card.title}$END"
