package app.baywalk.design

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.background
import androidx.compose.foundation.border
import androidx.compose.foundation.clickable
import androidx.compose.foundation.interaction.MutableInteractionSource
import androidx.compose.foundation.interaction.collectIsPressedAsState
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.defaultMinSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.size
import androidx.compose.foundation.shape.RoundedCornerShape
import androidx.compose.foundation.text.BasicText
import androidx.compose.foundation.text.TextAutoSize
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.remember
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.drawBehind
import androidx.compose.ui.geometry.CornerRadius
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.selected
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.style.TextAlign
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import androidx.compose.ui.unit.sp
import app.baywalk.mobile.Picture

val keyShape = RoundedCornerShape(10.dp)

/** How a key stands among the others. */
enum class Weight { Primary, Plain, Chosen }

/** The colours of a key: its face and what stands on it. Pressed, they change at once. */
@Composable
private fun faceOf(weight: Weight, pressed: Boolean): Pair<Color, Color> {
    val t = tokens
    return when {
        pressed || weight == Weight.Chosen -> t.caution to t.onCaution
        weight == Weight.Primary && !t.night -> t.mark to t.onMark
        else -> t.key to t.ink
    }
}

/**
 * A key: what can be pressed. All of them are 56 dp high at least; those that record a check are
 * given their size by [modifier]. The word, and the note under it, are what a screen reader says.
 */
@Composable
fun Key(
    word: String,
    onPress: () -> Unit,
    modifier: Modifier = Modifier,
    note: String = "",
    glyph: Picture? = null,
    weight: Weight = Weight.Plain,
    least: Dp = 56.dp,
    inset: Dp = 12.dp,
) {
    val source = remember { MutableInteractionSource() }
    val pressed by source.collectIsPressedAsState()
    val (face, ink) = faceOf(weight, pressed)
    val ruled = tokens.night && weight == Weight.Primary && !pressed
    Box(
        modifier
            .defaultMinSize(minWidth = 76.dp)
            .heightIn(min = least)
            .background(face, keyShape)
            .border(2.dp, if (weight == Weight.Primary && !tokens.night) face else tokens.ink, keyShape)
            .then(if (ruled) Modifier.innerRule(tokens.ink) else Modifier)
            .clickable(source, indication = null, role = Role.Button, onClick = onPress)
            .semantics(mergeDescendants = true) {
                contentDescription = if (note.isEmpty()) word else "$word, $note"
                if (weight == Weight.Chosen) selected = true
            }
            .padding(horizontal = inset, vertical = 8.dp),
        contentAlignment = Alignment.CenterStart,
    ) {
        KeyFace(word, note, glyph, ink, centred = glyph == null && note.isEmpty() && weight != Weight.Primary)
    }
}

@Composable
private fun KeyFace(word: String, note: String, glyph: Picture?, ink: Color, centred: Boolean) {
    val on = tokens.copy(ink = ink, key = if (ink == tokens.ink) tokens.key else tokens.caution, plate = if (ink == tokens.ink) tokens.key else tokens.caution)
    Row(horizontalArrangement = Arrangement.spacedBy(8.dp), verticalAlignment = Alignment.CenterVertically) {
        if (glyph != null && !largeText) Painted(glyph, on = on, times = 0.75f)
        Column(Modifier.fillMaxWidth()) {
            val align = if (centred) TextAlign.Center else TextAlign.Start
            val type = if (glyph == null && note.isEmpty()) Type.Strong else Type.KeyWord
            KeyWord(word, if (centred) Type.Strong else type, ink, align)
            Words(note, Type.Note, color = ink)
        }
    }
}

/** A word on a key. What is one word stays in one line, and shrinks before it would be cut. */
@Composable
private fun KeyWord(word: String, type: Type, ink: Color, align: TextAlign) {
    val style = styleOf(type, ink, align)
    if (' ' in word.trim()) {
        Words(word, type, Modifier.fillMaxWidth(), ink, align)
    } else {
        val shrink = TextAutoSize.StepBased(style.fontSize * 0.4f, style.fontSize, 0.5.sp)
        BasicText(word, Modifier.fillMaxWidth(), style, maxLines = 1, softWrap = false, autoSize = shrink)
    }
}

/** A square key that is drawn, with the words that a screen reader says. */
@Composable
fun DrawnKey(words: String, onPress: () -> Unit, draw: DrawScope.(Color) -> Unit) {
    val source = remember { MutableInteractionSource() }
    val pressed by source.collectIsPressedAsState()
    val (face, ink) = faceOf(Weight.Plain, pressed)
    Canvas(
        Modifier
            .size(56.dp)
            .background(face, keyShape)
            .border(2.dp, tokens.ink, keyShape)
            .clickable(source, indication = null, role = Role.Button, onClick = onPress)
            .semantics { contentDescription = words },
    ) { draw(ink) }
}

/** The second line of a double-ruled key. */
private fun Modifier.innerRule(ink: Color): Modifier = drawBehind {
    val inset = 6.dp.toPx()
    drawRoundRect(
        ink,
        Offset(inset, inset),
        Size(size.width - 2 * inset, size.height - 2 * inset),
        CornerRadius(5.dp.toPx()),
        Stroke(2.dp.toPx()),
    )
}

/** A row of small keys. */
@Composable
fun KeyRow(modifier: Modifier = Modifier, content: @Composable androidx.compose.foundation.layout.RowScope.() -> Unit) {
    Row(modifier.fillMaxWidth(), Arrangement.spacedBy(8.dp), content = content)
}
