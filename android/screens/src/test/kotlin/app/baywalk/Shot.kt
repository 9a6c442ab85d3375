package app.baywalk

import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.ui.ImageComposeScene
import androidx.compose.ui.graphics.toComposeImageBitmap
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.unit.Density
import app.baywalk.design.Hand
import app.baywalk.design.LocalHand
import app.baywalk.design.LocalPhotos
import app.baywalk.design.LocalSay
import app.baywalk.design.LocalTokens
import app.baywalk.design.Look
import app.baywalk.design.tokensOf
import org.jetbrains.skia.Color
import org.jetbrains.skia.EncodedImageFormat
import org.jetbrains.skia.Image
import org.jetbrains.skia.Paint
import org.jetbrains.skia.Rect
import org.jetbrains.skia.Surface
import java.io.File

/** How a screen is looked at. */
data class Sight(val look: Look = Look.Day, val scale: Float = 1f, val width: Int = 360, val height: Int = 780, val hand: Hand = Hand.Right) {
    val name: String get() = listOfNotNull(
        look.name.lowercase(), "$width".takeIf { width != 360 }, "text ${(scale * 100).toInt()}".takeIf { scale != 1f }, "left".takeIf { hand == Hand.Left },
    ).joinToString(" ")
}

/** What surrounds a screen in the app. */
@Composable
fun Around(sight: Sight, say: Map<String, String>, density: Float = 2f, content: @Composable () -> Unit) {
    CompositionLocalProvider(
        LocalTokens provides tokensOf(sight.look),
        LocalHand provides sight.hand,
        LocalSay provides { say[it] ?: "?$it" },
        LocalDensity provides Density(density, sight.scale),
        LocalPhotos provides { panel.toComposeImageBitmap() },
        content = content,
    )
}

/** A photo of a panel: a box with two rows of screws. */
val panel: Image by lazy {
    val surface = Surface.makeRasterN32Premul(400, 300)
    val paint = { grey: Int -> Paint().apply { color = Color.makeRGB(grey, grey, grey) } }
    surface.canvas.drawRect(Rect.makeWH(400f, 300f), paint(150))
    surface.canvas.drawRect(Rect.makeXYWH(40f, 40f, 320f, 220f), paint(90))
    listOf(120f, 190f).forEach { y -> (1..6).forEach { x -> surface.canvas.drawCircle(40f + 46f * x, y, 14f, paint(200)) } }
    surface.makeImageSnapshot()
}

/** A screen as a picture. */
fun shoot(sight: Sight, say: Map<String, String>, density: Float = 1f, content: @Composable () -> Unit): Image {
    val (width, height) = (sight.width * density).toInt() to (sight.height * density).toInt()
    val scene = ImageComposeScene(width, height, Density(density, sight.scale)) { Around(sight, say, density, content) }
    try {
        scene.render(0)
        return scene.render(1_000_000_000)
    } finally {
        scene.close()
    }
}


fun Image.save(file: File) {
    file.parentFile.mkdirs()
    file.writeBytes(encodeToData(EncodedImageFormat.PNG)!!.bytes)
}
