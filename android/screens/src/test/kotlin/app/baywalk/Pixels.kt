package app.baywalk

import org.jetbrains.skia.Bitmap
import org.jetbrains.skia.Image
import java.awt.image.BufferedImage
import java.awt.image.IndexColorModel
import java.io.File
import javax.imageio.IIOImage
import javax.imageio.ImageIO
import javax.imageio.ImageWriteParam
import kotlin.math.abs

/** A picture of opaque pixels, each channel in 16 steps. */
class Pixels(val width: Int, val height: Int, private val rgb: IntArray) {
    /** Where two pictures differ: blocks of [BLOCK] × [BLOCK] whose mean of any channel is over [TOLERANCE] of 255 apart. */
    fun differs(other: Pixels): List<Pair<Int, Int>> {
        if (width != other.width || height != other.height) return listOf(0 to 0)
        return (0 until height step BLOCK).flatMap { y -> (0 until width step BLOCK).map { it to y } }
            .filter { (x, y) -> CHANNELS.any { abs(mean(x, y, it) - other.mean(x, y, it)) > TOLERANCE } }
    }

    private fun mean(left: Int, top: Int, shift: Int): Float {
        val (right, bottom) = minOf(left + BLOCK, width) to minOf(top + BLOCK, height)
        var sum = 0
        for (y in top until bottom) for (x in left until right) sum += rgb[y * width + x] shr shift and 0xFF
        return sum.toFloat() / ((right - left) * (bottom - top))
    }

    /** Writes a PNG, by a table of its colours where they are few. */
    fun save(file: File) {
        file.parentFile.mkdirs()
        val colours = rgb.distinct().sorted()
        val picture = if (colours.size <= 256) {
            val bits = if (colours.size <= 16) 4 else 8
            val kind = if (bits == 4) BufferedImage.TYPE_BYTE_BINARY else BufferedImage.TYPE_BYTE_INDEXED
            BufferedImage(width, height, kind, IndexColorModel(bits, colours.size, colours.toIntArray(), 0, false, -1, 0))
        } else {
            BufferedImage(width, height, BufferedImage.TYPE_INT_RGB)
        }
        picture.setRGB(0, 0, width, height, rgb, 0, width)
        val writer = ImageIO.getImageWritersByFormatName("png").next()
        val least = writer.defaultWriteParam.apply { compressionMode = ImageWriteParam.MODE_EXPLICIT; compressionQuality = 0f }
        ImageIO.createImageOutputStream(file.apply { delete() }).use { out ->
            writer.output = out
            writer.write(null, IIOImage(picture, null, null), least)
        }
    }

    companion object {
        private const val BLOCK = 4
        private const val TOLERANCE = 10f
        private val CHANNELS = listOf(16, 8, 0)

        /** A drawn picture at half its size. */
        fun of(image: Image): Pixels {
            val bytes = Bitmap.makeFromImage(image).readPixels()!!
            val (width, height) = image.width / 2 to image.height / 2
            val step = { at: Int ->
                val four = listOf(0, 4, image.width * 4, image.width * 4 + 4).sumOf { bytes[at + it].toInt() and 0xFF }
                (four / 4 + 8) / 17 * 17
            }
            return Pixels(width, height, IntArray(width * height) { at ->
                val first = (at / width * 2 * image.width + at % width * 2) * 4
                step(first) or (step(first + 1) shl 8) or (step(first + 2) shl 16) or OPAQUE
            })
        }

        fun read(file: File): Pixels {
            val read = ImageIO.read(file)
            return Pixels(read.width, read.height, read.getRGB(0, 0, read.width, read.height, null, 0, read.width))
        }

        private const val OPAQUE = 0xFF shl 24
    }
}
