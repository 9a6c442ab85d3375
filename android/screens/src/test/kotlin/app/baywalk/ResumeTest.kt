@file:OptIn(ExperimentalTestApi::class)

package app.baywalk

import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.test.ComposeUiTest
import androidx.compose.ui.test.ExperimentalTestApi
import androidx.compose.ui.test.InternalTestApi
import androidx.compose.ui.test.hasScrollAction
import androidx.compose.ui.test.onFirst
import androidx.compose.ui.test.performTouchInput
import androidx.compose.ui.test.runSkikoComposeUiTest
import androidx.compose.ui.test.swipeUp
import androidx.compose.ui.unit.Density
import app.baywalk.design.LocalScrolled
import app.baywalk.mobile.Baywalk
import app.baywalk.rig.RigState
import app.baywalk.rig.RigViewScreen
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test

/** A list is found again where it was left, after the process was gone. */
class ResumeTest {
    @Test fun aListIsWhereItWasLeft() = Scene().use { scene ->
        val left = seen(scene.core, scene.rig) {
            list().performTouchInput { swipeUp() }
            waitForIdle()
            down()
        }
        assertTrue("$left", left > 50)
        scene.core.letGo()
        Baywalk.open(scene.folder.resolve("store").path, listOf("en")).use { again ->
            assertEquals(left, seen(again, scene.rig) { down() })
            again.keepScrolled("rig Wren", 0u)
            assertEquals(0, seen(again, scene.rig) { down() })
            again.letGo()
        }
    }

    @OptIn(InternalTestApi::class)
    private fun seen(core: Baywalk, rig: String, work: ComposeUiTest.() -> Int): Int {
        var answer = -1
        val sight = Sight(width = 320, height = 640)
        val (state, say) = RigState(core.rig(rig, 288.0)) to core.text()
        runSkikoComposeUiTest(Size(640f, 1280f), Density(2f)) {
            setContent {
                Around(sight, say) { CompositionLocalProvider(LocalScrolled provides CoreScrolled(core)) { RigViewScreen(state, {}, {}) } }
            }
            answer = work()
        }
        return answer
    }

    private fun ComposeUiTest.list() = onAllNodes(hasScrollAction()).onFirst()

    private fun ComposeUiTest.down() = list().fetchSemanticsNode().config[SemanticsProperties.VerticalScrollAxisRange].value().toInt()
}
