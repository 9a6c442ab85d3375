package app.baywalk.card

import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import app.baywalk.design.margin
import app.baywalk.mobile.CardView
import app.baywalk.mobile.Baywalk
import app.baywalk.mobile.Fault
import app.baywalk.mobile.Room
import app.baywalk.mobile.WeighedView
import app.baywalk.screens.Ask
import app.baywalk.screens.Key
import app.baywalk.screens.Press

/**
 * The open walk, card by card. A tap is durable before the next card shows: the core answers with
 * the card that stands then.
 */
class CardModel(
    private val core: Baywalk,
    private val rig: String,
    private val room: Room,
    private val onEnd: () -> Unit,
    /** Takes a photo of a place; what was told of it is handed over when it is entered. */
    private val onPhoto: (String, (List<String>) -> Unit) -> Unit = { _, _ -> },
) {
    /** What is told where nothing needs to be: the next card says it. */
    private val noted = core.text()["told-recorded"]

    var state by mutableStateOf(CardState(core.card(rig, room)))
        private set

    fun send(event: CardEvent) {
        when (event) {
            is CardEvent.Press -> pressed(event.key)
            is CardEvent.Type -> state = typed(event.text)
            is CardEvent.Answer -> answered(event.text)
            CardEvent.Leave, CardEvent.Back -> state = state.copy(asking = null, more = false, refused = "")
            CardEvent.More -> state = state.copy(more = true, told = emptyList(), refused = "")
        }
    }

    /** Shows the card that stands now, as after the app comes back to the front. */
    fun refresh() = show(core.card(rig, room), emptyList())

    /** Tells anew how long a wait still runs; nothing else of what is being done changes. */
    fun tick() {
        if (!state.view.card.waits) return
        val view = try {
            core.card(rig, room)
        } catch (_: Fault) {
            return
        }
        if (view.card.seq == state.view.card.seq) state = state.copy(view = view)
    }

    private fun typed(text: String): CardState {
        val asking = state.asking?.copy(typed = text)
        val typed = if (asking == null) state.copy(typed = text, refused = "") else state.copy(asking = asking, refused = "")
        return typed.copy(weighed = weighed(typed))
    }

    /** What the reading that is typed would bring; a reading is judged before it is entered. */
    private fun weighed(typed: CardState): WeighedView? {
        val (asking, pad) = typed.asking to typed.padKey
        val (key, answers) = when {
            asking != null -> asking.key.takeIf { asking.ask is Ask.Number } to asking.answers + asking.typed
            else -> pad to listOf(typed.typed)
        }
        if (key == null || answers.last().isEmpty()) return null
        return try {
            core.weigh(rig, key.code, answers, room.width - 2 * margin.value)
        } catch (_: Fault) {
            null
        }
    }

    private fun pressed(key: Key) {
        when {
            key.code == "photo" -> onPhoto(place()) { told -> show(core.card(rig, room), told) }
            key == state.padKey -> record(key, listOf(state.typed))
            key.asks.isEmpty() -> record(key, emptyList())
            else -> state = state.copy(asking = Asking(key), more = false, told = emptyList(), refused = "")
        }
    }

    /** What a photo taken now shows: the point of the card, else its bay, else the rig. */
    private fun place(): String {
        val card = state.view.card
        return card.point ?: card.tag ?: core.rigs().rigs.first { it.id == rig }.name
    }

    private fun answered(text: String) {
        val asking = state.asking?.answered(text) ?: return
        if (asking.isWhole) record(asking.key, asking.answers) else state = state.copy(asking = asking, refused = "")
    }

    private fun record(key: Key, typed: List<String>) {
        val card = state.view.card
        try {
            val pressed = core.press(rig, Press(card.act, card.seq, card.point, key.code, typed), room)
            val view = pressed.view ?: return onEnd()
            show(view, pressed.told?.sentences.orEmpty().filter { it != noted })
        } catch (fault: Fault) {
            state = state.copy(refused = sentenceOf(fault), told = emptyList(), asking = state.asking?.anew())
        }
    }

    private fun show(view: CardView, told: List<String>) {
        state = CardState(view, told = told)
    }
}

/** The whole sentence of a fault. */
fun sentenceOf(fault: Fault): String = when (fault) {
    is Fault.Told -> fault.sentence
    is Fault.Closed -> fault.sentence
}

/** Whether a question is answered by typing. */
val Ask.isTyped: Boolean get() = this !is Ask.Choice
