package app.baywalk.setup

import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import app.baywalk.card.AskKeys
import app.baywalk.card.sentenceOf
import app.baywalk.design.Answer
import app.baywalk.design.Cautions
import app.baywalk.design.Head
import app.baywalk.design.Key
import app.baywalk.design.Sheet
import app.baywalk.design.Type
import app.baywalk.design.Weight
import app.baywalk.design.Words
import app.baywalk.design.say
import app.baywalk.mobile.Baywalk
import app.baywalk.mobile.Fault
import app.baywalk.screens.Added
import app.baywalk.screens.Ask
import app.baywalk.screens.Piece
import app.baywalk.screens.SetUpForm

/** Something new, asked for one question at a time. */
data class AddingState(
    val form: SetUpForm?,
    val answers: List<String> = emptyList(),
    val typed: String = "",
    val added: Added? = null,
    val refused: String = "",
) {
    /** The question at hand; none where all are answered. */
    val ask: Ask? get() = form?.asks?.getOrNull(answers.size)
}

sealed interface AddingEvent {
    data class Type(val text: String) : AddingEvent
    data class Answer(val text: String) : AddingEvent
    data object Again : AddingEvent
    data object Photo : AddingEvent
}

class AddingModel(
    private val core: Baywalk,
    private val rig: String,
    private val piece: Piece,
    private val bay: String,
    private val onPhoto: (String, (List<String>) -> Unit) -> Unit,
) {
    var state by mutableStateOf(asked())
        private set

    private fun asked(): AddingState = try {
        AddingState(core.setUpForm(rig, piece, bay))
    } catch (fault: Fault) {
        AddingState(null, refused = sentenceOf(fault))
    }

    fun send(event: AddingEvent) {
        when (event) {
            is AddingEvent.Type -> state = state.copy(typed = event.text, refused = "")
            is AddingEvent.Answer -> answered(event.text)
            AddingEvent.Again -> again()
            AddingEvent.Photo -> state.added?.let { added -> onPhoto(added.code) { } }
        }
    }

    private fun answered(text: String) {
        val answers = state.answers + text
        state = state.copy(answers = answers, typed = "", refused = "")
        if (state.ask == null) add(answers)
    }

    private fun add(answers: List<String>) {
        state = try {
            state.copy(added = core.setUpAdd(rig, piece, bay, answers))
        } catch (fault: Fault) {
            state.copy(answers = emptyList(), refused = sentenceOf(fault))
        }
    }

    /** One like the one just added. */
    private fun again() {
        val last = state.added ?: return
        state = try {
            state.copy(added = core.setUpCopy(rig, last.code), refused = "")
        } catch (fault: Fault) {
            state.copy(refused = sentenceOf(fault))
        }
    }

    /** Whether what is added is a point, which can be photographed and made once more. */
    val isPoint: Boolean get() = piece == Piece.TERMINAL || piece == Piece.LOOK
}

@Composable
fun AddingView(state: AddingState, send: (AddingEvent) -> Unit, isPoint: Boolean, onBack: () -> Unit) {
    val ask = state.ask
    Sheet(
        head = { Head(state.form?.title ?: say("shell-set-up"), onBack) },
        keys = {
            if (ask != null) {
                AskKeys(ask, state.typed, emptyMap(), { send(AddingEvent.Type(it)) }, { send(AddingEvent.Answer(it)) })
            } else {
                if (isPoint && state.added != null) {
                    if (state.added.walking) Key(say("shell-photo"), { send(AddingEvent.Photo) }, Modifier.fillMaxWidth())
                    Key(say("shell-again"), { send(AddingEvent.Again) }, Modifier.fillMaxWidth())
                }
                Key(say("shell-pins-done"), onBack, Modifier.fillMaxWidth(), weight = Weight.Primary, least = 76.dp)
            }
        },
        keysFromTop = ask != null,
    ) {
        Answer(listOf(state.refused).filter { it.isNotEmpty() }, refused = true)
        Cautions(state.form?.cautions.orEmpty())
        Words(state.added?.words.orEmpty(), Type.Body)
    }
}
