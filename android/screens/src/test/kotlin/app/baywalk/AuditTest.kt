@file:OptIn(ExperimentalTestApi::class)

package app.baywalk

import androidx.compose.runtime.Composable
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.graphics.toPixelMap
import androidx.compose.ui.semantics.SemanticsNode
import androidx.compose.ui.test.ExperimentalTestApi
import androidx.compose.ui.test.InternalTestApi
import androidx.compose.ui.test.captureToImage
import androidx.compose.ui.test.onRoot
import androidx.compose.ui.test.runSkikoComposeUiTest
import androidx.compose.ui.unit.Density
import app.baywalk.bay.BayScreen
import app.baywalk.bay.BayState
import app.baywalk.card.CardModel
import app.baywalk.card.CardScreen
import app.baywalk.card.grades
import app.baywalk.design.Look
import app.baywalk.mobile.Room
import app.baywalk.result.ResultState
import app.baywalk.result.ResultView
import app.baywalk.rig.RigState
import app.baywalk.rig.RigViewScreen
import app.baywalk.rigs.RigsModel
import app.baywalk.rigs.RigsView
import app.baywalk.safe.SafeModel
import app.baywalk.safe.SafeView
import app.baywalk.torque.TorqueModel
import app.baywalk.torque.TorqueView
import app.baywalk.design.Hand
import org.junit.Assert.assertEquals
import org.junit.Test

/** A screen to be judged, and the words of its keys that record a check. */
class Sample(val name: String, val recording: List<String> = emptyList(), val content: @Composable () -> Unit)

/** Every screen and every kind of card, judged as it is laid out and drawn. */
class AuditTest {
    private val short = listOf(Sight(), Sight(Look.Dark, 2f, 320, 640), Sight(Look.Night, 1.5f))
    private val long = listOf(1f, 1.5f, 2f).flatMap { scale ->
        Look.entries.flatMap { listOf(Sight(it, scale), Sight(it, scale, 320, 640), Sight(it, scale, hand = Hand.Left)) }
    }
    private val sights = if (System.getenv("BAYWALK_LONG") == "1") long else short

    @Test fun everySampleCanBeReadAndPressed() {
        val faults = sights.flatMap { sight ->
            Scene().use { scene ->
                val say = scene.core.text()
                samples(scene, sight).flatMap { sample ->
                    judge(sample, sight, say).map { "${sample.name}, ${sight.look} ${sight.width} × ${sight.height} at ${sight.scale}: $it" }
                }
            }
        }
        assertEquals("${faults.size} faults", "", faults.joinToString("\n"))
    }
}

@OptIn(InternalTestApi::class)
fun judge(sample: Sample, sight: Sight, say: Map<String, String>): List<String> {
    val faults = mutableListOf<String>()
    runSkikoComposeUiTest(Size(sight.width * 2f, sight.height * 2f), Density(2f, sight.scale)) {
        setContent { Around(sight, say, sample.content) }
        val merged: SemanticsNode = onRoot().fetchSemanticsNode()
        val single = onRoot(useUnmergedTree = true).fetchSemanticsNode()
        faults += keyFaults(merged, sample.recording)
        faults += clippingFaults(single)
        faults += contrastFaults(single, onRoot().captureToImage().toPixelMap())
    }
    return faults.distinct()
}

/** One of each screen, and one card of each kind and first answer, from a walk through the sample rig. */
fun samples(scene: Scene, sight: Sight): List<Sample> {
    val (core, rig) = scene.core to scene.rig
    val width = (sight.width - 32).toDouble()
    val room = Room(sight.width.toDouble(), sight.scale.toDouble())
    val rigs = RigsModel(core, {}, {}, {}).state
    val home = RigState(core.rig(rig, width))
    val safe = SafeModel(core, { "" }, sight.look, Hand.Right, {}, {}).state
    val torque = TorqueModel(core).state
    val found = mutableListOf(
        Sample("rigs") { RigsView(rigs, {}) },
        Sample("add a rig") { RigsView(rigs.copy(adding = true), {}) },
        Sample("rig") { RigViewScreen(home, {}, {}) },
        Sample("safe") { SafeView(safe, {}, {}) },
        Sample("torque") { TorqueView(torque, {}, {}) },
    )
    core.start(rig, "Ada", emptyList(), false)
    var ended = false
    val model = CardModel(core, rig, room, { ended = true })
    val seen = mutableSetOf<String>()
    while (!ended) {
        val state = model.state
        val card = state.view.card
        if (seen.add("${card.kind}/${card.keys.first().code}")) {
            val recording = card.keys.filter { it.code in grades }.map { it.word }
            found += Sample("${card.kind} ${card.keys.first().code}", recording) { CardScreen(state, {}, {}) }
            if (seen.size == 3) found += Sample("more acts") { CardScreen(state.copy(more = true), {}, {}) }
            card.tag?.takeIf { card.kind == "point" && seen.add("bay") }?.let { tag ->
                val bay = BayState(core.bay(rig, tag, sight.width.toDouble()))
                found += Sample("bay") { BayScreen(bay, {}, {}) }
            }
        }
        model.answerFirst()
    }
    val result = ResultState(core.result(rig))
    found += Sample("result") { ResultView(result, {}, {}) }
    return found
}
