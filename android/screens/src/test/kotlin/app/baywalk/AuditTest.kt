@file:OptIn(ExperimentalTestApi::class)

package app.baywalk

import androidx.compose.ui.geometry.Size
import androidx.compose.ui.graphics.toPixelMap
import androidx.compose.ui.semantics.SemanticsNode
import androidx.compose.ui.test.ExperimentalTestApi
import androidx.compose.ui.test.InternalTestApi
import androidx.compose.ui.test.captureToImage
import androidx.compose.ui.test.onRoot
import androidx.compose.ui.test.runSkikoComposeUiTest
import androidx.compose.ui.unit.Density
import app.baywalk.design.Look
import app.baywalk.design.Hand
import org.junit.Assert.assertEquals
import org.junit.Test

/** Every screen and every kind of card, judged as it is laid out and drawn. */
class AuditTest {
    private val short = listOf(
        Sight(hand = Hand.Left), Sight(Look.Dark, 2f, 320, 640), Sight(Look.Night, 1.5f),
        Sight(width = 780, height = 360), Sight(width = 800, height = 1280),
    )
    private val long = listOf(1f, 1.5f, 2f).flatMap { scale ->
        Look.entries.flatMap { listOf(Sight(it, scale), Sight(it, scale, 320, 640), Sight(it, scale, hand = Hand.Left), Sight(it, scale, 780, 360), Sight(it, scale, 800, 1280)) }
    }
    private val sights = if (System.getenv("BAYWALK_LONG") == "1") long else short

    @Test fun everySampleCanBeReadAndPressed() {
        val faults = mutableListOf<String>()
        eachSample(sights) { sample, sight, say -> faults += judge(sample, sight, say).map { "${sample.name}, ${sight.name}: $it" } }
        assertEquals("${faults.size} faults", "", faults.joinToString("\n"))
    }
}

@OptIn(InternalTestApi::class)
fun judge(sample: Sample, sight: Sight, say: Map<String, String>): List<String> {
    val faults = mutableListOf<String>()
    runSkikoComposeUiTest(Size(sight.width * 2f, sight.height * 2f), Density(2f, sight.scale)) {
        setContent { Around(sight, say, content = sample.content) }
        val merged: SemanticsNode = onRoot().fetchSemanticsNode()
        val single = onRoot(useUnmergedTree = true).fetchSemanticsNode()
        faults += keyFaults(merged, sample.recording)
        faults += clippingFaults(single)
        faults += contrastFaults(single, onRoot().captureToImage().toPixelMap())
    }
    return faults.distinct()
}
