package app.baywalk.bay

import app.baywalk.Sample
import app.baywalk.Samples
import app.baywalk.Stage
import app.baywalk.mobile.PinPlace
import app.baywalk.panel
import app.baywalk.pins.PinsModel
import app.baywalk.pins.PinsView
import app.baywalk.room
import app.baywalk.save
import app.baywalk.still

val baySamples = Samples { stage, sight ->
    val card = stage.model?.state?.view?.card ?: return@Samples emptyList()
    if (!stage.first("bay", card.kind == "point")) return@Samples emptyList()
    val (code, width) = card.tag!! to sight.room.width
    photographed(stage, code)
    val view = still(stage.scene.core.bay(stage.scene.rig, code, width))
    val bare = BayState(view.copy(photo = null, pins = emptyList()))
    val pins = still(PinsModel(stage.scene.core, stage.scene.rig, code, width).state)
    listOf(
        Sample("bay") { BayScreen(bare, {}, {}) },
        Sample("bay photo") { BayScreen(BayState(view), {}, {}) },
        Sample("bay more") { BayScreen(bare.copy(more = true), {}, {}) },
        Sample("pins") { PinsView(pins, {}, {}) },
    )
}

/** Takes a photo of the bay and puts its first two pins, once. */
private fun photographed(stage: Stage, code: String) {
    val (core, rig) = stage.scene.core to stage.scene.rig
    if (core.bay(rig, code, 360.0).photo != null) return
    val file = stage.scene.folder.resolve("panel.png")
    panel.save(file)
    core.photoAdd(rig, code, file.path, "")
    core.bay(rig, code, 360.0).points.take(2).forEachIndexed { at, point ->
        core.pin(rig, point.code, PinPlace((260 + 400 * at).toUShort(), 400u))
    }
    stage.model!!.refresh()
}
