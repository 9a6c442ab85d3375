package app.baywalk.design

import androidx.compose.foundation.Image
import androidx.compose.foundation.border
import androidx.compose.foundation.gestures.detectTapGestures
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.offset
import androidx.compose.foundation.layout.width
import androidx.compose.runtime.Composable
import androidx.compose.runtime.compositionLocalOf
import androidx.compose.runtime.remember
import androidx.compose.ui.Modifier
import androidx.compose.ui.graphics.BlendMode
import androidx.compose.ui.graphics.ColorFilter
import androidx.compose.ui.graphics.ImageBitmap
import androidx.compose.ui.input.pointer.pointerInput
import androidx.compose.ui.layout.ContentScale
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import app.baywalk.mobile.PinView

/** Reads a photo of ours from its file; nothing where it can't be read. */
val LocalPhotos = compositionLocalOf<(String) -> ImageBitmap?> { { null } }

/** The highest that a photo grows, as a share of its width. */
private const val TALLEST = 1.2f

/**
 * A photo over the whole width with its pins at their places. Where it can be pressed, the place is
 * handed over in thousandths of its width and height.
 */
@Composable
fun PinnedPhoto(path: String?, words: String, pins: List<PinView>, onPlace: ((Int, Int) -> Unit)? = null) {
    val read = LocalPhotos.current
    val image = remember(path) { path?.let(read) } ?: return Words(words, Type.Body)
    // By night a photo is as dim and as red as what stands around it.
    val dimmed = if (tokens.night) ColorFilter.tint(tokens.ink, BlendMode.Modulate) else null
    BoxWithConstraints(Modifier.fillMaxWidth()) {
        val share = image.height.toFloat() / image.width
        val (width, height) = if (share <= TALLEST) maxWidth to maxWidth * share else maxWidth * (TALLEST / share) to maxWidth * TALLEST
        val pressed = if (onPlace == null) Modifier else Modifier.pointerInput(path, onPlace) {
            detectTapGestures { at -> onPlace(part(at.x, size.width), part(at.y, size.height)) }
        }
        Box(Modifier.width(width).height(height).border(2.dp, tokens.ink).then(pressed).semantics { contentDescription = words }) {
            Image(image, null, Modifier.width(width).height(height), contentScale = ContentScale.FillBounds, colorFilter = dimmed)
            pins.forEach { pin ->
                val (x, y) = width * (pin.pin.across.toInt() / PARTS) to height * (pin.pin.down.toInt() / PARTS)
                Painted(pin.glyph, Modifier.offset(x - (pin.glyph.width / 2).dp, y - (pin.glyph.height / 2).dp))
            }
        }
    }
}

private const val PARTS = 1000f

private fun part(at: Float, of: Int): Int = (at / of * PARTS).toInt().coerceIn(0, PARTS.toInt())
