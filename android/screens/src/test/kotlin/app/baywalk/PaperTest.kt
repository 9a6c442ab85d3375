package app.baywalk

import app.baywalk.card.CardModel
import app.baywalk.findings.FindingsEvent
import app.baywalk.findings.FindingsModel
import app.baywalk.mobile.Room
import app.baywalk.paper.PapersEvent
import app.baywalk.paper.PapersModel
import java.io.File
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test

/** What is put on paper and what is decided, by the screens, over the real core. */
class PaperTest {
    /** A walk of one bay, in which one terminal has more conductors than it may. */
    private fun walked(scene: Scene) {
        scene.core.start(scene.rig, "Ada", listOf("H"), false)
        var ended = false
        val model = CardModel(scene.core, scene.rig, Room(360.0, 1.0), { ended = true })
        while (!ended) model.answerFirst()
    }

    @Test fun eachPaperIsWrittenAndHandedOn(): Unit = Scene().use { scene ->
        walked(scene)
        val phone = StillPhone(File(scene.folder, "backup.zip").path)
        val model = PapersModel(scene.core, scene.rig, phone, "written")
        model.state.keys.forEach { key ->
            model.send(PapersEvent.Press(key))
            assertEquals(model.state.refused, listOf("written"), model.state.told)
            val file = File(phone.handedOver.last())
            val begin = file.inputStream().use { String(it.readNBytes(9)) }
            assertTrue(key.code, if (file.extension == "pdf") begin.startsWith("%PDF-1.7") else begin == "<!DOCTYPE")
        }
        assertTrue(model.state.keys.any { it.code.startsWith("sheet ") })
    }

    @Test fun beforeAnyWalkThereAreLabelsAlone(): Unit = Scene().use { scene ->
        val phone = StillPhone(File(scene.folder, "backup.zip").path)
        assertEquals(listOf("labels"), PapersModel(scene.core, scene.rig, phone, "").state.keys.map { it.code })
    }

    @Test fun aFindingIsDecidedAbout(): Unit = Scene().use { scene ->
        walked(scene)
        val model = FindingsModel(scene.core, scene.rig) {}
        val open = model.state.screen.keys.size
        model.send(FindingsEvent.Press(model.state.screen.keys.first()))
        model.send(FindingsEvent.Answer("mended"))
        model.send(FindingsEvent.Answer(""))
        model.send(FindingsEvent.Answer("made new"))
        assertEquals(model.state.refused, "", model.state.refused)
        assertEquals(open - 1, model.state.screen.keys.size)
    }
}
