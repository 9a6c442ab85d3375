package app.baywalk.card

import app.baywalk.mobile.CardView
import app.baywalk.mobile.WeighedView
import app.baywalk.screens.Ask
import app.baywalk.screens.Key

/** What the card screen shows: the card as the core gives it, and what is being answered. */
data class CardState(
    val view: CardView,
    /** The key that was pressed and still asks for something. */
    val asking: Asking? = null,
    /** What was told of the last act. */
    val told: List<String> = emptyList(),
    /** Why the last act was refused. */
    val refused: String = "",
    /** Whether the acts that are seldom needed are listed. */
    val more: Boolean = false,
    /** What is typed on the card's own number pad. */
    val typed: String = "",
    /** What the reading that is typed would bring. */
    val weighed: WeighedView? = null,
)

/** A key that asks for something, and what has been answered so far. */
data class Asking(val key: Key, val answers: List<String> = emptyList(), val typed: String = "") {
    val ask: Ask get() = key.asks[answers.size]

    /** Whether all that the key asks has been answered. */
    val isWhole: Boolean get() = answers.size == key.asks.size

    /** The same with an answer to the question at hand. */
    fun answered(text: String): Asking = copy(answers = answers + text, typed = "")

    /** The same question from the first on. */
    fun anew(): Asking = copy(answers = emptyList(), typed = "")
}

/** What a person does on the card screen. */
sealed interface CardEvent {
    /** Presses a key of the card. */
    data class Press(val key: Key) : CardEvent

    /** Types on the number pad or in a field. */
    data class Type(val text: String) : CardEvent

    /** Answers what a key asks. */
    data class Answer(val text: String) : CardEvent

    /** Leaves a question, or the list of more acts. */
    data object Leave : CardEvent

    /** Lists the acts that are seldom needed. */
    data object More : CardEvent

    /** Goes on from a card that was left. */
    data object Back : CardEvent
}

/** The keys that stand on every card. */
val always = listOf("undo", "damage", "photo", "skip", "note", "stop", "close_early", "end_early")

/** Those of them that stand in the foot row, from the thumb outwards. */
private val foot = listOf("undo", "damage", "photo", "skip")

/** What of it stands there; where text is large, only the one that mends a slip. */
fun footOf(large: Boolean): List<String> = if (large) foot.take(1) else foot

/** The keys that answer the card. */
val CardState.answers: List<Key> get() = view.card.keys.filter { it.code !in always }

/** The grades that a check is recorded with, in the order in which a screen reader says them. */
val grades = listOf("held", "moved", "loose", "apart")

/** Whether the card is answered by grades. */
val CardState.isGraded: Boolean get() = answers.any { it.code == "loose" }

/** The key that a number is typed for on the card itself. */
val CardState.padKey: Key? get() = answers.firstOrNull()?.takeIf { it.asks.singleOrNull() is Ask.Number }
