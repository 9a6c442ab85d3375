@file:OptIn(ExperimentalTestApi::class)

package app.baywalk

import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.semantics.getOrNull
import androidx.compose.ui.test.ExperimentalTestApi
import androidx.compose.ui.test.InternalTestApi
import androidx.compose.ui.test.onRoot
import androidx.compose.ui.test.runSkikoComposeUiTest
import androidx.compose.ui.unit.Density
import app.baywalk.card.CardModel
import app.baywalk.card.CardScreen
import app.baywalk.card.CardState
import app.baywalk.design.Hand
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test

/** The four grades and the foot row lie by the thumb of either hand, and are told in one order. */
class HandTest {
    private val words = listOf("Held", "Moved", "Loose", "Apart")

    @Test fun theKeysAreMirroredForTheLeftHand() = withCard { state, say ->
        val (right, left) = Hand.entries.map { placed(state, say, it) }
        (words + listOf("Undo", "Skip")).forEach { word ->
            val mirrored = right.getValue(word).let { Rect(720f - it.right, it.top, 720f - it.left, it.bottom) }
            assertEquals(word, mirrored, left.getValue(word))
        }
        val (held, apart) = right.getValue("Held") to right.getValue("Apart")
        assertTrue("Held is under the right thumb, Apart at the far corner", held.left > apart.right && held.top > apart.bottom)
        assertEquals("none is easier than the truth", 1, words.map { right.getValue(it).size }.distinct().size)
    }

    @Test fun aScreenReaderSaysThemInOrder() = withCard { state, say ->
        val told = seen(state, say, Hand.Left).filter { it.word in words }
        assertEquals(words, told.sortedBy { it.index!! }.map { it.word })
    }

    private fun withCard(work: (CardState, Map<String, String>) -> Unit) = Scene().use { scene ->
        scene.core.start(scene.rig, "Ada", emptyList(), false)
        val model = CardModel(scene.core, scene.rig, Sight().room, {})
        model.until("point") { it.state.view.card.keys.any { key -> key.code == "moved" && key.asks.isNotEmpty() } }
        work(model.state, scene.core.text())
    }

    private fun placed(state: CardState, say: Map<String, String>, hand: Hand): Map<String, Rect> =
        seen(state, say, hand).groupBy { it.word }.mapValues { it.value.first().place }

    @OptIn(InternalTestApi::class)
    private fun seen(state: CardState, say: Map<String, String>, hand: Hand): List<Seen> {
        var found = emptyList<Seen>()
        runSkikoComposeUiTest(Size(720f, 1560f), Density(2f)) {
            setContent { Around(Sight(hand = hand), say) { CardScreen(state, {}, {}) } }
            found = onRoot().fetchSemanticsNode().all().map {
                Seen(it.said().substringBefore(','), it.boundsInRoot, it.config.getOrNull(SemanticsProperties.TraversalIndex))
            }
        }
        return found
    }

    private class Seen(val word: String, val place: Rect, val index: Float?)
}
