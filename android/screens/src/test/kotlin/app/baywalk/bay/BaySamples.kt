package app.baywalk.bay

import app.baywalk.Sample
import app.baywalk.Samples
import app.baywalk.room
import app.baywalk.still

val baySamples = Samples { stage, sight ->
    val card = stage.model?.state?.view?.card ?: return@Samples emptyList()
    if (!stage.first("bay", card.kind == "point")) return@Samples emptyList()
    val state = BayState(still(stage.scene.core.bay(stage.scene.rig, card.tag!!, sight.room.width)))
    listOf(Sample("bay") { BayScreen(state, {}, {}) })
}
