package app.baywalk.result

import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import app.baywalk.design.Cautions
import app.baywalk.design.Hairline
import app.baywalk.design.Head
import app.baywalk.design.Key
import app.baywalk.design.Listed
import app.baywalk.design.Painted
import app.baywalk.design.Sheet
import app.baywalk.design.Type
import app.baywalk.design.Weight
import app.baywalk.design.Words
import app.baywalk.design.say
import app.baywalk.mobile.ResultView

/** How a walk ended: what stays out of service and what was not judged come first. */
data class ResultState(val view: ResultView)

sealed interface ResultEvent {
    data object Papers : ResultEvent
    data object Findings : ResultEvent
}

@Composable
fun ResultScreen(state: ResultState, send: (ResultEvent) -> Unit, onBack: () -> Unit) {
    val screen = state.view.screen
    Sheet(
        head = { Head(say("shell-result"), onBack) },
        keys = {
            Key(say("shell-findings"), { send(ResultEvent.Findings) }, Modifier.fillMaxWidth())
            Key(say("shell-papers"), { send(ResultEvent.Papers) }, Modifier.fillMaxWidth(), weight = Weight.Primary, least = 76.dp)
        },
    ) {
        Words(screen.ended, Type.Heading)
        if (screen.outOfService.isNotEmpty()) {
            Words(say("shell-out-of-service"), Type.Heading)
            Cautions(screen.outOfService)
        }
        Listed(say("shell-not-judged"), screen.notJudged)
        Listed(say("shell-alive"), screen.alive)
        Painted(state.view.strip, description = screen.grades.joinToString { "${it.count} ${it.word}" })
        Words(screen.grades.joinToString { "${it.count} ${it.word}" }, Type.Strong)
        Listed(say("shell-had-moved"), screen.moved)
        Listed(say("shell-findings"), screen.findings.map { "${it.about}: ${it.words}" })
        Hairline()
        Words(screen.secondLook.orEmpty(), Type.Body)
        Words(screen.due, Type.Strong)
        Words(screen.backup.orEmpty(), Type.Body)
        Words(screen.calendar.orEmpty(), Type.Body)
    }
}
