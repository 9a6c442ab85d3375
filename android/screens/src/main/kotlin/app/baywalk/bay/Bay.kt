package app.baywalk.bay

import androidx.compose.foundation.clickable
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.unit.dp
import app.baywalk.design.Answer
import app.baywalk.design.Cautions
import app.baywalk.design.Hairline
import app.baywalk.design.Head
import app.baywalk.design.Key
import app.baywalk.design.KeyRow
import app.baywalk.design.Painted
import app.baywalk.design.PinnedPhoto
import app.baywalk.design.Sheet
import app.baywalk.design.Type
import app.baywalk.design.Weight
import app.baywalk.design.Words
import app.baywalk.design.largeText
import app.baywalk.design.say
import app.baywalk.mobile.BayView
import app.baywalk.mobile.PointRow
import app.baywalk.screens.Piece

/** A bay: its photo with pins, its points in rows, and what stays untouched. */
data class BayState(
    val view: BayView,
    /** Whether what can be added and filled in is listed. */
    val more: Boolean = false,
    val told: List<String> = emptyList(),
    val refused: String = "",
)

sealed interface BayEvent {
    data object GoOn : BayEvent
    data object Photo : BayEvent
    data object Newer : BayEvent
    data object Pins : BayEvent
    data object More : BayEvent
    data object Leave : BayEvent
    data class Add(val piece: Piece) : BayEvent
    data class Again(val point: String) : BayEvent
    data class Facts(val code: String) : BayEvent
}

@Composable
fun BayScreen(state: BayState, send: (BayEvent) -> Unit, onBack: () -> Unit) {
    if (state.more) BayMore(state, send) else StandingBay(state, send, onBack)
}

@Composable
private fun StandingBay(state: BayState, send: (BayEvent) -> Unit, onBack: () -> Unit) {
    val view = state.view
    Sheet(
        head = {
            Head(view.name, onBack, view.tag, { send(BayEvent.More) })
            Painted(view.line)
        },
        keys = {
            if (view.keepOut.isNotEmpty()) {
                Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(8.dp), Alignment.CenterVertically) {
                    Painted(view.mesh)
                    Cautions(listOf(view.keepOut))
                }
            }
            KeyRow {
                if (view.walking) Key(say("shell-photo"), { send(BayEvent.Photo) }, Modifier.weight(1f), inset = 4.dp)
                if (view.photo?.path != null) Key(say("shell-pins"), { send(BayEvent.Pins) }, Modifier.weight(1f), inset = 4.dp)
            }
            if (view.walking) Key(say("shell-to-card"), { send(BayEvent.GoOn) }, Modifier.fillMaxWidth(), weight = Weight.Primary, least = 76.dp)
        },
        place = "bay ${view.tag}",
    ) {
        Answer(state.told, refused = false)
        Answer(listOf(state.refused).filter { it.isNotEmpty() }, refused = true)
        Words(view.place, Type.Body)
        view.photo?.let { photo -> PinnedPhoto(photo.path, photo.words, view.pins) }
        view.photo?.newer?.let { Key(it, { send(BayEvent.Newer) }, Modifier.fillMaxWidth()) }
        Words(say("shell-label-first"), Type.Note)
        view.points.forEach { point ->
            Hairline()
            PointLine(point) { send(BayEvent.Facts(point.code)) }
        }
    }
}

@Composable
private fun PointLine(point: PointRow, onPress: () -> Unit) {
    Row(
        Modifier.fillMaxWidth().heightIn(min = 56.dp).clickable(role = Role.Button, onClick = onPress),
        Arrangement.spacedBy(12.dp),
        Alignment.CenterVertically,
    ) {
        Column(Modifier.weight(1f)) {
            Words(point.name, Type.Strong)
            Words(point.place, Type.Note)
            if (largeText) Words(point.grade?.word.orEmpty(), Type.Strong)
        }
        if (!largeText) Words(point.grade?.word.orEmpty(), Type.Note)
        Painted(point.glyph, times = 0.75f)
    }
}

/** What can be added where one stands, and the bay's own facts. */
@Composable
private fun BayMore(state: BayState, send: (BayEvent) -> Unit) {
    val view = state.view
    Sheet(
        head = { Head(view.name, { send(BayEvent.Leave) }, view.tag) },
        keys = {
            view.points.lastOrNull()?.let { last ->
                Key(say("shell-again"), { send(BayEvent.Again(last.code)) }, Modifier.fillMaxWidth(), last.name)
            }
            Key(say("set-up-terminal"), { send(BayEvent.Add(Piece.TERMINAL)) }, Modifier.fillMaxWidth())
            Key(say("set-up-look-new"), { send(BayEvent.Add(Piece.LOOK)) }, Modifier.fillMaxWidth())
            Key(say("set-up-device-new"), { send(BayEvent.Add(Piece.DEVICE)) }, Modifier.fillMaxWidth())
        },
    ) {
        Answer(state.told, refused = false)
        Answer(listOf(state.refused).filter { it.isNotEmpty() }, refused = true)
        Words(say("shell-set-up-here"), Type.Body)
        Key(say("shell-facts"), { send(BayEvent.Facts(view.tag)) }, Modifier.fillMaxWidth())
    }
}
