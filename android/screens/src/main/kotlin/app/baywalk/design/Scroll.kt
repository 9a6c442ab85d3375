package app.baywalk.design

import androidx.compose.foundation.ScrollState
import androidx.compose.runtime.Composable
import androidx.compose.runtime.LaunchedEffect
import androidx.compose.runtime.remember
import androidx.compose.runtime.snapshotFlow
import androidx.compose.runtime.staticCompositionLocalOf
import kotlinx.coroutines.flow.distinctUntilChanged
import kotlinx.coroutines.flow.drop
import kotlinx.coroutines.flow.filterNotNull

/** Where it is kept how far screens were scrolled, so that a person who comes back finds the same place. */
interface Scrolled {
    fun kept(place: String): Int

    fun keep(place: String, down: Int)
}

val LocalScrolled = staticCompositionLocalOf<Scrolled?> { null }

/** How far a screen is scrolled: as it was left, and kept whenever the finger rests. */
@Composable
fun scrollOf(place: String): ScrollState {
    val scrolled = LocalScrolled.current?.takeIf { place.isNotEmpty() }
    val state = remember(place) { ScrollState(scrolled?.kept(place) ?: 0) }
    if (scrolled != null) {
        LaunchedEffect(place, state) {
            snapshotFlow { state.value.takeUnless { state.isScrollInProgress } }
                .filterNotNull().distinctUntilChanged().drop(1).collect { scrolled.keep(place, it) }
        }
    }
    return state
}
