package app.baywalk.rig

import androidx.compose.foundation.border
import androidx.compose.foundation.clickable
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.shape.RoundedCornerShape
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.unit.dp
import app.baywalk.card.sentenceOf
import app.baywalk.design.Answer
import app.baywalk.design.Hairline
import app.baywalk.design.Head
import app.baywalk.design.Key
import app.baywalk.design.KeyRow
import app.baywalk.design.Painted
import app.baywalk.design.Sheet
import app.baywalk.design.Tag
import app.baywalk.design.Type
import app.baywalk.design.Weight
import app.baywalk.design.Words
import app.baywalk.design.say
import app.baywalk.design.tokens
import app.baywalk.mobile.Baywalk
import app.baywalk.mobile.Fault
import app.baywalk.mobile.RigView
import app.baywalk.screens.FirstWalk
import app.baywalk.screens.StripBay

/** The home of a rig, and the progress of its walk. */
data class RigState(val view: RigView, val first: FirstWalk? = null, val refused: String = "")

sealed interface RigEvent {
    data object Walk : RigEvent
    data object SecondLook : RigEvent
    data object FirstWalk : RigEvent
    data object SetUp : RigEvent
    data object Plan : RigEvent
    data object WhenNext : RigEvent
    data object Findings : RigEvent
    data object Papers : RigEvent
    data object Past : RigEvent
    data class Bay(val code: String) : RigEvent
    data object Result : RigEvent
    data object Safe : RigEvent
    data object Torque : RigEvent
}

/** Where the home of a rig leads. */
class RigPaths(val onWalk: () -> Unit, val onBay: (String) -> Unit, val onResult: () -> Unit, val onSafe: () -> Unit, val onTorque: () -> Unit, val onSetUp: () -> Unit, val onPlan: () -> Unit, val onWhen: () -> Unit, val onFindings: () -> Unit, val onPapers: () -> Unit, val onPast: () -> Unit)

class RigModel(private val core: Baywalk, private val rig: String, width: Double, private val paths: RigPaths) {
    var state by mutableStateOf(RigState(core.rig(rig, width), core.firstWalk(rig)))
        private set

    fun send(event: RigEvent) {
        when (event) {
            RigEvent.Walk -> walk()
            RigEvent.SecondLook -> walk(secondLook = true)
            RigEvent.FirstWalk -> walk(bays = state.first?.bays.orEmpty())
            RigEvent.SetUp -> paths.onSetUp()
            RigEvent.Plan -> paths.onPlan()
            RigEvent.WhenNext -> paths.onWhen()
            RigEvent.Findings -> paths.onFindings()
            RigEvent.Papers -> paths.onPapers()
            RigEvent.Past -> paths.onPast()
            is RigEvent.Bay -> paths.onBay(event.code)
            RigEvent.Result -> paths.onResult()
            RigEvent.Safe -> paths.onSafe()
            RigEvent.Torque -> paths.onTorque()
        }
    }

    private fun walk(bays: List<String> = emptyList(), secondLook: Boolean = false) {
        try {
            if (!state.view.walking) core.start(rig, "", bays, secondLook)
            paths.onWalk()
        } catch (fault: Fault) {
            state = state.copy(refused = sentenceOf(fault))
        }
    }
}

@Composable
fun RigViewScreen(state: RigState, send: (RigEvent) -> Unit, onBack: () -> Unit) {
    val screen = state.view.screen
    Sheet(
        head = {
            Head(say("shell-rig"), onBack)
            screen.line?.let { Words(it.words, Type.Note, Modifier.padding(horizontal = 16.dp)) }
        },
        keys = { RigKeys(state, send) },
        place = "rig ${screen.name}",
    ) {
        Plate(screen.name, screen.what)
        Painted(state.view.strip, description = screen.bays.joinToString { "${it.code} ${it.name}, ${it.stage.word}" })
        Words(screen.points, Type.Heading)
        Words(screen.moved, Type.Body)
        Answer(listOf(state.refused).filter { it.isNotEmpty() }, refused = true)
        Hairline()
        Words(screen.due.words, Type.Strong)
        Words(screen.due.secondLook?.words.orEmpty(), Type.Body)
        Words(screen.due.backup.orEmpty(), Type.Body)
        KeyRow {
            Key(say("shell-when"), { send(RigEvent.WhenNext) }, Modifier.weight(1f), inset = 4.dp)
            Key(say("shell-past"), { send(RigEvent.Past) }, Modifier.weight(1f), inset = 4.dp)
        }
        KeyRow {
            Key(say("shell-plan"), { send(RigEvent.Plan) }, Modifier.weight(1f), inset = 4.dp)
            Key(say("shell-set-up"), { send(RigEvent.SetUp) }, Modifier.weight(1f), inset = 4.dp)
        }
        KeyRow {
            Key(say("shell-findings"), { send(RigEvent.Findings) }, Modifier.weight(1f), screen.findings, inset = 4.dp)
            Key(say("shell-papers"), { send(RigEvent.Papers) }, Modifier.weight(1f), inset = 4.dp)
        }
        Hairline()
        screen.bays.forEach { bay -> BayRow(bay) { send(RigEvent.Bay(bay.code)) } }
    }
}

/** The name plate of the rig. */
@Composable
private fun Plate(name: String, what: String) {
    Column(
        Modifier.fillMaxWidth().border(2.dp, tokens.ink, RoundedCornerShape(3.dp)).padding(5.dp).border(1.dp, tokens.ink).padding(14.dp, 8.dp),
    ) {
        Words(name, Type.Name)
        Words(what, Type.Body)
    }
}

@Composable
private fun RigKeys(state: RigState, send: (RigEvent) -> Unit) {
    KeyRow {
        Key(say("shell-result"), { send(RigEvent.Result) }, Modifier.weight(1f), inset = 4.dp)
        Key(say("shell-torque"), { send(RigEvent.Torque) }, Modifier.weight(1f), inset = 4.dp)
        Key(say("shell-safe"), { send(RigEvent.Safe) }, Modifier.weight(1f), inset = 4.dp)
    }
    if (!state.view.walking && state.view.screen.due.secondLook != null) {
        Key(say("shell-second-look"), { send(RigEvent.SecondLook) }, Modifier.fillMaxWidth())
    }
    val first = state.first
    if (!state.view.walking && first != null) {
        Key(say("shell-first-walk"), { send(RigEvent.FirstWalk) }, Modifier.fillMaxWidth(), first.words)
    }
    val word = if (state.view.walking) say("shell-go-on") else say("shell-begin")
    Key(word, { send(RigEvent.Walk) }, Modifier.fillMaxWidth(), weight = Weight.Primary, least = 76.dp)
}

/** A bay in the list behind the strip: the same content for those who read or listen. */
@Composable
private fun BayRow(bay: StripBay, onPress: () -> Unit) {
    Row(
        Modifier.fillMaxWidth().heightIn(min = 56.dp).clickable(role = Role.Button, onClick = onPress),
        Arrangement.spacedBy(12.dp),
        Alignment.CenterVertically,
    ) {
        Tag(bay.code)
        Column(Modifier.weight(1f)) {
            Words(bay.name, Type.Strong)
            Words("${bay.side.word}, ${bay.stage.word}", Type.Note)
        }
        Words("${bay.done}/${bay.total}", Type.Body)
    }
}
