package app.baywalk

import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.runtime.LaunchedEffect
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.remember
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.graphics.ImageBitmap
import app.baywalk.bay.BayModel
import app.baywalk.bay.BayPaths
import app.baywalk.bay.BayScreen
import app.baywalk.card.CardModel
import app.baywalk.card.CardScreen
import app.baywalk.design.Hand
import app.baywalk.design.LocalHand
import app.baywalk.design.LocalPhotos
import app.baywalk.design.LocalSay
import app.baywalk.design.LocalScrolled
import app.baywalk.design.LocalTokens
import app.baywalk.design.Look
import app.baywalk.design.Scrolled
import app.baywalk.design.margin
import app.baywalk.design.say
import app.baywalk.design.tokensOf
import app.baywalk.findings.FindingsModel
import app.baywalk.findings.FindingsView
import androidx.compose.ui.platform.LocalDensity
import app.baywalk.mobile.Baywalk
import app.baywalk.mobile.Room
import app.baywalk.paper.PapersModel
import app.baywalk.paper.PapersView
import app.baywalk.past.PastModel
import app.baywalk.past.PastScreen
import app.baywalk.pins.PinsModel
import app.baywalk.pins.PinsView
import app.baywalk.plan.PlanModel
import app.baywalk.plan.PlanView
import app.baywalk.result.ResultEvent
import app.baywalk.result.ResultState
import app.baywalk.result.ResultScreen
import app.baywalk.rig.RigModel
import app.baywalk.rig.RigPaths
import app.baywalk.rig.RigViewScreen
import app.baywalk.rigs.RigsModel
import app.baywalk.rigs.RigsView
import app.baywalk.safe.SafeModel
import app.baywalk.safe.SafeView
import app.baywalk.screens.Piece
import app.baywalk.setup.AddingModel
import app.baywalk.setup.AddingView
import app.baywalk.setup.FillingModel
import app.baywalk.setup.FillingView
import app.baywalk.setup.SetUpModel
import app.baywalk.setup.SetUpView
import app.baywalk.timing.WhenModel
import app.baywalk.timing.WhenView
import app.baywalk.torque.TorqueModel
import app.baywalk.torque.TorqueView
import kotlinx.coroutines.delay

/** Where a person is. */
sealed interface Place {
    data object Rigs : Place
    data class Rig(val id: String) : Place
    data class Walk(val rig: String) : Place
    data class Bay(val rig: String, val code: String) : Place
    data class Result(val rig: String) : Place
    data class Safe(val back: Place) : Place
    data class Torque(val back: Place) : Place
    data class Pins(val rig: String, val code: String) : Place
    data class SetUp(val rig: String) : Place
    data class Plan(val rig: String) : Place
    data class WhenNext(val rig: String) : Place
    data class Findings(val rig: String) : Place
    data class Papers(val rig: String, val back: Place) : Place
    data class Past(val rig: String, val code: String?, val back: Place) : Place
    data class Adding(val rig: String, val piece: Piece, val bay: String, val back: Place) : Place
    data class Facts(val rig: String, val code: String, val back: Place) : Place
}

/** Where Back leads; nowhere from the list of rigs. */
fun Place.back(): Place? = when (this) {
    Place.Rigs -> null
    is Place.Rig -> Place.Rigs
    is Place.Walk -> Place.Rig(rig)
    is Place.Bay -> Place.Rig(rig)
    is Place.Result -> Place.Rig(rig)
    is Place.Safe -> back
    is Place.Torque -> back
    is Place.Pins -> Place.Bay(rig, code)
    is Place.SetUp -> Place.Rig(rig)
    is Place.Plan -> Place.Rig(rig)
    is Place.WhenNext -> Place.Rig(rig)
    is Place.Findings -> Place.Rig(rig)
    is Place.Papers -> back
    is Place.Past -> back
    is Place.Adding -> back
    is Place.Facts -> back
}

/** What the phone does for the screens: keeping choices, naming files, sharing, taking photos. */
interface Phone {
    /** A choice that was kept, such as the look. */
    fun kept(key: String): String?

    /** Keeps a choice. */
    fun keep(key: String, value: String)

    /** A path for a new backup. */
    fun backupPath(): String

    /** The folder into which files are written that are handed on. */
    val outgoing: String

    /** The country of the phone, by its code of two letters: it decides what paper is usual. */
    val country: String

    /** Hands on a file of the outgoing folder. */
    fun share(file: String)

    /** A path for new tables. */
    fun tablesPath(): String

    /** Hands on the calendar file of a rig. */
    fun shareCalendar(rig: String, ics: String)

    /** Hands a backup that was written on to where its owner keeps it. */
    fun handOver(backup: String)

    /** Asks for a backup; hands over the path of its file. */
    fun pickBackup(picked: (String) -> Unit)

    /** Takes or picks a photo of a place in a rig and has it entered; hands over what was told of it. */
    fun photo(rig: String, place: String, entered: (List<String>) -> Unit)

    /** Reads a photo from its file; nothing where it can't be read. */
    fun picture(path: String): ImageBitmap?

    /** What can be allowed on this phone alone. */
    val offers: List<Offer>
}

/** Something that can be allowed on a phone: the keys of its word and of what it means, and whether it is allowed. */
class Offer(val word: String, val note: String, val allowed: Boolean, val press: () -> Unit)

/** The whole app. It comes back to where it was: a walk that is open is shown by its card. */
@Composable
fun App(core: Baywalk, phone: Phone, onBackKey: ((() -> Unit)?) -> Unit = {}) {
    val said = remember(core) { core.text() }
    var look by remember { mutableStateOf(Look.entries.firstOrNull { it.name == phone.kept("look") } ?: Look.Day) }
    var hand by remember { mutableStateOf(Hand.entries.firstOrNull { it.name == phone.kept("hand") } ?: Hand.Right) }
    var place by remember { mutableStateOf(firstPlace(core)) }
    val go = { to: Place -> place = to }
    onBackKey(place.back()?.let { back -> { go(back) } })
    CompositionLocalProvider(LocalTokens provides tokensOf(look), LocalHand provides hand, LocalSay provides { said[it] ?: it }, LocalPhotos provides phone::picture, LocalScrolled provides remember(core) { CoreScrolled(core) }) {
        BoxWithConstraints(Modifier.fillMaxSize()) {
            val width = (minOf(maxWidth.value, 560f) - 2 * margin.value).toDouble()
            Screen(core, phone, place, go, width, Choices(look, hand, { look = it; phone.keep("look", it.name) }, { hand = it; phone.keep("hand", it.name) }))
        }
    }
}

/** Scrolled places, kept beside the ledger. Where they can't be kept nothing is lost, so nobody is told. */
internal class CoreScrolled(private val core: Baywalk) : Scrolled {
    override fun kept(place: String): Int = runCatching { core.scrolled(place).toInt() }.getOrDefault(0)

    override fun keep(place: String, down: Int) {
        runCatching { core.keepScrolled(place, down.toUInt()) }
    }
}

/** How the app looks, and the way to change it. */
class Choices(val look: Look, val hand: Hand, val onLook: (Look) -> Unit, val onHand: (Hand) -> Unit)

/** The card of a walk that is open, else the only rig, else the list. */
private fun firstPlace(core: Baywalk): Place {
    val rigs = core.rigs().rigs
    val walking = rigs.firstOrNull { core.rig(it.id, 328.0).walking }
    return when {
        walking != null -> Place.Walk(walking.id)
        rigs.size == 1 -> Place.Rig(rigs.first().id)
        else -> Place.Rigs
    }
}

private fun bayPaths(phone: Phone, place: Place.Bay, go: (Place) -> Unit) = BayPaths(
    onCard = { go(Place.Walk(place.rig)) },
    onPins = { go(Place.Pins(place.rig, place.code)) },
    onAdd = { go(Place.Adding(place.rig, it, place.code, place)) },
    onFacts = { go(Place.Facts(place.rig, it, place)) },
    onPhoto = { at, entered -> phone.photo(place.rig, at, entered) },
)

@Composable
private fun Screen(core: Baywalk, phone: Phone, place: Place, go: (Place) -> Unit, width: Double, choices: Choices) {
    val back = { place.back()?.let(go) ?: Unit }
    when (place) {
        Place.Rigs -> {
            val model = remember(place) { RigsModel(core, { rig, new -> go(if (new) Place.SetUp(rig) else Place.Rig(rig)) }, { go(Place.Torque(place)) }, { go(Place.Safe(place)) }) }
            RigsView(model.state, model::send)
        }
        is Place.Rig -> {
            val paths = RigPaths({ go(Place.Walk(place.id)) }, { go(Place.Bay(place.id, it)) }, { go(Place.Result(place.id)) }, { go(Place.Safe(place)) }, { go(Place.Torque(place)) }, { go(Place.SetUp(place.id)) }, { go(Place.Plan(place.id)) }, { go(Place.WhenNext(place.id)) }, { go(Place.Findings(place.id)) }, { go(Place.Papers(place.id, place)) }, { go(Place.Past(place.id, null, place)) })
            val model = remember(place, width) { RigModel(core, place.id, width, paths) }
            RigViewScreen(model.state, model::send, back)
        }
        is Place.Walk -> {
            val room = Room(width + 2 * margin.value, LocalDensity.current.fontScale.toDouble())
            val model = remember(place, room) { CardModel(core, place.rig, room, { go(Place.Result(place.rig)) }, { at, entered -> phone.photo(place.rig, at, entered) }) }
            LaunchedEffect(model) {
                while (true) {
                    delay(1_000)
                    model.tick()
                }
            }
            CardScreen(model.state, model::send, back)
        }
        is Place.Bay -> {
            val model = remember(place, width) { BayModel(core, place.rig, place.code, width + 2 * margin.value, bayPaths(phone, place, go)) }
            BayScreen(model.state, model::send, back)
        }
        is Place.Pins -> {
            val model = remember(place, width) { PinsModel(core, place.rig, place.code, width + 2 * margin.value) }
            PinsView(model.state, model::send, back)
        }
        is Place.SetUp -> {
            val model = remember(place) { SetUpModel(core, place.rig, { go(Place.Adding(place.rig, Piece.BAY, "", place)) }, { go(Place.Facts(place.rig, it, place)) }) }
            SetUpView(model.state, model::send, back)
        }
        is Place.Plan -> {
            val model = remember(place) { PlanModel(core, place.rig) { go(Place.Walk(place.rig)) } }
            PlanView(model.state, model::send, back)
        }
        is Place.WhenNext -> {
            val model = remember(place) { WhenModel(core, place.rig) { ics -> phone.shareCalendar(place.rig, ics) } }
            WhenView(model.state, model::send, back)
        }
        is Place.Past -> {
            val model = remember(place, width) { PastModel(core, place.rig, place.code, width) { go(Place.Past(place.rig, it, place)) } }
            PastScreen(model.state, model::send, back)
        }
        is Place.Adding -> {
            val model = remember(place) { AddingModel(core, place.rig, place.piece, place.bay) { at, entered -> phone.photo(place.rig, at, entered) } }
            AddingView(model.state, model::send, model.isPoint, back)
        }
        is Place.Facts -> {
            val model = remember(place) { FillingModel(core, place.rig, place.code, { go(Place.Past(place.rig, place.code, place)) }, back) }
            FillingView(model.state, model::send, back)
        }
        is Place.Result -> ResultScreen(ResultState(core.result(place.rig, width)), { go(if (it == ResultEvent.Findings) Place.Findings(place.rig) else Place.Papers(place.rig, place)) }, back)
        is Place.Findings -> {
            val model = remember(place) { FindingsModel(core, place.rig) { go(Place.Papers(place.rig, place)) } }
            FindingsView(model.state, model::send, back)
        }
        is Place.Papers -> {
            val written = say("shell-hand-on")
            val model = remember(place) { PapersModel(core, place.rig, phone, written) }
            PapersView(model.state, model::send, back)
        }
        is Place.Safe -> {
            val model = remember(place) { SafeModel(core, phone, choices.look, choices.hand, choices.onLook, choices.onHand) }
            SafeView(model.state, model::send, back)
        }
        is Place.Torque -> {
            val model = remember(place) { TorqueModel(core) }
            TorqueView(model.state, model::send, back)
        }
    }
}
