package app.baywalk.card

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.RowScope
import androidx.compose.foundation.layout.Spacer
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.isTraversalGroup
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.semantics.traversalIndex
import androidx.compose.ui.unit.dp
import app.baywalk.design.Hand
import app.baywalk.design.Key
import app.baywalk.design.LocalHand
import app.baywalk.design.largeText
import app.baywalk.screens.Key as CardKey

/**
 * The four grades. The farther from the thumb, the farther the joint has gone: Held lies under it,
 * Apart at the far corner; all four are of one size, so that none is easier than the truth.
 */
@Composable
fun GradeKeys(state: CardState, send: (CardEvent) -> Unit) {
    val (held, others) = state.answers.partition { it.code !in listOf("moved", "loose", "apart") }
    val at = { code: String -> others.firstOrNull { it.code == code } }
    // Without a torque there is no Moved; where text is large, the one long answer takes a row of its own.
    val wide = largeText && at("moved") == null
    val upper = listOf(at("apart"), if (wide) at("loose") else at("moved"))
    val lower = if (wide) held.take(1) else listOf(at("loose"), held.firstOrNull())
    val left = LocalHand.current == Hand.Left
    Column(Modifier.fillMaxWidth().semantics { isTraversalGroup = true }, Arrangement.spacedBy(12.dp)) {
        listOf(upper, lower).forEach { row ->
            Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(12.dp)) {
                (if (left) row.asReversed() else row).forEach { key -> Grade(state, key, send) }
            }
        }
        held.drop(1).forEach { key -> Key(key.word, { send(CardEvent.Press(key)) }, Modifier.fillMaxWidth(), key.note) }
    }
}

@Composable
private fun RowScope.Grade(state: CardState, key: CardKey?, send: (CardEvent) -> Unit) {
    if (key == null) {
        Spacer(Modifier.weight(1f))
        return
    }
    val place = grades.indexOf(key.code).coerceAtLeast(0)
    Key(
        key.word,
        { send(CardEvent.Press(key)) },
        Modifier.weight(1f).heightIn(min = 100.dp).semantics { traversalIndex = place.toFloat() },
        key.note,
        state.view.glyphs.firstOrNull { it.code == key.code }?.picture,
        least = 100.dp,
        inset = 8.dp,
    )
}
