package app.baywalk.timing

import app.baywalk.Sample
import app.baywalk.Samples
import app.baywalk.card.Asking
import app.baywalk.still

val whenSamples = Samples { stage, _ ->
    if (!stage.before) return@Samples emptyList()
    val state = WhenState(still(stage.scene.core.whenNext(stage.scene.rig)))
    val put = state.screen.keys.first { it.code.startsWith("put_off") }
    listOf(
        Sample("when") { WhenView(state, {}, {}) },
        Sample("when put off") { WhenView(state.copy(asking = Asking(put)), {}, {}) },
    )
}
