package app.baywalk.card

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import app.baywalk.design.Key
import app.baywalk.design.Type
import app.baywalk.design.Weight
import app.baywalk.design.Words
import app.baywalk.design.say
import app.baywalk.mobile.Picture
import app.baywalk.screens.Ask

/** One question and the keys that answer it: options, a number pad, or a field. */
@Composable
fun AskKeys(ask: Ask, typed: String, drawn: Map<String, Picture>, onType: (String) -> Unit, onAnswer: (String) -> Unit) {
    Words(ask.asked, Type.Heading)
    when (ask) {
        is Ask.Choice -> Choices(ask, drawn, onAnswer)
        is Ask.Number -> NumberPad(typed, ask.unit, onType)
        is Ask.Words -> Field(typed, ask.question, onType)
    }
    if (ask.isTyped) {
        Key(say("shell-enter"), { onAnswer(typed) }, Modifier.fillMaxWidth(), weight = Weight.Primary, least = 76.dp)
    }
}

/** What is asked. */
val Ask.asked: String
    get() = when (this) {
        is Ask.Choice -> question
        is Ask.Number -> question
        is Ask.Words -> question
    }

/** The options of a choice: drawn ones two abreast, the smallest under the thumb. */
@Composable
private fun Choices(ask: Ask.Choice, drawn: Map<String, Picture>, onAnswer: (String) -> Unit) {
    if (ask.options.all { it.code in drawn }) {
        ask.options.asReversed().chunked(2).forEach { pair ->
            Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(12.dp)) {
                pair.forEach { option ->
                    Key(option.word, { onAnswer(option.code) }, Modifier.weight(1f), glyph = drawn[option.code], least = 104.dp, inset = 8.dp)
                }
            }
        }
    } else {
        ask.options.forEach { option -> Key(option.word, { onAnswer(option.code) }, Modifier.fillMaxWidth()) }
    }
}
