package app.baywalk

import androidx.compose.foundation.background
import androidx.compose.foundation.clickable
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.size
import androidx.compose.foundation.layout.width
import androidx.compose.foundation.text.BasicText
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.style.TextOverflow
import androidx.compose.ui.unit.dp
import app.baywalk.design.Type
import app.baywalk.design.Words
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test
import java.io.File

/** The judges themselves, by faults planted for them; and what the sources of the screens may not hold. */
class PlantedTest {
    @Test fun eachPlantedFaultIsFound() {
        val ink = TextStyle(color = Color.Black)
        finds("no label") { Box(Modifier.size(80.dp).clickable(role = Role.Button) {}) }
        finds("no role") { Box(Modifier.size(80.dp).clickable {}.semantics { contentDescription = "Key" }) }
        finds("at least 56.0 × 56.0") { Box(Modifier.size(80.dp, 55.dp).clickable(role = Role.Button) {}.semantics { contentDescription = "Key" }) }
        finds("at least 104.0 × 72.0") { Box(Modifier.size(103.dp, 72.dp).clickable(role = Role.Button) {}.semantics { contentDescription = "Held" }) }
        finds("above the lower 60 %") { Box(Modifier.size(110.dp, 72.dp).clickable(role = Role.Button) {}.semantics { contentDescription = "Held" }) }
        finds("cut:") { BasicText("a word that does not fit", Modifier.width(40.dp), ink, overflow = TextOverflow.Ellipsis, maxLines = 1) }
        finds("contrast") { BasicText("pale words", style = TextStyle(color = Color(0xFF707070))) }
        assertEquals(emptyList<String>(), judged { Words("plain words", Type.Body) })
    }

    @Test fun contrastIsThatOfTheStandard() {
        // WCAG 2.2, definition of contrast ratio: black on white is 21; #767676 on white is the well-known 4.54.
        assertEquals(21f, contrast(Color.Black, Color.White), 0.001f)
        assertEquals(4.54f, contrast(Color(0xFF767676), Color.White), 0.005f)
    }

    @Test fun theScreensUseNothingThatOnlyADesktopHas() {
        val denied = listOf("java.awt", "javax.swing", "org.jetbrains.skia", "org.jetbrains.skiko",
            "androidx.compose.ui.window", "androidx.compose.desktop", "androidx.compose.ui.awt", "ImageComposeScene", "java.nio.file")
        val sources = sources()
        assertTrue(sources.size > 15)
        assertEquals("", sources.flatMap { file -> denied.filter { it in file.readText() }.map { "${file.name}: $it" } }.joinToString("\n"))
    }

    @Test fun theScreensHoldNoSentenceOfTheirOwn() {
        val literal = Regex("\"[^\"]*\"")
        val sentence = Regex("[A-Za-z]{2,} [a-z]{2,}")
        val found = sources().flatMap { file ->
            file.readLines().filterNot { "*" in it || "import" in it }.flatMap { line ->
                literal.findAll(line).map { it.value.replace(Regex("\\$\\{[^}]*}?"), "") }.filter { sentence.containsMatchIn(it) }
                    .map { "${file.name}: $it" }
            }
        }
        assertEquals("", found.joinToString("\n"))
    }

    private fun sources() = File("src/main/kotlin").walk().filter { it.extension == "kt" }.toList()

    private fun finds(fault: String, content: @Composable () -> Unit) =
        assertTrue("$fault was not found: ${judged(content)}", judged(content).any { fault in it })

    private fun judged(content: @Composable () -> Unit) = judge(
        Sample("planted", listOf("Held")) { Column(Modifier.fillMaxSize().background(Color.White)) { content() } }, Sight(), emptyMap(),
    )
}
