package app.baywalk.findings

import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import app.baywalk.card.Asks
import app.baywalk.card.Asking
import app.baywalk.card.sentenceOf
import app.baywalk.design.Answer
import app.baywalk.design.Cautions
import app.baywalk.design.Hairline
import app.baywalk.design.Head
import app.baywalk.design.Key
import app.baywalk.design.Sheet
import app.baywalk.design.Type
import app.baywalk.design.Weight
import app.baywalk.design.Words
import app.baywalk.design.say
import app.baywalk.mobile.Baywalk
import app.baywalk.mobile.Fault
import app.baywalk.screens.FindingLine
import app.baywalk.screens.FindingsScreen
import app.baywalk.screens.Key as FindingKey

/** What waits, and what was decided about it. */
data class FindingsState(val screen: FindingsScreen, val asking: Asking? = null, val told: List<String> = emptyList(), val refused: String = "")

sealed interface FindingsEvent {
    data class Press(val key: FindingKey) : FindingsEvent
    data class Type(val text: String) : FindingsEvent
    data class Answer(val text: String) : FindingsEvent
    data object Leave : FindingsEvent
    data object Papers : FindingsEvent
}

class FindingsModel(private val core: Baywalk, private val rig: String, private val onPapers: () -> Unit) {
    var state by mutableStateOf(FindingsState(core.findings(rig)))
        private set

    fun send(event: FindingsEvent) {
        when (event) {
            is FindingsEvent.Press -> state = state.copy(asking = Asking(event.key), told = emptyList(), refused = "")
            is FindingsEvent.Type -> state = state.copy(asking = state.asking?.copy(typed = event.text), refused = "")
            is FindingsEvent.Answer -> answered(event.text)
            FindingsEvent.Leave -> state = state.copy(asking = null, refused = "")
            FindingsEvent.Papers -> onPapers()
        }
    }

    private fun answered(text: String) {
        val asking = state.asking?.answered(text) ?: return
        if (!asking.isWhole) {
            state = state.copy(asking = asking, refused = "")
            return
        }
        state = try {
            val told = core.findingsPress(rig, asking.key.code, asking.answers)
            FindingsState(core.findings(rig), told = told.sentences)
        } catch (fault: Fault) {
            state.copy(asking = state.asking?.anew(), refused = sentenceOf(fault))
        }
    }
}

@Composable
fun FindingsView(state: FindingsState, send: (FindingsEvent) -> Unit, onBack: () -> Unit) {
    val asking = state.asking
    if (asking != null) Asks(asking, state.refused, { send(FindingsEvent.Leave) }, { send(FindingsEvent.Type(it)) }, { send(FindingsEvent.Answer(it)) }) else Waiting(state, send, onBack)
}

@Composable
private fun Waiting(state: FindingsState, send: (FindingsEvent) -> Unit, onBack: () -> Unit) {
    Sheet(
        head = { Head(say("shell-findings"), onBack) },
        keys = { Key(say("shell-papers"), { send(FindingsEvent.Papers) }, Modifier.fillMaxWidth(), weight = Weight.Primary, least = 76.dp) },
        place = "findings",
    ) {
        Answer(state.told, refused = false)
        Answer(listOf(state.refused).filter { it.isNotEmpty() }, refused = true)
        Cautions(state.screen.cautions)
        state.screen.keys.forEach { key -> Key(key.word, { send(FindingsEvent.Press(key)) }, Modifier.fillMaxWidth(), key.note) }
        state.screen.findings.filterNot { it.open }.forEach { Closed(it) }
    }
}

/** What it was, and what was decided about it. */
@Composable
private fun Closed(line: FindingLine) {
    Hairline()
    Words(line.words, Type.Strong)
    Words(line.followUp, Type.Body)
}
