package app.baywalk.findings

import app.baywalk.Sample
import app.baywalk.Samples
import app.baywalk.card.Asking
import app.baywalk.still

val findingsSamples = Samples { stage, _ ->
    if (!stage.ended) return@Samples emptyList()
    val state = FindingsState(still(stage.scene.core.findings(stage.scene.rig)))
    val decide = state.screen.keys.first()
    listOf(
        Sample("findings") { FindingsView(state, {}, {}) },
        Sample("findings decide") { FindingsView(state.copy(asking = Asking(decide)), {}, {}) },
    )
}
