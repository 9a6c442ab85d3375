package app.baywalk.card

import androidx.compose.runtime.Composable
import app.baywalk.design.Answer
import app.baywalk.design.Head
import app.baywalk.design.Sheet
import app.baywalk.design.Type
import app.baywalk.design.Words

/** What a key asks, one question after another, in place of the screen that it stands on. */
@Composable
fun Asks(asking: Asking, refused: String, onLeave: () -> Unit, onType: (String) -> Unit, onAnswer: (String) -> Unit) {
    Sheet(
        head = { Head(asking.key.word, onLeave) },
        keys = { AskKeys(asking.ask, asking.typed, emptyMap(), onType, onAnswer) },
        keysFromTop = true,
    ) {
        Answer(listOf(refused).filter { it.isNotEmpty() }, refused = true)
        Words(asking.key.note, Type.Body)
    }
}
