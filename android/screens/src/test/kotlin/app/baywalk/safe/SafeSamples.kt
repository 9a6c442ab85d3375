package app.baywalk.safe

import app.baywalk.Offer
import app.baywalk.Sample
import app.baywalk.Samples
import app.baywalk.still

val safeSamples = Samples { stage, sight ->
    if (!stage.before) return@Samples emptyList()
    val offer = Offer("shell-cloud", "shell-cloud-note", true) { }
    val state = SafeState(sight.look, sight.hand, offers = listOf(offer))
    val told = state.copy(told = still(stage.scene.core.verify()).words.take(1))
    listOf(
        Sample("safe") { SafeView(state, {}, {}) },
        Sample("safe told") { SafeView(told, {}, {}) },
        Sample("safe picked") { SafeView(told.copy(picked = "backup.zip"), {}, {}) },
    )
}
