package app.baywalk.plan

import app.baywalk.Sample
import app.baywalk.Samples

val planSamples = Samples { stage, _ ->
    if (!stage.before) return@Samples emptyList()
    val screen = stage.scene.core.plan(stage.scene.rig, 10u).copy(walking = true)
    val planned = PlanState("10", screen)
    listOf(
        Sample("plan") { PlanView(PlanState("10"), {}, {}) },
        Sample("plan made") { PlanView(planned, {}, {}) },
        Sample("plan opened") { PlanView(planned.copy(open = screen.stops.first().points.first().code), {}, {}) },
    )
}
