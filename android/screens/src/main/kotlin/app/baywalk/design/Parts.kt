package app.baywalk.design

import androidx.compose.foundation.background
import androidx.compose.foundation.border
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.ColumnScope
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.Spacer
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.widthIn
import androidx.compose.foundation.text.BasicText
import androidx.compose.foundation.text.TextAutoSize
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.Path
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.liveRegion
import androidx.compose.ui.semantics.LiveRegionMode
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import androidx.compose.ui.unit.sp
import app.baywalk.mobile.Picture
import app.baywalk.screens.Figure

/** The head of a screen: back, the tag of a bay, a title, the way to what is seldom needed. */
@Composable
fun Head(title: String, onBack: (() -> Unit)?, tag: String = "", onMore: (() -> Unit)? = null) {
    Row(
        Modifier.fillMaxWidth().heightIn(min = 60.dp).padding(horizontal = margin, vertical = 4.dp),
        Arrangement.spacedBy(10.dp),
        Alignment.CenterVertically,
    ) {
        if (onBack != null) DrawnKey(say("shell-back"), onBack) { ink -> backArrow(ink) }
        if (tag.isNotEmpty()) Tag(tag)
        Words(title, Type.Heading, Modifier.weight(1f).semantics { heading() })
        if (onMore != null) DrawnKey(say("shell-more"), onMore) { ink -> threeSquares(ink) }
    }
}

private fun DrawScope.backArrow(ink: Color) {
    val (x, y, arm) = Triple(size.width * 0.42f, size.height / 2, size.width * 0.16f)
    val path = Path().apply { moveTo(x + arm, y - arm); lineTo(x, y); lineTo(x + arm, y + arm) }
    drawPath(path, ink, style = Stroke(3.dp.toPx()))
}

private fun DrawScope.threeSquares(ink: Color) {
    val side = 5.dp.toPx()
    listOf(-2f, 0f, 2f).forEach { place ->
        drawRect(ink, Offset(size.width / 2 - side / 2 + place * side, size.height / 2 - side / 2), Size(side, side))
    }
}

/** The label of a bay, as it is printed and stuck in the bay. */
@Composable
fun Tag(code: String, next: Boolean = false) {
    val t = tokens
    Box(
        Modifier.background(if (next) t.mark else t.plate).border(2.dp, if (next) t.mark else t.ink).padding(8.dp, 3.dp),
        Alignment.Center,
    ) { Words(code, Type.Strong, color = if (next) t.onMark else t.ink) }
}

/** What to do first or what stays alive: reversed and square, directly above the keys it concerns. */
@Composable
fun Cautions(lines: List<String>) {
    if (lines.isEmpty()) return
    Column(Modifier.fillMaxWidth().background(tokens.caution).padding(12.dp, 10.dp), Arrangement.spacedBy(6.dp)) {
        lines.forEach { Words(it, Type.Strong, color = tokens.onCaution) }
    }
}

/** What was just refused or told, said to a screen reader as it comes. */
@Composable
fun Answer(lines: List<String>, refused: Boolean) {
    if (lines.isEmpty()) return
    val ground = if (refused) tokens.caution else tokens.well
    val ink = if (refused) tokens.onCaution else tokens.ink
    Column(
        Modifier.fillMaxWidth().background(ground).border(2.dp, tokens.ink).padding(12.dp, 8.dp).semantics { liveRegion = LiveRegionMode.Assertive },
        Arrangement.spacedBy(4.dp),
    ) { lines.forEach { Words(it, Type.Body, color = ink) } }
}

/** The number in the frame of its basis; never a number without its unit and basis. Where there is none, the frame says why. */
@Composable
fun NumberPlate(figure: Figure, frame: Picture) {
    Box(Modifier.fillMaxWidth().heightIn(min = frame.height.dp)) {
        BoxWithConstraints(Modifier.fillMaxWidth()) {
            val times = maxWidth.value / frame.width.toFloat()
            Painted(frame, times = times)
        }
        if (figure.number.isEmpty()) {
            Words(figure.basis, Type.Title, Modifier.align(Alignment.CenterStart).padding(horizontal = 30.dp))
        } else {
            Column(Modifier.fillMaxWidth().padding(26.dp, 6.dp)) {
                Row(Modifier.fillMaxWidth().height(112.dp), Arrangement.spacedBy(12.dp), Alignment.CenterVertically) {
                    Number(figure.number, Modifier.weight(1f, fill = false))
                    Column(Modifier.widthIn(max = if (largeText) 144.dp else 116.dp)) {
                        Words(figure.unit, if (largeText) Type.Heading else Type.Title)
                        Words(figure.metric, Type.Body)
                    }
                }
                Words(figure.basis, Type.Note, Modifier.padding(top = 10.dp))
            }
        }
    }
}

/** A number in one line, as large as its room lets it be. */
@Composable
private fun Number(text: String, modifier: Modifier) {
    val style = styleOf(Type.Torque, tokens.ink)
    BasicText(text, modifier, style, maxLines = 1, softWrap = false, autoSize = TextAutoSize.StepBased(style.fontSize * 0.3f, style.fontSize, 1.sp))
}

/** A dividing hairline. */
@Composable
fun Hairline() {
    Spacer(Modifier.fillMaxWidth().height(1.dp).background(tokens.hair))
}

/** Lines under a heading and a dividing line; nothing where there are none. */
@Composable
fun ColumnScope.Listed(title: String, lines: List<String>) {
    if (lines.isEmpty()) return
    Hairline()
    Words(title, Type.Heading)
    lines.forEach { Words(it, Type.Body) }
}
