package app.baywalk

import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.offset
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import app.baywalk.design.Key
import app.baywalk.design.Look
import org.jetbrains.skia.FontMgr
import org.jetbrains.skia.FontStyle
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test
import java.io.File

/**
 * Every sample as a picture beside the one that is kept at half its size. Kept anew by `BAYWALK_BLESS=1 mvn -f android/pom.xml -pl screens
 * -am test -Dtest=GoldensTest -Dsurefire.failIfNoSpecifiedTests=false`; each is to be looked at before it is committed.
 */
class GoldensTest {
    private val kept = File("src/test/goldens")
    private val out = File("target/goldens")
    private val bless = System.getenv("BAYWALK_BLESS") == "1"
    private val sights = listOf(Look.Day, Look.Night).flatMap { listOf(Sight(it), Sight(it, 1f, 320, 640)) } +
        listOf(Sight(Look.Day, 2f), Sight(Look.Day, 2f, 320, 640))

    @Test fun everySampleLooksAsItWasKept() {
        assertEquals("the pictures were drawn in this face; install fonts-dejavu-core", "DejaVu Sans", face())
        out.deleteRecursively()
        if (bless) kept.deleteRecursively()
        val drawn = mutableSetOf<String>()
        val faults = mutableListOf<String>()
        eachSample(sights) { sample, sight, say ->
            val path = "${sight.name}/${sample.name}.png".replace(' ', '-')
            assertTrue("two samples are called $path", drawn.add(path))
            val picture = shoot(sight, say, content = sample.content)
            picture.save(File(out, path))
            faults += compared(path, Pixels.of(picture))
        }
        val left = kept.walk().filter { it.extension == "png" }.map { it.relativeTo(kept).path }.filterNot { it in drawn }
        faults += left.map { "$it: no sample is called so, delete the picture" }
        assertEquals("${faults.size} of ${drawn.size} pictures; what was drawn lies in ${out.path}", "", faults.joinToString("\n"))
    }

    private fun compared(path: String, drawn: Pixels): List<String> {
        val file = File(kept, path)
        if (bless) drawn.save(file)
        if (!file.exists()) return listOf("$path: not kept yet")
        val blocks = Pixels.read(file).differs(drawn)
        return blocks.take(1).map { "$path: ${blocks.size} blocks differ, the first at $it" }
    }

    @Test fun aPlantedChangeIsSeenAndAHairIsNot() {
        val drawn = { words: String, x: Float -> Pixels.of(shoot(Sight(), emptyMap()) { Box { Key(words, {}, Modifier.offset(20.dp + x.dp, 20.dp)) } }) }
        val held = drawn("Held", 0f)
        assertTrue("another word", held.differs(drawn("Hold", 0f)).isNotEmpty())
        assertTrue("a key that stands elsewhere", held.differs(drawn("Held", 3f)).isNotEmpty())
        assertTrue("another look", held.differs(Pixels.of(shoot(Sight(Look.Dark), emptyMap()) { Key("Held", {}) })).isNotEmpty())
        assertEquals("a shift that no eye sees", emptyList<Pair<Int, Int>>(), held.differs(drawn("Held", 0.04f)))
        val file = File("target/planted.png")
        held.save(file)
        assertEquals("what is kept is what was drawn", emptyList<Pair<Int, Int>>(), held.differs(Pixels.read(file)))
    }

    private fun face() = FontMgr.default.matchFamilyStyle("sans-serif", FontStyle.NORMAL)?.familyName
}
