package app.baywalk.pins

import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import app.baywalk.card.sentenceOf
import app.baywalk.design.Answer
import app.baywalk.design.Head
import app.baywalk.design.Key
import app.baywalk.design.KeyRow
import app.baywalk.design.PinnedPhoto
import app.baywalk.design.Sheet
import app.baywalk.design.Type
import app.baywalk.design.Weight
import app.baywalk.design.Words
import app.baywalk.design.say
import app.baywalk.mobile.BayView
import app.baywalk.mobile.Baywalk
import app.baywalk.mobile.Fault
import app.baywalk.mobile.PinPlace
import app.baywalk.mobile.PointRow

/** The photo of a bay while pins are put on it, one point after another. */
data class PinsState(val view: BayView, val at: Int, val refused: String = "") {
    /** The point whose pin is put next. */
    val point: PointRow? get() = view.points.getOrNull(at)

    /** Whether that point has a pin already. */
    val pinned: Boolean get() = view.pins.any { it.pin.code == point?.code }
}

sealed interface PinsEvent {
    data class Place(val across: Int, val down: Int) : PinsEvent
    data object TakeOut : PinsEvent
    data object Next : PinsEvent
    data object Before : PinsEvent
}

class PinsModel(private val core: Baywalk, private val rig: String, private val bay: String, private val width: Double) {
    var state by mutableStateOf(first())
        private set

    private fun first(): PinsState {
        val view = core.bay(rig, bay, width)
        val open = view.points.indexOfFirst { point -> view.pins.none { it.pin.code == point.code } }
        return PinsState(view, open.coerceAtLeast(0))
    }

    fun send(event: PinsEvent) {
        when (event) {
            is PinsEvent.Place -> pin(PinPlace(event.across.toUShort(), event.down.toUShort()), step = 1)
            PinsEvent.TakeOut -> pin(null, step = 0)
            PinsEvent.Next -> state = state.copy(at = moved(1), refused = "")
            PinsEvent.Before -> state = state.copy(at = moved(-1), refused = "")
        }
    }

    private fun moved(step: Int) = (state.at + step).coerceIn(0, (state.view.points.size - 1).coerceAtLeast(0))

    private fun pin(at: PinPlace?, step: Int) {
        val point = state.point ?: return
        state = try {
            core.pin(rig, point.code, at)
            PinsState(core.bay(rig, bay, width), moved(step))
        } catch (fault: Fault) {
            state.copy(refused = sentenceOf(fault))
        }
    }
}

@Composable
fun PinsView(state: PinsState, send: (PinsEvent) -> Unit, onBack: () -> Unit) {
    val (view, point) = state.view to state.point
    Sheet(
        head = { Head(view.name, onBack, view.tag) },
        keys = {
            KeyRow {
                Key(say("shell-pin-before"), { send(PinsEvent.Before) }, Modifier.weight(1f), inset = 4.dp)
                if (state.pinned) Key(say("shell-pin-out"), { send(PinsEvent.TakeOut) }, Modifier.weight(1f), inset = 4.dp)
                Key(say("shell-pin-next"), { send(PinsEvent.Next) }, Modifier.weight(1f), inset = 4.dp)
            }
            Key(say("shell-pins-done"), onBack, Modifier.fillMaxWidth(), weight = Weight.Primary, least = 76.dp)
        },
    ) {
        Words(say("shell-pin-where"), Type.Body)
        Words(point?.name.orEmpty(), Type.Title)
        Words(point?.place.orEmpty(), Type.Note)
        view.photo?.let { photo -> PinnedPhoto(photo.path, photo.words, view.pins) { across, down -> send(PinsEvent.Place(across, down)) } }
        Answer(listOf(state.refused).filter { it.isNotEmpty() }, refused = true)
    }
}
