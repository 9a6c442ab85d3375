package app.baywalk.design

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.size
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.Path
import androidx.compose.ui.graphics.PathEffect
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.StrokeJoin
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.graphics.drawscope.scale
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.TextMeasurer
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.drawText
import androidx.compose.ui.text.font.FontWeight
import androidx.compose.ui.text.rememberTextMeasurer
import androidx.compose.ui.unit.dp
import androidx.compose.ui.unit.sp
import app.baywalk.mobile.Anchor
import app.baywalk.mobile.Part
import app.baywalk.mobile.Picture
import app.baywalk.mobile.Role
import app.baywalk.mobile.Segment
import app.baywalk.mobile.Shape

/**
 * Paints a drawing of the core as it is: this side adds colours and nothing else. Without a
 * [description] it is left out for the screen reader, since words beside it say the same.
 */
@Composable
fun Painted(picture: Picture, modifier: Modifier = Modifier, description: String = "", times: Float = 1f, on: Tokens = tokens) {
    val measurer = rememberTextMeasurer()
    val fontScale = LocalDensity.current.fontScale
    val said = if (description.isEmpty()) Modifier.clearAndSetSemantics { } else Modifier.semantics { contentDescription = description }
    Canvas(modifier.size((picture.width * times).dp, (picture.height * times).dp).then(said)) {
        scale(times * density, Offset.Zero) {
            picture.parts.forEach { part -> paint(part, on, measurer, density * fontScale) }
        }
    }
}

private fun DrawScope.paint(part: Part, on: Tokens, measurer: TextMeasurer, sp: Float) {
    val color = colorOf(part.role, on)
    when (val shape = part.shape) {
        is Shape.Fill -> drawPath(pathOf(shape.path), color)
        is Shape.Stroke -> drawPath(
            pathOf(shape.path),
            color,
            style = Stroke(
                width = shape.width.toFloat(),
                cap = StrokeCap.Butt,
                join = StrokeJoin.Miter,
                pathEffect = shape.dash?.let { PathEffect.dashPathEffect(floatArrayOf(it.on.toFloat(), it.off.toFloat())) },
            ),
        )
        is Shape.Words -> {
            val label = shape.label
            val style = TextStyle(color = color, fontSize = (label.size.toFloat() / sp).sp, fontWeight = FontWeight(label.weight.toInt()), fontFeatureSettings = "tnum")
            val laid = measurer.measure(label.text, style, softWrap = false, maxLines = 1)
            val shift = when (label.anchor) {
                Anchor.START -> 0f
                Anchor.MIDDLE -> laid.size.width / 2f
                Anchor.END -> laid.size.width.toFloat()
            }
            drawText(laid, topLeft = Offset(label.x.toFloat() - shift, label.y.toFloat() - laid.firstBaseline))
        }
    }
}

fun colorOf(role: Role, on: Tokens): Color = when (role) {
    Role.INK -> on.ink
    Role.DETAIL -> on.detail
    Role.HAIR -> on.hair
    Role.PLATE -> on.plate
    Role.FACE -> on.key
    Role.NEXT -> on.mark
    Role.ON_NEXT -> on.onMark
    Role.CAUTION -> on.caution
    Role.ON_CAUTION -> on.onCaution
}

private fun pathOf(segments: List<Segment>): Path {
    val path = Path()
    segments.forEach { step ->
        when (step) {
            is Segment.Move -> path.moveTo(step.x.toFloat(), step.y.toFloat())
            is Segment.Line -> path.lineTo(step.x.toFloat(), step.y.toFloat())
            is Segment.Arc -> path.arc(step)
            is Segment.Close -> path.close()
        }
    }
    return path
}

/** An arc in halves, since a whole turn in one piece would be taken for none. */
private fun Path.arc(arc: Segment.Arc) {
    val (x, y, r) = Triple(arc.x.toFloat(), arc.y.toFloat(), arc.radius.toFloat())
    val oval = Rect(x - r, y - r, x + r, y + r)
    val half = arc.sweep.toFloat() / 2f
    arcTo(oval, arc.from.toFloat(), half, false)
    arcTo(oval, arc.from.toFloat() + half, half, false)
}
