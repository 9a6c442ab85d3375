package app.baywalk.past

import androidx.compose.foundation.layout.ColumnScope
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import app.baywalk.design.Hairline
import app.baywalk.design.Head
import app.baywalk.design.Key
import app.baywalk.design.Listed
import app.baywalk.design.Painted
import app.baywalk.design.Sheet
import app.baywalk.design.Type
import app.baywalk.design.Words
import app.baywalk.design.say
import app.baywalk.mobile.Baywalk
import app.baywalk.mobile.PastView
import app.baywalk.screens.PastPoint

/** The past of a rig, or of one point of it: charts, each with what it tells, and how the interval was chosen. */
data class PastState(val view: PastView)

sealed interface PastEvent {
    data class Point(val code: String) : PastEvent
}

class PastModel(core: Baywalk, rig: String, code: String?, width: Double, private val onPoint: (String) -> Unit) {
    val state = PastState(core.past(rig, code, width))

    fun send(event: PastEvent) {
        when (event) {
            is PastEvent.Point -> onPoint(event.code)
        }
    }
}

@Composable
fun PastScreen(state: PastState, send: (PastEvent) -> Unit, onBack: () -> Unit) {
    val screen = state.view.screen
    Sheet(
        head = { Head(say("shell-past"), onBack) },
        keys = { Words(screen.caution, Type.Note) },
        place = "past ${screen.title}",
    ) {
        Words(screen.title, Type.Heading)
        screen.charts.zip(state.view.charts).forEach { (told, picture) ->
            Hairline()
            Words(told.title, Type.Strong)
            // The sentences say what the picture shows.
            if (told.drawn) Painted(picture)
            told.told.forEach { Words(it, Type.Body) }
        }
        Listed("", screen.walks)
        Listed(say("shell-past-why"), screen.why)
        Moved(screen.moved, send)
    }
}

/** The points that have moved before; each leads to its own past. */
@Composable
private fun ColumnScope.Moved(points: List<PastPoint>, send: (PastEvent) -> Unit) {
    if (points.isEmpty()) return
    Hairline()
    Words(say("shell-past-moved"), Type.Heading)
    points.forEach { Key(it.words, { send(PastEvent.Point(it.code)) }, Modifier.fillMaxWidth()) }
}
