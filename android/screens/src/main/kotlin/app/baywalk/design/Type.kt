package app.baywalk.design

import androidx.compose.foundation.text.BasicText
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.font.FontWeight
import androidx.compose.ui.text.style.TextAlign
import androidx.compose.ui.text.style.TextOverflow
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
        BasicText(text, modifier, styleOf(type, color, align), overflow = TextOverflow.Ellipsis, maxLines = lines)
    }
}
