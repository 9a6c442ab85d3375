package app.baywalk

import app.baywalk.bay.BayEvent
import app.baywalk.bay.BayModel
import app.baywalk.bay.BayPaths
import app.baywalk.design.Hand
import app.baywalk.design.Look
import app.baywalk.pins.PinsEvent
import app.baywalk.pins.PinsModel
import app.baywalk.rigs.RigsEvent
import app.baywalk.rigs.RigsModel
import app.baywalk.safe.LANGUAGE
import app.baywalk.safe.SafeEvent
import app.baywalk.safe.SafeModel
import app.baywalk.screens.Piece
import app.baywalk.setup.AddingEvent
import app.baywalk.setup.AddingModel
import app.baywalk.setup.FillingEvent
import app.baywalk.setup.FillingModel
import app.baywalk.setup.SetUpEvent
import app.baywalk.setup.SetUpModel
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test

/** A rig set up by a person, photographed, pinned and brought back, over the real core. */
class SetUpTest {
    private fun AddingModel.answer(vararg answers: String) = answers.forEach { send(AddingEvent.Answer(it)) }

    private fun Scene.adding(rig: String, piece: Piece, bay: String) = AddingModel(core, rig, piece, bay) { _, _ -> }

    @Test fun aRigIsSetUpFromNothingPointByPoint() = Scene().use { scene ->
        var opened = ""
        val rigs = RigsModel(scene.core, { rig, new -> if (new) opened = rig }, {}, {})
        rigs.send(RigsEvent.Name("Plover"))
        rigs.send(RigsEvent.From("starter-empty-trailer"))
        assertTrue(rigs.state.refused, opened.isNotEmpty())
        val sources = SetUpModel(scene.core, opened, {}, {})
        sources.state.screen.sources.forEach { sources.send(SetUpEvent.Answer(it.code, "have_not")) }
        assertEquals(setOf("have_not"), sources.state.screen.sources.map { it.presence.code }.toSet())
        sources.send(SetUpEvent.Answer(sources.state.screen.sources.last().code, "have"))
        assertEquals("have", sources.state.screen.sources.last().presence.code)

        val bay = scene.adding(opened, Piece.BAY, "").apply { answer("under the bed", "inside", "725") }.state.added!!.code
        val early = scene.adding(opened, Piece.TERMINAL, bay)
        assertTrue("a terminal needs its device", early.state.refused.isNotEmpty())
        val device = scene.adding(opened, Piece.DEVICE, bay).apply { answer("busbar", "", "dc", "2") }.state.added!!.code
        val terminal = scene.adding(opened, Piece.TERMINAL, bay)
        terminal.answer(device, "push_in", "", "power")
        terminal.send(AddingEvent.Again)
        assertEquals("", terminal.state.refused)
        assertEquals(listOf("${bay}1", "${bay}2"), scene.core.bay(opened, bay, 360.0).points.map { it.code })

        val filling = FillingModel(scene.core, opened, "${bay}2", {}, {})
        val name = filling.state.facts.facts.first { it.column == "name" }
        filling.send(FillingEvent.Open(name))
        filling.send(FillingEvent.Answer("pump feed"))
        assertEquals("pump feed", filling.state.facts.name)
        filling.send(FillingEvent.Open(filling.state.facts.facts.first { it.column == "wire" }))
        filling.send(FillingEvent.Answer("as thick as a thumb"))
        assertTrue("a size that is none", filling.state.refused.isNotEmpty())
    }

    @Test fun aBayIsPhotographedAndPinnedByTaps() = Scene().use { scene ->
        scene.core.start(scene.rig, "Ada", emptyList(), false)
        val code = scene.core.rig(scene.rig, 328.0).screen.bays.first().code
        val file = scene.folder.resolve("panel.png").also { panel.save(it) }
        val photo = { place: String, entered: (List<String>) -> Unit -> entered(scene.core.photoAdd(scene.rig, place, file.path, "").sentences) }
        val bay = BayModel(scene.core, scene.rig, code, 360.0, BayPaths({}, {}, {}, {}, photo))
        bay.send(BayEvent.Photo)
        assertTrue(bay.state.view.photo?.path != null)
        val pins = PinsModel(scene.core, scene.rig, code, 360.0)
        val first = pins.state.point!!.code
        pins.send(PinsEvent.Place(420, 310))
        assertTrue("a tap goes on to the next point", pins.state.point!!.code != first)
        pins.send(PinsEvent.Before)
        pins.send(PinsEvent.Place(500, 500))
        val placed = pins.state.view.pins.single().pin
        assertEquals(Triple(first, 500, 500), Triple(placed.code, placed.across.toInt(), placed.down.toInt()))
        pins.send(PinsEvent.Before)
        pins.send(PinsEvent.TakeOut)
        assertTrue(pins.state.view.pins.isEmpty())
    }

    @Test fun aBackupIsBroughtBackByTheScreens() = Scene().use { scene ->
        val backup = scene.folder.resolve("backup.zip").path
        val phone = StillPhone(backup)
        val safe = SafeModel(scene.core, phone, Look.Day, Hand.Right, {}, {})
        safe.send(SafeEvent.Speaks("es"))
        assertEquals("es", phone.kept(LANGUAGE))
        safe.send(SafeEvent.Take(safe.state.offers.single()))
        assertEquals(listOf("offer"), phone.handedOver)
        phone.handedOver.clear()
        safe.send(SafeEvent.Passphrase("gravel road"))
        safe.send(SafeEvent.BackUp)
        assertEquals(safe.state.refused, listOf(backup), phone.handedOver)
        scene.core.startFrom("sample-trailer", "Later")
        safe.send(SafeEvent.Passphrase("another"))
        safe.send(SafeEvent.Pick)
        assertTrue("a wrong passphrase", safe.state.refused.isNotEmpty() && safe.state.picked == null)
        safe.send(SafeEvent.Passphrase("gravel road"))
        safe.send(SafeEvent.Pick)
        assertEquals(2, scene.core.rigs().rigs.size)
        safe.send(SafeEvent.Restore)
        assertEquals(safe.state.refused, 1, scene.core.rigs().rigs.size)
    }
}
