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
import app.baywalk.bay.BayScreen
import app.baywalk.bay.BayState
import app.baywalk.card.CardModel
import app.baywalk.card.CardScreen
import app.baywalk.design.Hand
import app.baywalk.design.LocalHand
import app.baywalk.design.LocalSay
import app.baywalk.design.LocalScrolled
import app.baywalk.design.LocalTokens
import app.baywalk.design.Look
import app.baywalk.design.Scrolled
import app.baywalk.design.margin
import app.baywalk.design.tokensOf
import androidx.compose.ui.platform.LocalDensity
import app.baywalk.mobile.Baywalk
import app.baywalk.mobile.Room
import app.baywalk.result.ResultState
import app.baywalk.result.ResultScreen
import app.baywalk.rig.RigModel
import app.baywalk.rig.RigPaths
import app.baywalk.rig.RigViewScreen
import app.baywalk.rigs.RigsModel
import app.baywalk.rigs.RigsView
import app.baywalk.safe.SafeModel
import app.baywalk.safe.SafeView
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
}

/** What the phone does for the screens: keeping choices, naming files, sharing, taking photos. */
interface Phone {
    /** A choice that was kept, such as the look. */
    fun kept(key: String): String?

    /** Keeps a choice. */
    fun keep(key: String, value: String)

    /** A path for a new backup. */
    fun backupPath(): String

    /** Shares the report of a rig. */
    fun shareReport(rig: String, html: String)

    /** Takes or picks a photo; hands over the path of its file, which the core takes in. */
    fun photo(rig: String, taken: (String) -> Unit)
}

/** The whole app. It comes back to where it was: a walk that is open is shown by its card. */
@Composable
fun App(core: Baywalk, phone: Phone, onBackKey: ((() -> Unit)?) -> Unit = {}) {
    val said = remember(core) { core.text() }
    var look by remember { mutableStateOf(Look.entries.firstOrNull { it.name == phone.kept("look") } ?: Look.Day) }
    var hand by remember { mutableStateOf(Hand.entries.firstOrNull { it.name == phone.kept("hand") } ?: Hand.Right) }
    var place by remember { mutableStateOf(firstPlace(core)) }
    val go = { to: Place -> place = to }
    onBackKey(place.back()?.let { back -> { go(back) } })
    CompositionLocalProvider(LocalTokens provides tokensOf(look), LocalHand provides hand, LocalSay provides { said[it] ?: it }, LocalScrolled provides remember(core) { CoreScrolled(core) }) {
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

@Composable
private fun Screen(core: Baywalk, phone: Phone, place: Place, go: (Place) -> Unit, width: Double, choices: Choices) {
    val back = { place.back()?.let(go) ?: Unit }
    when (place) {
        Place.Rigs -> {
            val model = remember(place) { RigsModel(core, { go(Place.Rig(it)) }, { go(Place.Torque(place)) }, { go(Place.Safe(place)) }) }
            RigsView(model.state, model::send)
        }
        is Place.Rig -> {
            val paths = RigPaths({ go(Place.Walk(place.id)) }, { go(Place.Bay(place.id, it)) }, { go(Place.Result(place.id)) }, { go(Place.Safe(place)) }, { go(Place.Torque(place)) })
            val model = remember(place, width) { RigModel(core, place.id, width, paths) }
            RigViewScreen(model.state, model::send, back)
        }
        is Place.Walk -> {
            val room = Room(width + 2 * margin.value, LocalDensity.current.fontScale.toDouble())
            val model = remember(place, room) { CardModel(core, place.rig, room, { go(Place.Result(place.rig)) }, { taken -> phone.photo(place.rig, taken) }) }
            LaunchedEffect(model) {
                while (true) {
                    delay(1_000)
                    model.tick()
                }
            }
            CardScreen(model.state, model::send, back)
        }
        is Place.Bay -> BayScreen(BayState(core.bay(place.rig, place.code, width + 2 * margin.value)), { go(Place.Walk(place.rig)) }, back)
        is Place.Result -> ResultScreen(ResultState(core.result(place.rig, width)), { phone.shareReport(place.rig, core.report(place.rig)) }, back)
        is Place.Safe -> {
            val model = remember(place) { SafeModel(core, phone::backupPath, choices.look, choices.hand, choices.onLook, choices.onHand) }
            SafeView(model.state, model::send, back)
        }
        is Place.Torque -> {
            val model = remember(place) { TorqueModel(core) }
            TorqueView(model.state, model::send, back)
        }
    }
}
