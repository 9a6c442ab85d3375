package app.baywalk

import app.baywalk.bay.BayScreen
import app.baywalk.bay.BayState
import app.baywalk.card.CardModel
import app.baywalk.card.CardScreen
import app.baywalk.design.Look
import app.baywalk.result.ResultState
import app.baywalk.result.ResultView
import app.baywalk.rig.RigState
import app.baywalk.rig.RigViewScreen
import app.baywalk.rigs.RigsModel
import app.baywalk.rigs.RigsView
import org.junit.Test
import java.io.File

class ShotsTest {
    private val out = File("target/shots")

    @Test
    fun `every card of a walk is drawn`() {
        Scene().use { scene ->
            val say = scene.core.text()
            val sights = mapOf("day" to Sight(), "night2" to Sight(Look.Night, 2f), "small" to Sight(Look.Dark, 1f, 320, 640))
            val rigs = RigsModel(scene.core, {}, {}, {})
            sights.forEach { (name, sight) ->
                val width = (sight.width - 32).toDouble()
                shoot(sight, say) { RigsView(rigs.state, {}) }.save(File(out, "rigs-$name.png"))
                shoot(sight, say) { RigViewScreen(RigState(scene.core.rig(scene.rig, width)), {}, {}) }.save(File(out, "rig-$name.png"))
            }
            scene.core.start(scene.rig, "Ada", emptyList(), false)
            var ended = false
            val model = CardModel(scene.core, scene.rig, 360.0, { ended = true })
            val seen = mutableSetOf<String>()
            var steps = 0
            while (!ended && steps++ < 3000) {
                val card = model.state.view.card
                if (seen.add(card.kind + "/" + card.keys.first().code)) {
                    sights.forEach { (name, sight) ->
                        val view = if (sight.width == 360) model.state else model.state.copy(view = scene.core.card(scene.rig, sight.width.toDouble()))
                        shoot(sight, say) { CardScreen(view, {}, {}) }.save(File(out, "card-${card.kind}-${card.keys.first().code}-$name.png"))
                    }
                    if (card.kind == "point") shoot(Sight(), say) { BayScreen(BayState(scene.core.bay(scene.rig, card.tag!!, 360.0)), {}, {}) }.save(File(out, "bay-day.png"))
                }
                model.answerFirst()
            }
            shoot(Sight(), say) { ResultView(ResultState(scene.core.result(scene.rig)), {}, {}) }.save(File(out, "result-day.png"))
        }
    }
}
