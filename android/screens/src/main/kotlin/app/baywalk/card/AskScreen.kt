package app.baywalk.card

import androidx.compose.foundation.background
import androidx.compose.foundation.border
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.text.BasicTextField
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.graphics.SolidColor
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import app.baywalk.design.Answer
import app.baywalk.design.Key
import app.baywalk.design.Sheet
import app.baywalk.design.Type
import app.baywalk.design.Weight
import app.baywalk.design.Words
import app.baywalk.design.say
import app.baywalk.design.styleOf
import app.baywalk.design.tokens
import app.baywalk.screens.Ask

/** What a pressed key asks, one question at a time. */
@Composable
fun AskScreen(state: CardState, asking: Asking, send: (CardEvent) -> Unit) {
    val ask = asking.ask
    Sheet(
        head = { CardHead(state.view.card, state, { send(CardEvent.Leave) }) },
        keys = {
            Words(questionOf(ask), Type.Heading)
            when (ask) {
                is Ask.Choice -> Choices(state, ask, send)
                is Ask.Number -> {
                    NumberPad(asking.typed, ask.unit) { send(CardEvent.Type(it)) }
                    Enter(asking, send)
                }
                is Ask.Words -> {
                    Field(asking.typed, questionOf(ask)) { send(CardEvent.Type(it)) }
                    Enter(asking, send)
                }
            }
        },
        keysFromTop = true,
    ) {
        Words(state.view.card.title, Type.Title)
        Words(asking.key.word, Type.Strong)
        Answer(listOf(state.refused).filter { it.isNotEmpty() }, refused = true)
    }
}

private fun questionOf(ask: Ask): String = when (ask) {
    is Ask.Choice -> ask.question
    is Ask.Number -> ask.question
    is Ask.Words -> ask.question
}

@Composable
private fun Enter(asking: Asking, send: (CardEvent) -> Unit) {
    Key(say("shell-enter"), { send(CardEvent.Answer(asking.typed)) }, Modifier.fillMaxWidth(), weight = Weight.Primary, least = 76.dp)
}

/** The options of a choice: drawn ones two abreast, the smallest under the thumb. */
@Composable
private fun Choices(state: CardState, ask: Ask.Choice, send: (CardEvent) -> Unit) {
    val drawn = state.view.glyphs.associate { it.code to it.picture }
    if (ask.options.all { it.code in drawn }) {
        ask.options.asReversed().chunked(2).forEach { pair ->
            Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(12.dp)) {
                pair.forEach { option ->
                    Key(option.word, { send(CardEvent.Answer(option.code)) }, Modifier.weight(1f), glyph = drawn[option.code], least = 104.dp, inset = 8.dp)
                }
            }
        }
    } else {
        ask.options.forEach { option -> Key(option.word, { send(CardEvent.Answer(option.code)) }, Modifier.fillMaxWidth()) }
    }
}

/** A field for words; what is typed stands in a well. */
@Composable
fun Field(typed: String, label: String, onType: (String) -> Unit) {
    BasicTextField(
        typed,
        onType,
        Modifier.fillMaxWidth().heightIn(min = 56.dp).background(tokens.well).border(2.dp, tokens.ink).semantics { contentDescription = label },
        textStyle = styleOf(Type.Body, tokens.ink),
        cursorBrush = SolidColor(tokens.mark),
        // The room around the text belongs to the field, so that a tap on it counts.
        decorationBox = { text -> Box(Modifier.padding(12.dp)) { text() } },
    )
}
