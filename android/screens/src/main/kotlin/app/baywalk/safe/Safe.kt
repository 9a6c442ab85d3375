package app.baywalk.safe

import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import app.baywalk.Offer
import app.baywalk.Phone
import app.baywalk.card.Field
import app.baywalk.card.sentenceOf
import app.baywalk.design.Answer
import app.baywalk.design.Hand
import app.baywalk.design.Head
import app.baywalk.design.Key
import app.baywalk.design.KeyRow
import app.baywalk.design.Look
import app.baywalk.design.Sheet
import app.baywalk.design.Type
import app.baywalk.design.Weight
import app.baywalk.design.Words
import app.baywalk.design.say
import app.baywalk.mobile.Baywalk
import app.baywalk.mobile.Fault
import app.baywalk.mobile.Progress
import app.baywalk.mobile.Watcher

/** Keeping safe: a backup, one brought back, a check of the logbook, and how the app looks. */
data class SafeState(
    val look: Look,
    val hand: Hand,
    val told: List<String> = emptyList(),
    val refused: String = "",
    /** What seals a backup, and opens one. */
    val passphrase: String = "",
    /** A backup that was picked; what a restore of it would do is told beside. */
    val picked: String? = null,
    /** The language that was chosen, by its code; empty for that of the phone. */
    val language: String = "",
    val offers: List<Offer> = emptyList(),
)

/** The languages that can be chosen: that of the phone, or one by its code. */
private val languages = listOf("", "en", "es")

/** Under which name the chosen language is kept. */
const val LANGUAGE = "language"

sealed interface SafeEvent {
    data object BackUp : SafeEvent
    data object Verify : SafeEvent
    data object Tables : SafeEvent
    data object Pick : SafeEvent
    data object Restore : SafeEvent
    data class Passphrase(val text: String) : SafeEvent
    data class Speaks(val language: String) : SafeEvent
    data class Take(val offer: Offer) : SafeEvent
    data class Looks(val look: Look) : SafeEvent
    data class Holds(val hand: Hand) : SafeEvent
}

/** Goes on to the end. */
private object Whole : Watcher {
    override fun goesOn(progress: Progress): Boolean = true
}

class SafeModel(
    private val core: Baywalk,
    private val phone: Phone,
    look: Look,
    hand: Hand,
    private val onLook: (Look) -> Unit,
    private val onHand: (Hand) -> Unit,
) {
    var state by mutableStateOf(SafeState(look, hand, language = phone.kept(LANGUAGE).orEmpty(), offers = phone.offers))
        private set

    fun send(event: SafeEvent) {
        when (event) {
            SafeEvent.BackUp -> tell { backUp() }
            SafeEvent.Verify -> tell { core.verify().words }
            SafeEvent.Tables -> tell { tables() }
            SafeEvent.Pick -> phone.pickBackup { path -> tell(path) { core.restorePlan(path, state.passphrase, Whole).words } }
            SafeEvent.Restore -> tell { core.restore(state.picked.orEmpty(), state.passphrase, Whole).words }
            is SafeEvent.Speaks -> {
                phone.keep(LANGUAGE, event.language)
                state = state.copy(language = event.language)
            }
            is SafeEvent.Take -> {
                event.offer.press()
                state = state.copy(offers = phone.offers)
            }
            is SafeEvent.Passphrase -> state = state.copy(passphrase = event.text, refused = "")
            is SafeEvent.Looks -> {
                state = state.copy(look = event.look)
                onLook(event.look)
            }
            is SafeEvent.Holds -> {
                state = state.copy(hand = event.hand)
                onHand(event.hand)
            }
        }
    }

    private fun backUp(): List<String> {
        val path = phone.backupPath()
        return core.backUp(path, state.passphrase, Whole).words.also { phone.handOver(path) }
    }

    private fun tables(): List<String> {
        val path = phone.tablesPath()
        return core.tables(path).words.also { phone.share(path) }
    }

    private fun tell(picked: String? = null, work: () -> List<String>) {
        state = try {
            state.copy(told = work(), refused = "", picked = picked)
        } catch (fault: Fault) {
            state.copy(told = emptyList(), refused = sentenceOf(fault), picked = null)
        }
    }
}

@Composable
fun SafeView(state: SafeState, send: (SafeEvent) -> Unit, onBack: () -> Unit) {
    Sheet(
        head = { Head(say("shell-safe"), onBack) },
        keys = {
            if (state.picked != null) {
                Key(say("shell-restore-now"), { send(SafeEvent.Restore) }, Modifier.fillMaxWidth(), weight = Weight.Primary)
            } else {
                Key(say("shell-restore"), { send(SafeEvent.Pick) }, Modifier.fillMaxWidth())
                Key(say("shell-verify"), { send(SafeEvent.Verify) }, Modifier.fillMaxWidth())
                Key(say("shell-back-up"), { send(SafeEvent.BackUp) }, Modifier.fillMaxWidth(), weight = Weight.Primary)
            }
        },
    ) {
        Answer(state.told, refused = false)
        Answer(listOf(state.refused).filter { it.isNotEmpty() }, refused = true)
        Words(say("shell-passphrase"), Type.Body)
        Field(state.passphrase, say("shell-passphrase")) { send(SafeEvent.Passphrase(it)) }
        Key(say("shell-tables"), { send(SafeEvent.Tables) }, Modifier.fillMaxWidth())
        Words(say("shell-look"), Type.Heading)
        KeyRow {
            Look.entries.forEach { look ->
                Key(say("shell-look-${look.name.lowercase()}"), { send(SafeEvent.Looks(look)) }, Modifier.weight(1f), weight = if (look == state.look) Weight.Chosen else Weight.Plain, inset = 4.dp)
            }
        }
        Words(say("shell-hand"), Type.Heading)
        KeyRow {
            Hand.entries.forEach { hand ->
                Key(say("shell-hand-${hand.name.lowercase()}"), { send(SafeEvent.Holds(hand)) }, Modifier.weight(1f), weight = if (hand == state.hand) Weight.Chosen else Weight.Plain, inset = 4.dp)
            }
        }
        Words(say("shell-language"), Type.Heading)
        KeyRow {
            languages.forEach { language ->
                val word = say("shell-language-${language.ifEmpty { "phone" }}")
                Key(word, { send(SafeEvent.Speaks(language)) }, Modifier.weight(1f), weight = if (language == state.language) Weight.Chosen else Weight.Plain, inset = 4.dp)
            }
        }
        state.offers.forEach { offer ->
            Key(say(offer.word), { send(SafeEvent.Take(offer)) }, Modifier.fillMaxWidth(), say(offer.note), weight = if (offer.allowed) Weight.Chosen else Weight.Plain)
        }
    }
}
