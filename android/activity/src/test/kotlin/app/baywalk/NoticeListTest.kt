package app.baywalk

import app.baywalk.mobile.Baywalk
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test
import java.nio.file.Files
import java.time.LocalDate

/** What the real core lists to be told. */
class NoticeListTest {
    @Test fun eachRigHasItsNextWalkInThePersonsLanguage() {
        for ((language, open) in mapOf("en" to "Open", "es" to "Abrir")) {
            val folder = Files.createTempDirectory("baywalk").toFile()
            val core = Baywalk.open(folder.path, listOf(language))
            try {
                core.startFrom("sample-motorhome", "Wren")
                core.startFrom("sample-motorhome", "Lark")
                val notices = noticesOf(core)
                assertEquals(setOf("Wren", "Lark"), notices.map { it.title }.toSet())
                assertEquals("a key of its own each", 2, notices.map { it.key }.toSet().size)
                assertTrue(notices.all { it.words.isNotBlank() && !it.on.isBefore(LocalDate.now().minusDays(1)) })
                val words = noticeWordsOf(core)
                assertEquals(open, words.open)
                assertTrue((listOf(words.channel) + words.reasons.map { it.words }).none { it.startsWith("shell-") })
            } finally {
                core.letGo()
                folder.deleteRecursively()
            }
        }
    }
}
