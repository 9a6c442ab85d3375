package app.baywalk.timing

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
import app.baywalk.screens.DueLine
import app.baywalk.screens.Key as WhenKey
import app.baywalk.screens.WhenScreen

/** When next: what is due and why, the rules, what the past tells, and what can be noted. */
data class WhenState(val screen: WhenScreen, val asking: Asking? = null, val told: List<String> = emptyList(), val refused: String = "")

sealed interface WhenEvent {
    data class Press(val key: WhenKey) : WhenEvent
    data class Type(val text: String) : WhenEvent
    data class Answer(val text: String) : WhenEvent
    data object Leave : WhenEvent
    data object Calendar : WhenEvent
}

class WhenModel(private val core: Baywalk, private val rig: String, private val onCalendar: (String) -> Unit) {
    var state by mutableStateOf(WhenState(core.whenNext(rig)))
        private set

    fun send(event: WhenEvent) {
        when (event) {
            is WhenEvent.Press -> if (event.key.asks.isEmpty()) take(event.key, emptyList()) else state = state.copy(asking = Asking(event.key), told = emptyList(), refused = "")
            is WhenEvent.Type -> state = state.copy(asking = state.asking?.copy(typed = event.text), refused = "")
            is WhenEvent.Answer -> answered(event.text)
            WhenEvent.Leave -> state = state.copy(asking = null, refused = "")
            WhenEvent.Calendar -> onCalendar(core.calendar(rig))
        }
    }

    private fun answered(text: String) {
        val asking = state.asking?.answered(text) ?: return
        if (asking.isWhole) take(asking.key, asking.answers) else state = state.copy(asking = asking, refused = "")
    }

    private fun take(key: WhenKey, answers: List<String>) {
        state = try {
            val told = core.whenPress(rig, key.code, answers)
            WhenState(core.whenNext(rig), told = told.sentences)
        } catch (fault: Fault) {
            state.copy(asking = state.asking?.anew(), refused = sentenceOf(fault))
        }
    }
}

@Composable
fun WhenView(state: WhenState, send: (WhenEvent) -> Unit, onBack: () -> Unit) {
    val asking = state.asking
    if (asking != null) Asks(asking, state.refused, { send(WhenEvent.Leave) }, { send(WhenEvent.Type(it)) }, { send(WhenEvent.Answer(it)) }) else Standing(state, send, onBack)
}

@Composable
private fun Standing(state: WhenState, send: (WhenEvent) -> Unit, onBack: () -> Unit) {
    val screen = state.screen
    Sheet(
        head = { Head(say("shell-when"), onBack) },
        keys = { Key(say("shell-calendar"), { send(WhenEvent.Calendar) }, Modifier.fillMaxWidth(), weight = Weight.Primary, least = 76.dp) },
        place = "when",
    ) {
        Answer(state.told, refused = false)
        Answer(listOf(state.refused).filter { it.isNotEmpty() }, refused = true)
        screen.due.items.forEach { Due(it) }
        Words(screen.due.secondLook?.words.orEmpty(), Type.Body)
        screen.due.cautions.forEach { Words(it, Type.Note) }
        Hairline()
        screen.rules.rules.forEach { Words(it.words, Type.Body) }
        Words(screen.rules.empty.orEmpty(), Type.Body)
        Hairline()
        screen.learned.kinds.forEach { Words(it.words, Type.Body) }
        listOfNotNull(screen.learned.neverTight, screen.learned.first, screen.learned.how, screen.learned.condition).forEach { Words(it, Type.Note) }
        Hairline()
        screen.keys.forEach { key -> Key(key.word, { send(WhenEvent.Press(key)) }, Modifier.fillMaxWidth(), key.note) }
    }
}

/** One thing that is due: when and why, then each limit with its own day. */
@Composable
private fun Due(line: DueLine) {
    Words(line.words, Type.Strong)
    line.limits.forEach { Words(it, Type.Note) }
    Words(line.putOff.orEmpty(), Type.Body)
}
