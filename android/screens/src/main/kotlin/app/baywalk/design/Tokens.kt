package app.baywalk.design

import androidx.compose.runtime.Composable
import androidx.compose.runtime.ReadOnlyComposable
import androidx.compose.runtime.staticCompositionLocalOf
import androidx.compose.ui.graphics.Color

/** The three looks: day, dark, and dim red for the night. */
enum class Look { Day, Dark, Night }

/** The colours of a look. Every pair that carries text in a walk has a contrast of 7 to 1 at least. */
data class Tokens(
    val plate: Color,
    val key: Color,
    val well: Color,
    val ink: Color,
    val detail: Color,
    val hair: Color,
    val mark: Color,
    val onMark: Color,
    val caution: Color,
    val onCaution: Color,
    val night: Boolean = false,
)

private val day = Tokens(
    plate = Color(0xFFF0F2F1), key = Color(0xFFFFFFFF), well = Color(0xFFE2E6E5), ink = Color(0xFF11151A),
    detail = Color(0xFF394148), hair = Color(0xFF7C868C), mark = Color(0xFF22309E), onMark = Color(0xFFFFFFFF),
    caution = Color(0xFF11151A), onCaution = Color(0xFFF7F9F8),
)

private val dark = Tokens(
    plate = Color(0xFF0D0F12), key = Color(0xFF1D2126), well = Color(0xFF171A1E), ink = Color(0xFFEEF0EE),
    detail = Color(0xFFB9C0C4), hair = Color(0xFF7A848B), mark = Color(0xFFAFBBFF), onMark = Color(0xFF0B0D22),
    caution = Color(0xFFEEF0EE), onCaution = Color(0xFF0D0F12),
)

private val red = Color(0xFFFF6B57)

private val night = Tokens(
    plate = Color.Black, key = Color.Black, well = Color.Black, ink = red, detail = red, hair = Color(0xFFB83222),
    mark = red, onMark = Color.Black, caution = red, onCaution = Color.Black, night = true,
)

fun tokensOf(look: Look): Tokens = when (look) {
    Look.Day -> day
    Look.Dark -> dark
    Look.Night -> night
}

/** Which hand holds the phone: keys under the thumb are mirrored for the left one. */
enum class Hand { Right, Left }

val LocalTokens = staticCompositionLocalOf { day }
val LocalHand = staticCompositionLocalOf { Hand.Right }

/** The shell's own words, by their keys in the catalogue of the core. */
val LocalSay = staticCompositionLocalOf<(String) -> String> { { it } }

val tokens: Tokens
    @Composable @ReadOnlyComposable
    get() = LocalTokens.current

/** A word of the shell in the person's language. */
@Composable
@ReadOnlyComposable
fun say(key: String): String = LocalSay.current(key)
