package app.baywalk.card

import app.baywalk.Sample
import app.baywalk.Samples
import app.baywalk.Stage
import app.baywalk.room
import app.baywalk.still

/** Keys that record what a check found. */
private val recording = grades + "looked_at"

/** Each kind of card as it stands; and once each: the rest of its acts, its questions, a reading typed, a refusal. */
val cardSamples = Samples { stage, sight ->
    val model = stage.model ?: return@Samples emptyList()
    val state = CardState(still(stage.scene.core.card(stage.scene.rig, sight.room)))
    val words = state.view.card.keys.filter { it.code in recording }.map { it.word }
    listOf(sample("card ${stage.kind}", state, words)) + graded(stage, state, words) + typed(stage, state)
}

private fun graded(stage: Stage, state: CardState, words: List<String>): List<Sample> {
    if (!stage.first("graded", state.answers.any { it.code == "moved" && it.asks.isNotEmpty() })) return emptyList()
    val asking = listOf("moved", "skip", "damage").mapNotNull { code -> state.view.card.keys.firstOrNull { it.code == code } }
    val note = state.view.card.keys.first { it.code == "note" }
    return asking.map { sample("ask ${it.code}", state.copy(asking = Asking(it))) } +
        sample("ask note", state.copy(asking = Asking(note, typed = "cover is cracked"))) +
        sample("more", state.copy(more = true)) +
        sample("told", state.copy(told = listOf(note.note)), words)
}

private fun typed(stage: Stage, state: CardState): List<Sample> {
    if (!stage.first("typed", state.view.card.kind == "read")) return emptyList()
    return listOf(
        sample("reading typed", state.copy(typed = "0.3")),
        sample("reading refused", state.copy(typed = "0.3", refused = stage.scene.core.text().getValue("shell-closed"))),
    )
}

private fun sample(name: String, state: CardState, recording: List<String> = emptyList()) =
    Sample(name, recording) { CardScreen(state, {}, {}) }
