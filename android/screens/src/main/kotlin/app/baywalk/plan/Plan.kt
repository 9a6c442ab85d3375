package app.baywalk.plan

import androidx.compose.foundation.clickable
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.unit.dp
import app.baywalk.card.NumberPad
import app.baywalk.card.sentenceOf
import app.baywalk.design.Answer
import app.baywalk.design.Cautions
import app.baywalk.design.Hairline
import app.baywalk.design.Head
import app.baywalk.design.Key
import app.baywalk.design.Sheet
import app.baywalk.design.Tag
import app.baywalk.design.Type
import app.baywalk.design.Weight
import app.baywalk.design.Words
import app.baywalk.design.say
import app.baywalk.mobile.Baywalk
import app.baywalk.mobile.Fault
import app.baywalk.screens.PlanPoint
import app.baywalk.screens.PlanScreen
import app.baywalk.screens.PlanStop

/** What matters most within the minutes at hand: typed first, then shown with what is left out and why. */
data class PlanState(val typed: String = "", val screen: PlanScreen? = null, val open: String? = null, val refused: String = "")

sealed interface PlanEvent {
    data class Type(val text: String) : PlanEvent
    data object Make : PlanEvent
    data object Anew : PlanEvent
    data class Open(val code: String) : PlanEvent
    data object Follow : PlanEvent
    data object Leave : PlanEvent
}

class PlanModel(private val core: Baywalk, private val rig: String, private val onWalk: () -> Unit) {
    var state by mutableStateOf(PlanState())
        private set

    fun send(event: PlanEvent) {
        when (event) {
            is PlanEvent.Type -> state = state.copy(typed = event.text, refused = "")
            PlanEvent.Make -> telling { state.copy(screen = core.plan(rig, minutes()), refused = "") }
            PlanEvent.Anew -> state = state.copy(screen = null, typed = "", refused = "")
            is PlanEvent.Open -> state = state.copy(open = event.code.takeIf { it != state.open })
            PlanEvent.Follow -> telling { core.followPlan(rig, minutes()); onWalk(); state }
            PlanEvent.Leave -> telling { core.leavePlan(rig); state.copy(screen = core.plan(rig, minutes())) }
        }
    }

    /** The minutes as typed, whole; none where there are more than the core can be handed. */
    private fun minutes(): UShort = state.typed.substringBefore('.').substringBefore(',').toUShortOrNull() ?: 0u

    private fun telling(work: () -> PlanState) {
        state = try {
            work()
        } catch (fault: Fault) {
            state.copy(refused = sentenceOf(fault))
        }
    }
}

@Composable
fun PlanView(state: PlanState, send: (PlanEvent) -> Unit, onBack: () -> Unit) {
    val screen = state.screen
    Sheet(
        head = { Head(say("shell-plan"), onBack) },
        keys = { if (screen == null) Minutes(state, send) else Following(screen, send) },
        keysFromTop = screen == null,
    ) {
        Answer(listOf(state.refused).filter { it.isNotEmpty() }, refused = true)
        if (screen != null) Planned(state, screen, send)
    }
}

@Composable
private fun Minutes(state: PlanState, send: (PlanEvent) -> Unit) {
    Words(say("shell-plan-minutes"), Type.Heading)
    NumberPad(state.typed, "min") { send(PlanEvent.Type(it)) }
    Key(say("shell-plan-make"), { send(PlanEvent.Make) }, Modifier.fillMaxWidth(), weight = Weight.Primary, least = 76.dp)
}

@Composable
private fun Following(screen: PlanScreen, send: (PlanEvent) -> Unit) {
    Key(say("shell-plan-anew"), { send(PlanEvent.Anew) }, Modifier.fillMaxWidth())
    if (screen.walking && !screen.followed) {
        Key(say("shell-plan-follow"), { send(PlanEvent.Follow) }, Modifier.fillMaxWidth(), weight = Weight.Primary, least = 76.dp)
    } else if (screen.followed) {
        Key(say("shell-plan-leave"), { send(PlanEvent.Leave) }, Modifier.fillMaxWidth())
    }
}

@Composable
private fun Planned(state: PlanState, screen: PlanScreen, send: (PlanEvent) -> Unit) {
    Words(screen.headline, Type.Heading)
    Cautions(listOfNotNull(screen.over))
    screen.stops.forEach { stop ->
        Hairline()
        Stop(state, stop, send)
    }
    Hairline()
    screen.leftOut.forEach { Words(it, Type.Body) }
    Words(screen.proof.word, Type.Note)
    screen.notes.forEach { Words(it, Type.Note) }
}

/** A bay of the plan, and its points in the order of the walk. */
@Composable
private fun Stop(state: PlanState, stop: PlanStop, send: (PlanEvent) -> Unit) {
    Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(12.dp), Alignment.CenterVertically) {
        Tag(stop.code)
        Words(stop.words, Type.Strong, Modifier.weight(1f))
    }
    stop.points.forEach { point -> Point(point, point.code == state.open) { send(PlanEvent.Open(point.code)) } }
    Words(stop.someLeft.orEmpty(), Type.Note)
}

/** A point with its rank; pressed, the rank opens into what it is made of. */
@Composable
private fun Point(point: PlanPoint, open: Boolean, onPress: () -> Unit) {
    Column(Modifier.fillMaxWidth().heightIn(min = 56.dp).clickable(role = Role.Button, onClick = onPress), Arrangement.Center) {
        Words("${point.code}, ${point.name}", Type.Body)
        Words(point.must.orEmpty(), Type.Note)
        if (open) (listOf(point.words) + point.factors).forEach { Words(it, Type.Note) }
    }
}
