package app.baywalk.rigs

import app.baywalk.Samples
import app.baywalk.Sample
import app.baywalk.still

val rigsSamples = Samples { stage, _ ->
    if (!stage.before) return@Samples emptyList()
    val state = still(RigsModel(stage.scene.core, { _, _ -> }, {}, {}).state)
    listOf(
        Sample("rigs") { RigsView(state, {}) },
        Sample("rigs add") { RigsView(state.copy(adding = true), {}) },
    )
}
