package app.baywalk

import androidx.compose.runtime.Composable
import app.baywalk.bay.baySamples
import app.baywalk.card.CardModel
import app.baywalk.card.cardSamples
import app.baywalk.findings.findingsSamples
import app.baywalk.mobile.Room
import app.baywalk.paper.papersSamples
import app.baywalk.past.pastSamples
import app.baywalk.plan.planSamples
import app.baywalk.result.resultSamples
import app.baywalk.rig.rigSamples
import app.baywalk.rigs.rigsSamples
import app.baywalk.safe.safeSamples
import app.baywalk.screens.Key
import app.baywalk.setup.setUpSamples
import app.baywalk.timing.whenSamples
import app.baywalk.torque.torqueSamples

/** Every screen that is drawn, judged and kept as a picture; a new screen joins here. */
val everyScreen: List<Samples> = listOf(rigsSamples, rigSamples, cardSamples, baySamples, resultSamples, safeSamples, setUpSamples, planSamples, whenSamples, pastSamples, torqueSamples, findingsSamples, papersSamples)

/** A screen in one state, and the words of its keys that record a check. */
class Sample(val name: String, val recording: List<String> = emptyList(), val content: @Composable () -> Unit)

/** The samples of a screen, at those stages of a walk at which it has any. */
fun interface Samples {
    fun of(stage: Stage, sight: Sight): List<Sample>
}

/** Where the walk through the sample rig stands: [model] is at a card of a kind not shown before, none before it and after. */
class Stage(val scene: Scene, val model: CardModel?, val ended: Boolean, private val seen: MutableSet<String>) {
    val before: Boolean get() = model == null && !ended

    /** What this card is, where it is the first of its kind. */
    val kind: String by lazy { kindOf(model!!) }

    /** Whether this is the first stage at which something is asked for. */
    fun first(name: String, fits: Boolean): Boolean = fits && (name in here || seen.add(name)).also { if (it) here += name }

    private val here = mutableSetOf<String>()
}

/** The room that a sight leaves to a card. */
val Sight.room: Room get() = Room(minOf(width, 560).toDouble(), scale.toDouble())

/** Hands over every sample in every sight, in one walk for all of them. */
fun eachSample(sights: List<Sight>, look: (Sample, Sight, Map<String, String>) -> Unit) = Scene().use { scene ->
    val say = scene.core.text()
    eachStage(scene) { stage ->
        sights.forEach { sight -> everyScreen.flatMap { it.of(stage, sight) }.forEach { look(it, sight, say) } }
    }
}

/** Walks the sample rig: the first joint that is checked had moved, the second is loose, all else is in order. */
private fun eachStage(scene: Scene, show: (Stage) -> Unit) {
    val seen = mutableSetOf<String>()
    show(Stage(scene, null, false, seen))
    scene.core.start(scene.rig, "Ada", emptyList(), false)
    var ended = false
    val model = CardModel(scene.core, scene.rig, Sight().room, { ended = true })
    val ills = mutableListOf("moved", "loose")
    while (!ended) {
        if (seen.add(kindOf(model))) show(Stage(scene, model, false, seen))
        val keys = model.state.view.card.keys
        val ill = keys.takeIf { all -> all.any { it.code == "held" && it.asks.isEmpty() } && model.state.view.plate != null }?.ill(ills)
        if (ill != null) model.press(ill) else model.answerFirst()
    }
    show(Stage(scene, null, true, seen))
}

private fun List<Key>.ill(ills: MutableList<String>): Key? = ills.firstOrNull()?.let { code ->
    firstOrNull { it.code == code && (code != "moved" || it.asks.isNotEmpty()) }?.also { ills.removeFirst() }
}

/** A card's kind, its first answer, and the frame of its number. */
private fun kindOf(model: CardModel): String {
    val card = model.state.view.card
    return listOfNotNull(card.kind, card.keys.first().code, card.figure?.frame).distinct().joinToString(" ")
}
