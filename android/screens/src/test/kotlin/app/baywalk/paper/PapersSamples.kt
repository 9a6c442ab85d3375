package app.baywalk.paper

import app.baywalk.Sample
import app.baywalk.Samples
import app.baywalk.still

val papersSamples = Samples { stage, _ ->
    if (!stage.ended) return@Samples emptyList()
    val state = PapersState(still(stage.scene.core.papers(stage.scene.rig)))
    listOf(Sample("papers") { PapersView(state, {}, {}) })
}
