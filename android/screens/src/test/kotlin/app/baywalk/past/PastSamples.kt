package app.baywalk.past

import app.baywalk.Sample
import app.baywalk.Samples
import app.baywalk.mobile.PastView
import app.baywalk.room
import app.baywalk.still

val pastSamples = Samples { stage, sight ->
    val (core, rig) = stage.scene.core to stage.scene.rig
    val past = { code: String? -> PastState(still(core.past(rig, code, sight.room.width - 32.0).withoutMinutes(code))) }
    when {
        stage.before -> listOf(Sample("past none") { PastScreen(past(null), {}, {}) })
        stage.ended -> {
            val whole = past(null)
            val point = past(core.past(rig, null, 328.0).screen.moved.first().code)
            listOf(Sample("past") { PastScreen(whole, {}, {}) }, Sample("past point") { PastScreen(point, {}, {}) })
        }
        else -> emptyList()
    }
}

/** The minutes of a walk by a machine are other ones each time: the second chart of a rig. */
private fun PastView.withoutMinutes(code: String?): PastView {
    if (code != null) return this
    val kept = { n: Int -> n != 1 }
    return copy(
        screen = screen.copy(charts = ArrayList(screen.charts.filterIndexed { n, _ -> kept(n) })),
        charts = ArrayList(charts.filterIndexed { n, _ -> kept(n) }),
    )
}
