package app.baywalk.card

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.ColumnScope
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import app.baywalk.design.Answer
import app.baywalk.design.Cautions
import app.baywalk.design.Hand
import app.baywalk.design.Head
import app.baywalk.design.Key
import app.baywalk.design.KeyRow
import app.baywalk.design.LocalHand
import app.baywalk.design.LocalTall
import app.baywalk.design.NumberPlate
import app.baywalk.design.Painted
import app.baywalk.design.Sheet
import app.baywalk.design.Type
import app.baywalk.design.Weight
import app.baywalk.design.Words
import app.baywalk.design.margin
import app.baywalk.design.say
import app.baywalk.design.tokens
import app.baywalk.screens.Card

/** One card fills the screen: where, what holds it, the number, the question, the keys. */
@Composable
fun CardScreen(state: CardState, send: (CardEvent) -> Unit, onBack: () -> Unit) {
    val asking = state.asking
    when {
        asking != null -> AskScreen(state, asking, send)
        state.more -> MoreScreen(state, send)
        else -> StandingCard(state, send, onBack)
    }
}

@Composable
private fun StandingCard(state: CardState, send: (CardEvent) -> Unit, onBack: () -> Unit) {
    val card = state.view.card
    Sheet(
        head = { CardHead(card, state, onBack) { send(CardEvent.More) } },
        keys = {
            if (LocalTall.current) Said(card)
            AnswerKeys(state, send)
            FootRow(state, send)
        },
    ) {
        Answer(state.told, refused = false)
        Answer(listOf(state.refused).filter { it.isNotEmpty() }, refused = true)
        CardBody(state)
        if (!LocalTall.current) Said(card)
    }
}

/** What to mind, and the question that the keys answer. */
@Composable
private fun Said(card: Card) {
    Cautions(card.cautions)
    Words(card.question, Type.Heading)
}

@Composable
internal fun CardHead(card: Card, state: CardState, onBack: () -> Unit, onMore: (() -> Unit)? = null) {
    Column {
        Head(card.bay ?: card.title, onBack, card.tag.orEmpty(), onMore)
        Painted(state.view.line)
        Row(Modifier.fillMaxWidth().padding(horizontal = margin), Arrangement.spacedBy(8.dp)) {
            Words(card.line.words, Type.Note, Modifier.weight(1f))
            Words(card.count?.let { "${it.at}/${it.of}" }.orEmpty(), Type.Strong)
        }
    }
}

/** What the card says, above its keys. */
@Composable
private fun ColumnScope.CardBody(state: CardState) {
    val card = state.view.card
    if (card.title != card.bay) Words(card.title, Type.Title)
    Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(12.dp)) {
        Words(card.place, Type.Body, Modifier.weight(1f))
        state.view.places?.let { Painted(it) }
    }
    val figure = card.figure
    val plate = state.view.plate
    if (figure != null && plate != null) NumberPlate(figure, plate)
    Diagram(state)
    card.lines.forEach { Words(it, Type.Body) }
}

/** The sources and their bus, or the pairs of a proof. */
@Composable
private fun Diagram(state: CardState) {
    val picture = state.view.diagram ?: return
    val words = state.view.pairs.joinToString { "${it.pair} ${it.read}" }
    Painted(picture, description = words)
}

/** The keys that answer the card: grades in their four places, a number pad, or one under another. */
@Composable
private fun AnswerKeys(state: CardState, send: (CardEvent) -> Unit) {
    val pad = state.padKey
    when {
        state.isGraded -> GradeKeys(state, send)
        pad != null -> PadKeys(state, pad, send)
        else -> {
            val first = state.answers.firstOrNull()
            state.answers.filter { it != first }.asReversed().forEach { key ->
                Key(key.word, { send(CardEvent.Press(key)) }, Modifier.fillMaxWidth(), key.note)
            }
            if (first != null) {
                Key(first.word, { send(CardEvent.Press(first)) }, Modifier.fillMaxWidth(), first.note, weight = Weight.Primary, least = 76.dp)
            }
        }
    }
}

/** Undo, damage, photo and skip, and the way to the rest; mirrored for the left hand. */
@Composable
private fun FootRow(state: CardState, send: (CardEvent) -> Unit) {
    val keys = foot.mapNotNull { code -> state.view.card.keys.firstOrNull { it.code == code } }
    val placed = if (LocalHand.current == Hand.Left) keys.asReversed() else keys
    KeyRow {
        placed.forEach { key -> Key(key.word, { send(CardEvent.Press(key)) }, Modifier.weight(1f), inset = 4.dp) }
    }
}

/** The acts that are seldom needed, one under another. */
@Composable
private fun MoreScreen(state: CardState, send: (CardEvent) -> Unit) {
    val card = state.view.card
    Sheet(
        head = { CardHead(card, state, { send(CardEvent.Leave) }) },
        keys = {
            card.keys.filter { it.code in always && it.code !in foot }.forEach { key ->
                Key(key.word, { send(CardEvent.Press(key)) }, Modifier.fillMaxWidth(), key.note)
            }
            Key(say("shell-back-to-card"), { send(CardEvent.Leave) }, Modifier.fillMaxWidth(), weight = Weight.Primary, least = 76.dp)
        },
    ) { Words(card.title, Type.Title) }
}
