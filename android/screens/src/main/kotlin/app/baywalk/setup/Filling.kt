package app.baywalk.setup

import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import app.baywalk.card.AskKeys
import app.baywalk.card.asked
import app.baywalk.card.isTyped
import app.baywalk.card.sentenceOf
import app.baywalk.design.Answer
import app.baywalk.design.Head
import app.baywalk.design.Key
import app.baywalk.design.Sheet
import app.baywalk.design.Type
import app.baywalk.design.Words
import app.baywalk.design.say
import app.baywalk.mobile.Baywalk
import app.baywalk.mobile.Fault
import app.baywalk.mobile.Field
import app.baywalk.screens.Fact
import app.baywalk.screens.Facts

/** What is noted of a record, and the field that is being filled in. */
data class FillingState(val facts: Facts, val open: Fact? = null, val typed: String = "", val sure: Boolean = false, val refused: String = "")

sealed interface FillingEvent {
    data class Open(val fact: Fact) : FillingEvent
    data class Type(val text: String) : FillingEvent
    data class Answer(val text: String) : FillingEvent
    data object Leave : FillingEvent
    data object Retire : FillingEvent
    data object Past : FillingEvent
}

class FillingModel(private val core: Baywalk, private val rig: String, private val code: String, private val onPast: () -> Unit, private val onGone: () -> Unit) {
    var state by mutableStateOf(FillingState(core.facts(rig, code)))
        private set

    fun send(event: FillingEvent) {
        when (event) {
            is FillingEvent.Open -> state = state.copy(open = event.fact, typed = if (event.fact.ask.isTyped) event.fact.value else "", refused = "")
            is FillingEvent.Type -> state = state.copy(typed = event.text, refused = "")
            is FillingEvent.Answer -> fill(event.text)
            FillingEvent.Leave -> state = state.copy(open = null, sure = false, refused = "")
            FillingEvent.Past -> onPast()
            FillingEvent.Retire -> if (state.sure) retire() else state = state.copy(sure = true)
        }
    }

    private fun fill(text: String) = changing {
        val column = state.open?.column ?: return@changing
        core.change(rig, code, listOf(Field(column, text.trim())))
        state = FillingState(core.facts(rig, code))
    }

    private fun retire() = changing {
        core.retire(rig, code)
        onGone()
    }

    private fun changing(work: () -> Unit) = try {
        work()
    } catch (fault: Fault) {
        state = state.copy(refused = sentenceOf(fault))
    }
}

@Composable
fun FillingView(state: FillingState, send: (FillingEvent) -> Unit, onBack: () -> Unit) {
    val open = state.open
    Sheet(
        head = { Head(state.facts.name, { if (open == null) onBack() else send(FillingEvent.Leave) }, state.facts.code) },
        keys = {
            if (open != null) {
                AskKeys(open.ask, state.typed, emptyMap(), { send(FillingEvent.Type(it)) }, { send(FillingEvent.Answer(it)) })
            } else {
                if (state.facts.isPoint) Key(say("shell-past"), { send(FillingEvent.Past) }, Modifier.fillMaxWidth())
                Key(if (state.sure) say("shell-retire-sure") else say("shell-retire"), { send(FillingEvent.Retire) }, Modifier.fillMaxWidth())
            }
        },
        keysFromTop = open != null,
    ) {
        Answer(listOf(state.refused).filter { it.isNotEmpty() }, refused = true)
        Words(state.facts.note, Type.Note)
        if (open == null) {
            state.facts.facts.forEach { fact ->
                Key(fact.shown, { send(FillingEvent.Open(fact)) }, Modifier.fillMaxWidth(), fact.ask.asked)
            }
        }
    }
}
