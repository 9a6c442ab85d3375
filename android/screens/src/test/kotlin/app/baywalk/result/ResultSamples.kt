package app.baywalk.result

import app.baywalk.Sample
import app.baywalk.Samples
import app.baywalk.room
import app.baywalk.still

val resultSamples = Samples { stage, sight ->
    if (!stage.ended) return@Samples emptyList()
    val state = ResultState(still(stage.scene.core.result(stage.scene.rig, sight.room.width - 32.0)))
    listOf(Sample("result") { ResultScreen(state, {}, {}) })
}
