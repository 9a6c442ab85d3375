package app.baywalk.design

import androidx.compose.foundation.ScrollState
import androidx.compose.foundation.background
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.ColumnScope
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.Spacer
import androidx.compose.foundation.layout.fillMaxHeight
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.widthIn
import androidx.compose.foundation.rememberScrollState
import androidx.compose.foundation.verticalScroll
import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.runtime.compositionLocalOf
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp

/** The margin at both sides of a screen. */
val margin = 16.dp

/** Whether there is room for what is said directly above the keys; else it stands among the content. */
val LocalTall = compositionLocalOf { true }

/** Under this height the keys stand beside the content. */
private val low = 480.dp

/** The widest that a column of keys and text grows; on a tablet the rest stays free at its sides. */
private val widest = 560.dp

/**
 * A screen: a head, content that scrolls, and keys that stay under the thumb. On a low screen (a
 * phone turned on its side) the keys stand beside the content.
 */
@Composable
fun Sheet(
    head: @Composable () -> Unit,
    keys: @Composable ColumnScope.() -> Unit = {},
    /** The name under which it is kept how far the content was scrolled. */
    place: String = "",
    /** Whether keys that do not fit show their first one, as those of a question do, and not their last. */
    keysFromTop: Boolean = false,
    content: @Composable ColumnScope.() -> Unit,
) {
    BoxWithConstraints(Modifier.fillMaxSize().background(tokens.plate), contentAlignment = Alignment.TopCenter) {
        val tall = maxHeight / LocalDensity.current.fontScale > 700.dp
        CompositionLocalProvider(LocalTall provides tall) {
            val scroll = scrollOf(place)
            Laid(maxWidth, maxHeight, head, { KeyColumn(it, keysFromTop, if (maxHeight < low) 2.dp to 6.dp else 8.dp to margin, keys) }) { Content(it, scroll, content) }
        }
    }
}

@Composable
private fun Laid(width: Dp, height: Dp, head: @Composable () -> Unit, keys: @Composable (Modifier) -> Unit, content: @Composable (Modifier) -> Unit) {
    if (height < low && width > height) {
        Row(Modifier.fillMaxSize()) {
            Column(Modifier.weight(1f)) {
                head()
                content(Modifier.weight(1f))
            }
            keys(Modifier.weight(1f).fillMaxHeight())
        }
    } else {
        Column(Modifier.widthIn(max = widest).fillMaxSize()) {
            head()
            content(Modifier.weight(1f))
            keys(Modifier.heightIn(max = height * 0.72f))
        }
    }
}

/** The keys, the last of them under the thumb, with some room above and below them. */
@Composable
private fun KeyColumn(modifier: Modifier, fromTop: Boolean, room: Pair<Dp, Dp>, keys: @Composable ColumnScope.() -> Unit) {
    val (above, below) = room
    Column(
        modifier.verticalScroll(rememberScrollState(), reverseScrolling = !fromTop).padding(horizontal = margin).padding(top = above, bottom = below),
        Arrangement.spacedBy(12.dp, Alignment.Bottom),
        content = keys,
    )
}

@Composable
private fun Content(modifier: Modifier, scroll: ScrollState, content: @Composable ColumnScope.() -> Unit) {
    Column(modifier.verticalScroll(scroll).padding(horizontal = margin), Arrangement.spacedBy(8.dp)) {
        content()
        Spacer(Modifier.height(4.dp))
    }
}
