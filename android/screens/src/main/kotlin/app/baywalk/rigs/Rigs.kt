package app.baywalk.rigs

import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import app.baywalk.card.Field
import app.baywalk.card.sentenceOf
import app.baywalk.design.Answer
import app.baywalk.design.Head
import app.baywalk.design.Key
import app.baywalk.design.Sheet
import app.baywalk.design.Type
import app.baywalk.design.Weight
import app.baywalk.design.Words
import app.baywalk.design.say
import app.baywalk.mobile.Baywalk
import app.baywalk.mobile.Fault
import app.baywalk.screens.LayoutLine
import app.baywalk.screens.RigsScreen

/** The rigs in the logbook, and a new one being set up. */
data class RigsState(
    val screen: RigsScreen,
    val layouts: List<LayoutLine>,
    val adding: Boolean,
    val name: String = "",
    val refused: String = "",
)

sealed interface RigsEvent {
    data class Open(val rig: String) : RigsEvent
    data object Add : RigsEvent
    data class Name(val text: String) : RigsEvent
    data class From(val layout: String) : RigsEvent
    data object Leave : RigsEvent
    data object Torque : RigsEvent
    data object Safe : RigsEvent
}

class RigsModel(private val core: Baywalk, private val onOpen: (String, Boolean) -> Unit, private val onTorque: () -> Unit, private val onSafe: () -> Unit) {
    var state by mutableStateOf(read())
        private set

    private fun read(): RigsState {
        val screen = core.rigs()
        return RigsState(screen, core.layouts(), adding = screen.rigs.isEmpty())
    }

    fun send(event: RigsEvent) {
        when (event) {
            is RigsEvent.Open -> onOpen(event.rig, false)
            RigsEvent.Add -> state = state.copy(adding = true)
            is RigsEvent.Name -> state = state.copy(name = event.text, refused = "")
            is RigsEvent.From -> start(event.layout)
            RigsEvent.Leave -> state = read()
            RigsEvent.Torque -> onTorque()
            RigsEvent.Safe -> onSafe()
        }
    }

    private fun start(layout: String) {
        try {
            val rig = core.startFrom(layout, state.name.trim())
            state = read()
            onOpen(rig, true)
        } catch (fault: Fault) {
            state = state.copy(refused = sentenceOf(fault))
        }
    }
}

@Composable
fun RigsView(state: RigsState, send: (RigsEvent) -> Unit) {
    if (state.adding) SetUp(state, send) else RigList(state, send)
}

@Composable
private fun RigList(state: RigsState, send: (RigsEvent) -> Unit) {
    Sheet(
        head = { Head(say("shell-rigs"), null) },
        keys = {
            Key(say("shell-torque"), { send(RigsEvent.Torque) }, Modifier.fillMaxWidth())
            Key(say("shell-safe"), { send(RigsEvent.Safe) }, Modifier.fillMaxWidth())
            Key(say("shell-add-rig"), { send(RigsEvent.Add) }, Modifier.fillMaxWidth())
        },
    ) {
        state.screen.rigs.forEach { rig ->
            Key(rig.name, { send(RigsEvent.Open(rig.id)) }, Modifier.fillMaxWidth(), "${rig.what}\n${rig.due}")
        }
    }
}

/** A rig from a layout close to one's own, or from nothing but its name. */
@Composable
private fun SetUp(state: RigsState, send: (RigsEvent) -> Unit) {
    Sheet(
        head = { Head(say("shell-add-rig"), if (state.screen.rigs.isEmpty()) null else ({ send(RigsEvent.Leave) })) },
        keys = { Answer(listOf(state.refused).filter { it.isNotEmpty() }, refused = true) },
    ) {
        Words(state.screen.empty.orEmpty(), Type.Body)
        if (state.screen.rigs.isEmpty()) Words(say("shell-text-sample"), Type.Title)
        Words(say("shell-rig-name"), Type.Heading)
        Field(state.name, say("shell-rig-name")) { send(RigsEvent.Name(it)) }
        Words(say("shell-close-to"), Type.Heading)
        state.layouts.forEach { layout ->
            Key(layout.words, { send(RigsEvent.From(layout.code)) }, Modifier.fillMaxWidth(), weight = Weight.Plain)
        }
    }
}
