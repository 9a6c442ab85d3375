package app.baywalk.bay

import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import app.baywalk.card.sentenceOf
import app.baywalk.mobile.Baywalk
import app.baywalk.mobile.Fault
import app.baywalk.screens.Piece

/** Where a bay leads. */
class BayPaths(
    val onCard: () -> Unit,
    val onPins: () -> Unit,
    val onAdd: (Piece) -> Unit,
    val onFacts: (String) -> Unit,
    /** Takes a photo of a place; what was told of it is handed over when it is entered. */
    val onPhoto: (String, (List<String>) -> Unit) -> Unit,
)

class BayModel(private val core: Baywalk, private val rig: String, private val code: String, private val width: Double, private val paths: BayPaths) {
    var state by mutableStateOf(read())
        private set

    private fun read() = BayState(core.bay(rig, code, width))

    fun send(event: BayEvent) {
        when (event) {
            BayEvent.GoOn -> paths.onCard()
            BayEvent.Photo -> paths.onPhoto(code) { told -> state = read().copy(told = told) }
            BayEvent.Newer -> change { core.photoShow(rig, code).sentences }
            BayEvent.Pins -> paths.onPins()
            BayEvent.More -> state = state.copy(more = true, told = emptyList(), refused = "")
            BayEvent.Leave -> state = state.copy(more = false, told = emptyList(), refused = "")
            is BayEvent.Add -> paths.onAdd(event.piece)
            is BayEvent.Again -> change { listOf(core.setUpCopy(rig, event.point).words) }
            is BayEvent.Facts -> paths.onFacts(event.code)
        }
    }

    private fun change(work: () -> List<String>) {
        state = try {
            val told = work()
            read().copy(told = told, more = state.more)
        } catch (fault: Fault) {
            state.copy(refused = sentenceOf(fault), told = emptyList())
        }
    }
}
