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
import app.baywalk.design.largeText
import app.baywalk.design.margin
import app.baywalk.design.say
import app.baywalk.screens.Card

/** So many letters fit on one of two keys abreast. */
private const val SHORT = 18

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
        head = { CardHead(card, state, onBack, { send(CardEvent.More) }.takeUnless { largeText }) },
        keys = {
            if (LocalTall.current) Said(card)
            AnswerKeys(state, send)
            FootRow(state, send)
        },
    ) {
        Answer(state.told, refused = false)
        Answer(listOf(state.refused).filter { it.isNotEmpty() }, refused = true)
        Weighed(state)
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

/** Where the card stands. Large text leaves the head to the count; the name and the words of the line head the content. */
@Composable
internal fun CardHead(card: Card, state: CardState, onBack: () -> Unit, onMore: (() -> Unit)? = null) {
    val count = card.count?.let { "${it.at}/${it.of}" }.orEmpty()
    Column {
        Head(if (largeText) count else card.bay ?: card.title, onBack, card.tag.orEmpty(), onMore)
        Painted(state.view.line)
        if (!largeText) {
            Row(Modifier.fillMaxWidth().padding(horizontal = margin), Arrangement.spacedBy(8.dp)) {
                Words(card.line.words, Type.Note, Modifier.weight(1f))
                Words(count, Type.Strong)
            }
        }
    }
}

/** What the card says, above its keys. */
@Composable
private fun ColumnScope.CardBody(state: CardState) {
    val card = state.view.card
    if (largeText || card.title != card.bay) Words(card.title, Type.Title)
    if (LocalTall.current) Whereabouts(state)
    val figure = card.figure
    val plate = state.view.plate
    if (figure != null && plate != null) NumberPlate(figure, plate)
    // On a low screen the number comes first: it must be in sight without scrolling.
    if (largeText) Words(card.line.words, Type.Note)
    if (!LocalTall.current) Whereabouts(state)
    Diagram(state)
    card.lines.forEach { Words(it, Type.Body) }
}

/** Where it is, in words and among the pins of its bay. */
@Composable
private fun Whereabouts(state: CardState) {
    Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(12.dp)) {
        Words(state.view.card.place, Type.Body, Modifier.weight(1f))
        state.view.places?.let { Painted(it) }
    }
}

/** The sources and their bus, or the pairs of a proof; one pair alone is told by the title. */
@Composable
private fun Diagram(state: CardState) {
    val picture = state.view.diagram?.takeIf { state.view.pairs.size != 1 } ?: return
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
            val others = state.answers.filter { it != first }.asReversed()
            val abreast = if (!largeText && others.all { it.note.isEmpty() && it.word.length <= SHORT }) 2 else 1
            others.chunked(abreast).forEach { row ->
                Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(12.dp)) {
                    row.forEach { key -> Key(key.word, { send(CardEvent.Press(key)) }, Modifier.weight(1f), key.note) }
                }
            }
            if (first != null) {
                Key(first.word, { send(CardEvent.Press(first)) }, Modifier.fillMaxWidth(), first.note, weight = Weight.Primary, least = 76.dp)
            }
        }
    }
}

/** Undo, damage, photo and skip; mirrored for the left hand. Large text leaves undo and the way to the rest. */
@Composable
private fun FootRow(state: CardState, send: (CardEvent) -> Unit) {
    val keys = footOf(largeText).mapNotNull { code -> state.view.card.keys.firstOrNull { it.code == code } }
    val more: Pair<String, () -> Unit> = say("shell-more") to { send(CardEvent.More) }
    val all = keys.map { key -> key.word to { send(CardEvent.Press(key)) } } + listOf(more).filter { largeText }
    val placed = if (LocalHand.current == Hand.Left) all.asReversed() else all
    KeyRow {
        placed.forEach { (word, press) -> Key(word, press, Modifier.weight(1f), inset = 4.dp) }
    }
}

/** The acts that are seldom needed, one under another. */
@Composable
private fun MoreScreen(state: CardState, send: (CardEvent) -> Unit) {
    val card = state.view.card
    Sheet(
        head = { CardHead(card, state, { send(CardEvent.Leave) }) },
        keys = {
            val foot = footOf(largeText)
            card.keys.filter { it.code in always && it.code !in foot }.forEach { key ->
                Key(key.word, { send(CardEvent.Press(key)) }, Modifier.fillMaxWidth(), key.note)
            }
            Key(say("shell-back-to-card"), { send(CardEvent.Leave) }, Modifier.fillMaxWidth(), weight = Weight.Primary, least = 76.dp)
        },
    ) { Words(card.title, Type.Title) }
}
