package app.baywalk.design

import androidx.compose.foundation.text.BasicText
import androidx.compose.foundation.text.TextAutoSize
import androidx.compose.foundation.text.modifiers.TextAutoSizeLayoutScope
import androidx.compose.runtime.Composable
import androidx.compose.runtime.ReadOnlyComposable
import androidx.compose.ui.Modifier
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.text.AnnotatedString
import androidx.compose.ui.text.TextLayoutResult
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.font.FontWeight
import androidx.compose.ui.text.style.TextAlign
import androidx.compose.ui.text.style.TextOverflow
import androidx.compose.ui.unit.Constraints
import androidx.compose.ui.unit.TextUnit
import androidx.compose.ui.unit.dp
import androidx.compose.ui.unit.em

/** The roles of text: height in dp at font scale 1 and at 2, and weight. Large sizes grow less. */
enum class Type(val at1: Float, val at2: Float, val weight: Int) {
    Torque(96f, 96f, 500),
    Reading(72f, 80f, 500),
    Name(38f, 46f, 600),
    Title(26f, 37f, 600),
    KeyWord(23f, 35f, 600),
    Heading(18f, 30f, 600),
    Strong(16f, 28f, 600),
    Body(16f, 28f, 500),
    Note(15f, 26f, 500),
}

/** The style of a role at the font scale of the phone; a key word may shrink by [fit]. */
@Composable
fun styleOf(type: Type, color: Color, align: TextAlign = TextAlign.Start, fit: Float = 1f): TextStyle {
    val density = LocalDensity.current
    val part = (density.fontScale - 1f).coerceIn(0f, 1f)
    val height = (type.at1 + (type.at2 - type.at1) * part) * fit
    return TextStyle(
        color = color,
        fontSize = with(density) { height.dp.toSp() },
        lineHeight = 1.2.em,
        fontWeight = FontWeight(type.weight),
        fontFeatureSettings = "tnum",
        textAlign = align,
        letterSpacing = if (type == Type.Torque) (-0.035).em else 0.em,
    )
}

/** Text of a role. */
@Composable
fun Words(
    text: String,
    type: Type,
    modifier: Modifier = Modifier,
    color: Color = tokens.ink,
    align: TextAlign = TextAlign.Start,
    lines: Int = Int.MAX_VALUE,
) {
    if (text.isNotEmpty()) {
        val style = styleOf(type, color, align)
        BasicText(text, modifier, style, overflow = TextOverflow.Ellipsis, maxLines = lines, autoSize = WholeWords(style.fontSize))
    }
}

/** Text gets smaller until no word of it is broken, but not under six tenths of its size. */
private data class WholeWords(private val most: TextUnit) : TextAutoSize {
    override fun TextAutoSizeLayoutScope.getFontSize(constraints: Constraints, text: AnnotatedString): TextUnit {
        var part = 1f
        while (part > 0.6f && breaksAWord(performLayout(constraints, text, most * part))) part -= 0.05f
        return most * part
    }
}

/** Whether a line ends within a word; a hyphen may end one. */
fun breaksAWord(laid: TextLayoutResult): Boolean {
    val text = laid.layoutInput.text
    return (0 until laid.lineCount - 1).map { laid.getLineEnd(it) }.filter { it in 1 until text.length }.any { end ->
        !text[end].isWhitespace() && !text[end - 1].isWhitespace() && text[end - 1] !in "-/"
    }
}

/** Whether text is so large that drawings beside words give way to the words. */
val largeText: Boolean
    @Composable @ReadOnlyComposable
    get() = LocalDensity.current.fontScale >= 1.4f
