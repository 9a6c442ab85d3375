package app.baywalk

import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test
import java.io.File

/**
 * All that the core shows to the shells, beside `android/core/surface.txt`: what was agreed changes only where somebody means
 * it. Written anew by `BAYWALK_BLESS=1 mvn -f android/pom.xml -pl screens -am test -Dtest=SurfaceTest
 * -Dsurefire.failIfNoSpecifiedTests=false`, and committed with the change.
 */
class SurfaceTest {
    private val kept = File("../core/surface.txt")

    @Test fun theCoreShowsWhatWasAgreed() {
        val sources = File("../core/target/bindings").walk().filter { it.extension == "kt" }.sortedBy { it.path }
        val found = surface(sources.flatMap { it.readLines() }.toList())
        if (System.getenv("BAYWALK_BLESS") == "1") kept.writeText(found)
        assertTrue("a surface is that of a logbook", "fun open(folder: String, locales: List<String>): Baywalk" in found)
        assertEquals("bless it as the test says, where it is meant", kept.readText(), found)
    }

    @Test fun whatIsReadOffTheKotlinIsWhole() {
        val kotlin = """
            public interface BaywalkInterface {
                /** fun `gone`() */
                fun `card`(`rig`: kotlin.String): CardView
                companion object
            }
            open class Baywalk: Disposable, AutoCloseable, BaywalkInterface
                override fun `card`(`rig`: kotlin.String): CardView {
                @Throws(Fault::class) fun `open`(`folder`: kotlin.String): Baywalk {
            }
            public interface UniffiForeign {
                fun `hidden`()
            }
            data class Room (
                val `width`: kotlin.Double
                ,
            ){
            }
            enum class How {
                RECORDED,
                PASSED;
            }
        """.trimIndent().lines()
        val read = "interface BaywalkInterface\n    fun card(rig: String): CardView\n\nclass Baywalk\n    fun open(folder: String): Baywalk\n\n" +
            "data class Room\n    val width: Double\n\nenum class How\n    RECORDED\n    PASSED\n"
        assertEquals(read, surface(kotlin))
    }
}

private val type = Regex("""^(?:public )?(?:open )?((?:data |enum |sealed )?class|interface) (\w+)""")
private val topLevel = Regex("""^\w.*\b(class|object|interface|fun|val|var) """)
private val member = Regex("""^(?:@Throws\(Fault::class\) )?(fun `.*|val `.*|(?:data )?class \w+|object \w+|[A-Z][A-Z0-9_]*[,;])""")
private val ours = Regex("""Ffi|Uniffi|UniFfi|Impl|RustBuffer|Disposable|NoHandle|JNA|Exception$""")

/** Types and members of generated Kotlin, without comments and without what serves the crossing itself. */
private fun surface(lines: List<String>): String {
    val found = StringBuilder()
    var within = false
    lines.filterNot { it.trim().startsWith("*") || it.trim().startsWith("/*") }.forEach { line ->
        if (topLevel.containsMatchIn(line)) within = false
        type.find(line)?.let { head ->
            within = !ours.containsMatchIn(head.groupValues[2])
            if (within) found.append("${if (found.isEmpty()) "" else "\n"}${head.groupValues[1]} ${head.groupValues[2]}\n")
        }
        if (within && line.startsWith(" ")) member.find(line.trim())?.let { found.append("    ${plain(it.groupValues[1])}\n") }
    }
    return found.toString()
}

private fun plain(member: String): String =
    member.replace("`", "").replace("kotlin.", "").replace("collections.", "").trimEnd('{', ' ', ',', ';').replace(Regex("""\) : \w+\(\)$"""), "")
