package app.baywalk

import app.baywalk.card.CardEvent
import app.baywalk.card.CardModel
import app.baywalk.card.after
import app.baywalk.card.answers
import app.baywalk.mobile.Baywalk
import app.baywalk.mobile.Room
import app.baywalk.screens.Ask
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNotEquals
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Test

/** A walk by the model of the card screen, over the real core. */
class WalkTest {
    private val room = Room(360.0, 1.0)

    private fun walking(work: (Scene, CardModel) -> Unit) = Scene().use { scene ->
        scene.core.start(scene.rig, "Ada", emptyList(), false)
        work(scene, CardModel(scene.core, scene.rig, room, {}))
    }

    private fun CardModel.key(code: String) = state.view.card.keys.first { it.code == code }

    private fun CardModel.untilTorque() = until("point") { model -> model.state.answers.any { it.code == "moved" && it.asks.isNotEmpty() } }

    @Test
    fun `a held point is one tap`() = walking { _, model ->
        model.untilTorque()
        val point = model.state.view.card.point
        model.send(CardEvent.Press(model.key("held")))
        assertNotEquals(point, model.state.view.card.point)
    }

    @Test
    fun `a moved point is three taps`() = walking { _, model ->
        model.untilTorque()
        val point = model.state.view.card.point
        model.send(CardEvent.Press(model.key("moved")))
        val angle = (model.state.asking!!.ask as Ask.Choice).options.first()
        model.send(CardEvent.Answer(angle.code))
        assertNotEquals(point, model.state.view.card.point)
        // What moved is set once all points of the bay are checked, with the tool at its full value.
        model.until("left")
        assertEquals(point, model.state.view.card.point)
        model.send(CardEvent.Press(model.state.answers.first()))
        assertNotEquals(point, model.state.view.card.point)
    }

    @Test
    fun `undo brings the card back`() = walking { _, model ->
        model.untilTorque()
        val point = model.state.view.card.point
        model.send(CardEvent.Press(model.key("held")))
        model.send(CardEvent.Press(model.key("undo")))
        assertEquals(point, model.state.view.card.point)
    }

    @Test
    fun `a refused reading changes nothing and says why`() = walking { _, model ->
        model.until("read")
        val seq = model.state.view.card.seq
        model.send(CardEvent.Type(""))
        model.send(CardEvent.Press(model.state.answers.first()))
        assertTrue(model.state.refused, model.state.refused.endsWith("."))
        assertEquals(seq, model.state.view.card.seq)
    }

    @Test
    fun `a question can be left`() = walking { _, model ->
        model.untilTorque()
        model.send(CardEvent.Press(model.key("moved")))
        model.send(CardEvent.Leave)
        assertNull(model.state.asking)
        assertEquals("point", model.state.view.card.kind)
    }

    @Test
    fun `the exact card is there when the process comes back`() = walking { scene, model ->
        model.untilTorque()
        val card = model.state.view.card
        scene.core.letGo()
        Baywalk.open(scene.folder.resolve("store").path, listOf("en")).use { again ->
            val back = CardModel(again, scene.rig, room, {}).state.view.card
            assertEquals(card.point, back.point)
            assertEquals(card.seq, back.seq)
            again.letGo()
        }
    }

    @Test
    fun `a wait runs on while nothing is pressed and no screen is lit`() = walking { _, model ->
        model.until("open") { it.state.view.card.waits }
        val before = model.state.view.card
        Thread.sleep(1_100)
        assertEquals(before, model.state.view.card)
        model.tick()
        assertNotEquals(before.cautions, model.state.view.card.cautions)
        assertEquals(before.seq, model.state.view.card.seq)
    }

    @Test
    fun `a photo is taken in where the card is`() = walking { scene, model ->
        model.untilTorque()
        val point = model.state.view.card.point
        val file = scene.folder.resolve("photo.png").apply { writeBytes(pixel) }
        val photos = CardModel(scene.core, scene.rig, room, {}, { place, entered -> entered(scene.core.photoAdd(scene.rig, place, file.path, "").sentences) })
        photos.send(CardEvent.Press(photos.key("photo")))
        assertEquals("", photos.state.refused)
        assertEquals(point, photos.state.view.card.point)
        assertEquals(1u, scene.core.verify().photos.entered)
        assertFalse(scene.core.verify().photos.missing > 0u)
    }

    @Test
    fun `the pad takes only what can be a number`() {
        assertEquals("0.", after("", "."))
        assertEquals("1.2", after("1.2", "."))
        assertEquals("1", after("12", "<"))
        assertEquals("123456789", after("123456789", "0"))
    }
}

/** A PNG of one grey pixel. */
private val pixel = (
    "89504e470d0a1a0a0000000d49484452000000010000000108000000003a7e9b55" +
        "0000000a49444154789c636000000002000148afa4710000000049454e44ae426082"
    ).chunked(2).map { it.toInt(16).toByte() }.toByteArray()
