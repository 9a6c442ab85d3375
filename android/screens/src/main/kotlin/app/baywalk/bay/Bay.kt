package app.baywalk.bay

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import app.baywalk.design.Cautions
import app.baywalk.design.Hairline
import app.baywalk.design.Head
import app.baywalk.design.Key
import app.baywalk.design.Painted
import app.baywalk.design.Sheet
import app.baywalk.design.Type
import app.baywalk.design.Weight
import app.baywalk.design.Words
import app.baywalk.design.largeText
import app.baywalk.design.say
import app.baywalk.mobile.BayView
import app.baywalk.mobile.PointRow

/** A bay: its points in rows, and what stays untouched. */
data class BayState(val view: BayView)

sealed interface BayEvent {
    data object GoOn : BayEvent
}

@Composable
fun BayScreen(state: BayState, send: (BayEvent) -> Unit, onBack: () -> Unit) {
    val view = state.view
    Sheet(
        head = {
            Head(view.name, onBack, view.tag)
            Painted(view.line)
        },
        keys = {
            if (view.keepOut.isNotEmpty()) {
                Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(8.dp), Alignment.CenterVertically) {
                    Painted(view.mesh)
                    Cautions(listOf(view.keepOut))
                }
            }
            Key(say("shell-to-card"), { send(BayEvent.GoOn) }, Modifier.fillMaxWidth(), weight = Weight.Primary, least = 76.dp)
        },
        place = "bay ${view.tag}",
    ) {
        Words(view.place, Type.Body)
        Words(say("shell-label-first"), Type.Note)
        view.points.forEach { point ->
            Hairline()
            PointLine(point)
        }
    }
}

@Composable
private fun PointLine(point: PointRow) {
    Row(Modifier.fillMaxWidth().heightIn(min = 56.dp).semantics(mergeDescendants = true) { }, Arrangement.spacedBy(12.dp), Alignment.CenterVertically) {
        Column(Modifier.weight(1f)) {
            Words(point.name, Type.Strong)
            Words(point.place, Type.Note)
            if (largeText) Words(point.grade?.word.orEmpty(), Type.Strong)
        }
        if (!largeText) Words(point.grade?.word.orEmpty(), Type.Note)
        Painted(point.glyph, times = 0.75f)
    }
}
