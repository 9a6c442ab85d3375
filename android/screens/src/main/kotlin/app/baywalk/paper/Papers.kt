package app.baywalk.paper

import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import app.baywalk.Phone
import app.baywalk.card.sentenceOf
import app.baywalk.design.Answer
import app.baywalk.design.Head
import app.baywalk.design.Key
import app.baywalk.design.Sheet
import app.baywalk.design.say
import app.baywalk.mobile.Baywalk
import app.baywalk.mobile.Fault
import app.baywalk.screens.Key as PaperKey

/** What can be put on paper and handed on: reports, labels, sheets of findings. */
data class PapersState(val keys: List<PaperKey>, val told: List<String> = emptyList(), val refused: String = "")

sealed interface PapersEvent {
    data class Press(val key: PaperKey) : PapersEvent
}

/** [written] is told where a paper was written. */
class PapersModel(private val core: Baywalk, private val rig: String, private val phone: Phone, private val written: String) {
    var state by mutableStateOf(PapersState(core.papers(rig)))
        private set

    fun send(event: PapersEvent) {
        when (event) {
            is PapersEvent.Press -> write(event.key)
        }
    }

    private fun write(key: PaperKey) {
        state = try {
            phone.share(core.writePaper(rig, key.code, phone.country, phone.outgoing))
            state.copy(told = listOf(written), refused = "")
        } catch (fault: Fault) {
            state.copy(told = emptyList(), refused = sentenceOf(fault))
        }
    }
}

@Composable
fun PapersView(state: PapersState, send: (PapersEvent) -> Unit, onBack: () -> Unit) {
    Sheet(head = { Head(say("shell-papers"), onBack) }, keys = {}, place = "papers") {
        Answer(state.told, refused = false)
        Answer(listOf(state.refused).filter { it.isNotEmpty() }, refused = true)
        state.keys.forEach { key -> Key(key.word, { send(PapersEvent.Press(key)) }, Modifier.fillMaxWidth(), key.note) }
    }
}
