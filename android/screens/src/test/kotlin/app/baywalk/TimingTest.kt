package app.baywalk

import app.baywalk.plan.PlanEvent
import app.baywalk.plan.PlanModel
import app.baywalk.screens.Ask
import app.baywalk.timing.WhenEvent
import app.baywalk.timing.WhenModel
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Test

/** What is planned and when it is due, by the screens, over the real core. */
class TimingTest {
    @Test fun aPlanIsMadeFollowedAndLeft(): Unit = Scene().use { scene ->
        var walked = 0
        PlanModel(scene.core, scene.rig) { walked++ }.apply {
            send(PlanEvent.Type("10"))
            send(PlanEvent.Make)
            assertTrue(state.refused, state.screen!!.stops.isNotEmpty())
            send(PlanEvent.Follow)
            assertTrue("no walk is open yet", state.refused.isNotEmpty() && walked == 0)
        }
        scene.core.start(scene.rig, "Ada", emptyList(), false)
        PlanModel(scene.core, scene.rig) { walked++ }.apply {
            send(PlanEvent.Type("10"))
            send(PlanEvent.Make)
            send(PlanEvent.Follow)
            assertEquals(state.refused, 1, walked)
            send(PlanEvent.Make)
            assertTrue(state.screen!!.followed)
            send(PlanEvent.Leave)
            assertFalse(state.refused, state.screen!!.followed)
        }
    }

    @Test fun whatIsDueIsNotedRuledPutOffAndHandedOn(): Unit = Scene().use { scene ->
        var calendar = ""
        val model = WhenModel(scene.core, scene.rig) { calendar = it }
        val press = { code: String -> model.send(WhenEvent.Press(model.state.screen.keys.first { it.code == code })) }
        press("odometer")
        model.send(WhenEvent.Answer("as far as the sea"))
        assertTrue(model.state.refused.isNotEmpty())
        model.send(WhenEvent.Answer("41234 mi"))
        assertEquals("", model.state.refused)
        press("rule")
        model.send(WhenEvent.Answer("months"))
        model.send(WhenEvent.Answer("6"))
        assertEquals(model.state.refused, 1, model.state.screen.rules.rules.size)
        press("put_off 1")
        val days = model.state.asking!!.ask as Ask.Choice
        model.send(WhenEvent.Answer(days.options.first().code))
        model.send(WhenEvent.Answer("away until then"))
        assertEquals("", model.state.refused)
        assertTrue(model.state.screen.due.items.any { it.putOff != null })
        press("drop_rule 1")
        assertEquals(0, model.state.screen.rules.rules.size)
        model.send(WhenEvent.Calendar)
        assertTrue(calendar.startsWith("BEGIN:VCALENDAR"))
    }
}
