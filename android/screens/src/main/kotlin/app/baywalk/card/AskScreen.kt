package app.baywalk.card

import androidx.compose.foundation.background
import androidx.compose.foundation.border
import androidx.compose.foundation.layout.Box
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
import app.baywalk.design.Sheet
import app.baywalk.design.Type
import app.baywalk.design.Words
import app.baywalk.design.styleOf
import app.baywalk.design.tokens

/** What a pressed key asks, one question at a time. */
@Composable
fun AskScreen(state: CardState, asking: Asking, send: (CardEvent) -> Unit) {
    val ask = asking.ask
    Sheet(
        head = { CardHead(state.view.card, state, { send(CardEvent.Leave) }) },
        keys = {
            val drawn = state.view.glyphs.associate { it.code to it.picture }
            AskKeys(ask, asking.typed, drawn, { send(CardEvent.Type(it)) }, { send(CardEvent.Answer(it)) })
        },
        keysFromTop = true,
    ) {
        Weighed(state)
        Words(state.view.card.title, Type.Title)
        Words(asking.key.word, Type.Strong)
        Answer(listOf(state.refused).filter { it.isNotEmpty() }, refused = true)
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
