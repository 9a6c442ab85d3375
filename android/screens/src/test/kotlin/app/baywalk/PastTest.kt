package app.baywalk

import app.baywalk.design.Hand
import app.baywalk.design.Look
import app.baywalk.past.PastEvent
import app.baywalk.past.PastModel
import app.baywalk.safe.SafeEvent
import app.baywalk.safe.SafeModel
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test

/** The past and the tables of it, by the screens, over the real core. */
class PastTest {
    @Test fun thePastTellsWhatItDrawsAndLeadsToAPoint(): Unit = Scene().use { scene ->
        var asked = ""
        val model = PastModel(scene.core, scene.rig, null, 328.0) { asked = it }
        val view = model.state.view
        assertEquals(3, view.charts.size)
        assertEquals(3, view.screen.charts.size)
        assertTrue(view.charts.all { it.height > 0.0 && it.width == 328.0 && it.parts.isNotEmpty() })
        assertTrue(view.screen.charts.all { it.told.isNotEmpty() } && view.screen.why.isNotEmpty())
        model.send(PastEvent.Point("F8"))
        assertEquals("F8", asked)
        val point = PastModel(scene.core, scene.rig, asked, 328.0) {}.state.view
        assertEquals(1, point.charts.size)
        assertTrue(point.screen.title.startsWith("F8"))
    }

    @Test fun tablesAreWrittenOnceAndHandedOn(): Unit = Scene().use { scene ->
        val phone = StillPhone(scene.folder.resolve("backup.zip").path)
        val safe = SafeModel(scene.core, phone, Look.Day, Hand.Right, {}, {})
        safe.send(SafeEvent.Tables)
        assertTrue(safe.state.refused, safe.state.told.isNotEmpty())
        assertEquals(listOf(phone.tablesPath()), phone.handedOver)
        val bytes = java.io.File(phone.tablesPath()).readBytes()
        assertEquals("PK", String(bytes, 0, 2))
        safe.send(SafeEvent.Tables)
        assertTrue("what is there is not written over", safe.state.refused.isNotEmpty())
        assertEquals(1, phone.handedOver.size)
    }
}
