package app.baywalk.result

import app.baywalk.Sample
import app.baywalk.Samples
import app.baywalk.still

val resultSamples = Samples { stage, _ ->
    if (!stage.ended) return@Samples emptyList()
    val state = ResultState(still(stage.scene.core.result(stage.scene.rig)))
    listOf(Sample("result") { ResultView(state, {}, {}) })
}
