package app.baywalk.card

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import app.baywalk.design.Answer
import app.baywalk.design.Hand
import app.baywalk.design.Key
import app.baywalk.design.LocalHand
import app.baywalk.design.Painted
import app.baywalk.design.Type
import app.baywalk.design.Weight
import app.baywalk.design.Words
import app.baywalk.design.say
import app.baywalk.screens.Ask
import app.baywalk.screens.Key as CardKey

private const val MOST = 9

/** The keys of the pad in rows; 0 lies under the thumb. */
private fun rows(separator: String) = listOf(
    listOf("1", "2", "3", ERASE),
    listOf("4", "5", "6", separator),
    listOf("7", "8", "9", "0"),
)

private const val ERASE = "<"

/** The number pad of a card that is answered by one reading, with the reading large above it. */
@Composable
fun PadKeys(state: CardState, key: CardKey, send: (CardEvent) -> Unit) {
    val ask = key.asks.first() as Ask.Number
    NumberPad(state.typed, ask.unit) { send(CardEvent.Type(it)) }
    state.answers.filter { it != key }.forEach { other ->
        Key(other.word, { send(CardEvent.Press(other)) }, Modifier.fillMaxWidth(), other.note)
    }
    Key(key.word, { send(CardEvent.Press(key)) }, Modifier.fillMaxWidth(), weight = Weight.Primary, least = 76.dp)
}

/** The judgement of the reading as it is typed, with the place of the neutral where both lines are read. */
@Composable
fun Weighed(state: CardState) {
    val weighed = state.weighed ?: return
    Answer(weighed.sentences, refused = weighed.refused)
    weighed.drift?.let { Painted(it) }
}

/** A pad for a number of a unit, workable with gloves: no key is less than 56 by 76 dp. */
@Composable
fun NumberPad(typed: String, unit: String, onType: (String) -> Unit) {
    val separator = say("shell-separator")
    Column(Modifier.fillMaxWidth(), Arrangement.spacedBy(8.dp)) {
        Row(Modifier.fillMaxWidth().semantics(mergeDescendants = true) { contentDescription = "$typed $unit" }, Arrangement.spacedBy(8.dp)) {
            Words(typed.ifEmpty { "–" }, Type.Name, Modifier.alignByBaseline())
            Words(unit, Type.Title, Modifier.alignByBaseline())
        }
        rows(separator).forEach { row ->
            val placed = if (LocalHand.current == Hand.Left) row.asReversed() else row
            Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(8.dp)) {
                placed.forEach { sign ->
                    val word = if (sign == ERASE) say("shell-erase") else sign
                    Key(word, { onType(after(typed, sign)) }, Modifier.weight(1f), inset = 2.dp)
                }
            }
        }
    }
}

/** What stands after a key of the pad; what would be no number is not taken. */
fun after(typed: String, sign: String): String = when {
    sign == ERASE -> typed.dropLast(1)
    typed.length >= MOST -> typed
    sign.first().isDigit() -> typed + sign
    typed.any { !it.isDigit() } -> typed
    typed.isEmpty() -> "0$sign"
    else -> typed + sign
}
