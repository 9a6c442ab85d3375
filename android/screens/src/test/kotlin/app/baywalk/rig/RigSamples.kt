package app.baywalk.rig

import app.baywalk.Sample
import app.baywalk.Samples
import app.baywalk.room
import app.baywalk.still

val rigSamples = Samples { stage, sight ->
    val name = when {
        stage.before -> "rig"
        stage.ended -> "rig walked"
        stage.first("rig in a walk", stage.kind.startsWith("left")) -> "rig in a walk"
        else -> return@Samples emptyList()
    }
    val (core, rig) = stage.scene.core to stage.scene.rig
    val state = RigState(still(core.rig(rig, sight.room.width - 32.0)), core.firstWalk(rig))
    listOf(Sample(name) { RigViewScreen(state, {}, {}) })
}
