package app.baywalk

import app.baywalk.card.CardEvent
import app.baywalk.card.CardModel
import app.baywalk.mobile.Baywalk
import app.baywalk.mobile.SteadyClock
import app.baywalk.plan.PlanEvent
import app.baywalk.plan.PlanModel
import app.baywalk.rig.RigEvent
import app.baywalk.rig.RigModel
import app.baywalk.rig.RigPaths
import app.baywalk.rigs.RigsEvent
import app.baywalk.rigs.RigsModel
import app.baywalk.setup.SetUpEvent
import app.baywalk.setup.SetUpModel
import app.baywalk.timing.WhenEvent
import app.baywalk.timing.WhenModel
import java.io.File
import java.nio.file.Files
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test

/** The scenario of `tests/parity`, driven by the models of Kotlin: its ledger is that of Rust and of Swift, byte by byte. */
class ParityTest {
    private val kept = File("../../tests/parity")

    @Test fun theScenarioGivesTheLedgerThatIsKept() {
        val driver = Driver()
        kept.resolve("walk.jsonl").readLines().forEach { driver.take(lineOf(it)) }
        assertEquals(kept.resolve("digest.txt").readText().trim(), driver.core.verify().digest)
        driver.away()
    }
}

/** One line of the scenario: what a person does, as names and texts without a quote in them. */
private fun lineOf(json: String): Map<String, String> =
    Regex(""""(\w+)":"([^"\\]*)"""").findAll(json).associate { it.groupValues[1] to it.groupValues[2] }

/** Replays the scenario through the models of this shell, by the steady clock. */
private class Driver {
    private val folder = Files.createTempDirectory("baywalk").toFile()
    private val clock = SteadyClock.begin()
    var core = open()
        private set
    private val rigs = RigsModel(core, { opened, _ -> rig = opened }, {}, {})
    private var rig = ""
    private var card: CardModel? = null

    private fun open() = Baywalk.openSteady(folder.resolve("store").path, listOf("en"), clock)

    fun take(line: Map<String, String>) {
        clock.pass(7u)
        val (code, text) = line["code"].orEmpty() to line["text"].orEmpty()
        when (val act = line["do"]) {
            "name" -> rigs.send(RigsEvent.Name(text))
            "from" -> rigs.send(RigsEvent.From(code))
            "presence" -> SetUpModel(core, rig, {}, {}).send(SetUpEvent.Answer(code, text))
            "walk" -> {
                RigModel(core, rig, 328.0, RigPaths({}, {}, {}, {}, {}, {}, {}, {}, {}, {}, {})).send(RigEvent.Walk)
                stand()
            }
            "again" -> {
                core.letGo()
                core = open()
                stand()
            }
            "plan" -> {
                val plan = PlanModel(core, rig) {}
                listOf(PlanEvent.Type(text), PlanEvent.Make, PlanEvent.Follow).forEach(plan::send)
                assertEquals("", plan.state.refused)
                stand()
            }
            "note" -> note(code, text)
            "press" -> press(code, line["kind"])
            "type" -> card!!.send(CardEvent.Type(text))
            "answer" -> card!!.send(CardEvent.Answer(text))
            "refused" -> assertTrue("not refused: $line", card!!.state.refused.isNotEmpty())
            else -> error("no such thing to do: $act")
        }
    }

    private fun note(code: String, text: String) {
        val next = WhenModel(core, rig) {}
        next.send(WhenEvent.Press(next.state.screen.keys.first { it.code == code }))
        next.send(WhenEvent.Answer(text))
        assertEquals("", next.state.refused)
    }

    private fun press(code: String, kind: String?) {
        val card = card!!
        assertEquals(kind, card.state.view.card.kind)
        card.send(CardEvent.Press(card.state.view.card.keys.first { it.code == code }))
    }

    private fun stand() {
        card = CardModel(core, rig, Sight().room, {})
    }

    fun away() {
        core.letGo()
        folder.deleteRecursively()
    }
}
