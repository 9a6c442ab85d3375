package app.baywalk.setup

import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import app.baywalk.card.sentenceOf
import app.baywalk.design.Answer
import app.baywalk.design.Hairline
import app.baywalk.design.Head
import app.baywalk.design.Key
import app.baywalk.design.KeyRow
import app.baywalk.design.Sheet
import app.baywalk.design.Type
import app.baywalk.design.Weight
import app.baywalk.design.Words
import app.baywalk.design.say
import app.baywalk.mobile.Baywalk
import app.baywalk.mobile.Fault
import app.baywalk.mobile.Field
import app.baywalk.screens.SourceAsk
import app.baywalk.screens.SourcesScreen

/** Setting a rig up: what can make a conductor live, had or not, and the way to a new bay. */
data class SetUpState(val screen: SourcesScreen, val refused: String = "")

sealed interface SetUpEvent {
    data class Answer(val source: String, val presence: String) : SetUpEvent
    data class Facts(val code: String) : SetUpEvent
    data object NewBay : SetUpEvent
}

class SetUpModel(private val core: Baywalk, private val rig: String, private val onBay: () -> Unit, private val onFacts: (String) -> Unit) {
    var state by mutableStateOf(SetUpState(core.sources(rig)))
        private set

    fun send(event: SetUpEvent) {
        when (event) {
            is SetUpEvent.Answer -> answer(event.source, event.presence)
            is SetUpEvent.Facts -> onFacts(event.code)
            SetUpEvent.NewBay -> onBay()
        }
    }

    private fun answer(source: String, presence: String) {
        state = try {
            core.change(rig, source, listOf(Field("presence", presence)))
            SetUpState(core.sources(rig))
        } catch (fault: Fault) {
            state.copy(refused = sentenceOf(fault))
        }
    }
}

@Composable
fun SetUpView(state: SetUpState, send: (SetUpEvent) -> Unit, onBack: () -> Unit) {
    Sheet(
        head = { Head(say("shell-set-up"), onBack) },
        keys = {
            Key(say("set-up-bay"), { send(SetUpEvent.NewBay) }, Modifier.fillMaxWidth())
            Key(say("shell-pins-done"), onBack, Modifier.fillMaxWidth(), weight = Weight.Primary, least = 76.dp)
        },
    ) {
        Answer(listOf(state.refused).filter { it.isNotEmpty() }, refused = true)
        Words(state.screen.words, Type.Body)
        state.screen.sources.forEach { source ->
            Hairline()
            Source(state.screen, source, send)
        }
    }
}

/** A source with its three answers; the one that stands is reversed. */
@Composable
private fun Source(screen: SourcesScreen, source: SourceAsk, send: (SetUpEvent) -> Unit) {
    Words(source.name, Type.Strong)
    Words(source.how, Type.Note)
    KeyRow {
        screen.options.forEach { option ->
            val weight = if (option.code == source.presence.code) Weight.Chosen else Weight.Plain
            Key(option.word, { send(SetUpEvent.Answer(source.code, option.code)) }, Modifier.weight(1f), weight = weight, inset = 4.dp)
        }
    }
}
