package app.baywalk.torque

import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import app.baywalk.card.Field
import app.baywalk.card.sentenceOf
import app.baywalk.design.Answer
import app.baywalk.design.Cautions
import app.baywalk.design.Head
import app.baywalk.design.Key
import app.baywalk.design.Sheet
import app.baywalk.design.Type
import app.baywalk.design.Weight
import app.baywalk.design.Words
import app.baywalk.design.say
import app.baywalk.mobile.Baywalk
import app.baywalk.mobile.Fault
import app.baywalk.mobile.Field as Column
import app.baywalk.screens.Named
import app.baywalk.screens.TorqueScreen

/** One thing that is asked of a terminal: its column, its question, and what can be chosen. */
data class Question(val column: String, val question: String, val options: List<Named>)

/** The same advice as in a walk, for a terminal that stands in no rig. */
data class TorqueState(
    val questions: List<Question>,
    val answers: Map<String, String> = emptyMap(),
    val number: String = "",
    val advice: TorqueScreen? = null,
    val refused: String = "",
) {
    /** The question at hand; none where all are answered. */
    val open: Question? get() = questions.firstOrNull { it.column !in answers }
}

sealed interface TorqueEvent {
    data class Choose(val column: String, val code: String) : TorqueEvent
    data class Number(val text: String) : TorqueEvent
    data object Advise : TorqueEvent
    data object Anew : TorqueEvent
}

class TorqueModel(private val core: Baywalk) {
    var state by mutableStateOf(TorqueState(core.torqueForm().map { Question(it.column, it.question, it.options) }))
        private set

    fun send(event: TorqueEvent) {
        when (event) {
            is TorqueEvent.Choose -> state = state.copy(answers = state.answers + (event.column to event.code), refused = "")
            is TorqueEvent.Number -> state = state.copy(number = event.text, refused = "")
            TorqueEvent.Advise -> advise()
            TorqueEvent.Anew -> state = TorqueState(state.questions)
        }
    }

    private fun advise() {
        val number = state.number.trim()
        val label = if (number.isEmpty()) emptyList() else listOf(Column("torque", number), Column("torque_basis", "label"))
        state = try {
            state.copy(advice = core.torque(state.answers.map { Column(it.key, it.value) } + label), refused = "")
        } catch (fault: Fault) {
            state.copy(refused = sentenceOf(fault))
        }
    }
}

@Composable
fun TorqueView(state: TorqueState, send: (TorqueEvent) -> Unit, onBack: () -> Unit) {
    val open = state.open
    val advice = state.advice
    Sheet(
        head = { Head(say("shell-torque"), onBack) },
        keys = {
            when {
                advice != null -> {
                    Cautions(advice.cautions)
                    Key(say("shell-anew"), { send(TorqueEvent.Anew) }, Modifier.fillMaxWidth())
                }
                open == null -> Key(say("shell-advise"), { send(TorqueEvent.Advise) }, Modifier.fillMaxWidth(), weight = Weight.Primary, least = 76.dp)
            }
        },
    ) {
        Answer(listOf(state.refused).filter { it.isNotEmpty() }, refused = true)
        when {
            advice != null -> Advice(advice)
            open != null -> {
                Words(open.question, Type.Heading)
                open.options.forEach { option -> Key(option.word, { send(TorqueEvent.Choose(open.column, option.code)) }, Modifier.fillMaxWidth()) }
            }
            else -> {
                Words(say("shell-label-number"), Type.Heading)
                Field(state.number, say("shell-label-number")) { send(TorqueEvent.Number(it)) }
            }
        }
    }
}

@Composable
private fun Advice(advice: TorqueScreen) {
    Words(advice.action.word, Type.Title)
    Words(advice.heldBy, Type.Body)
    Words(listOf(advice.figure.number, advice.figure.unit, advice.figure.metric, advice.figure.basis).filter { it.isNotEmpty() }.joinToString(", "), Type.Heading)
    (advice.lines + advice.missing + advice.tools + advice.notes).forEach { Words(it, Type.Body) }
}
