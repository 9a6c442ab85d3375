package app.baywalk

import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test
import org.w3c.dom.Element
import java.io.File
import javax.xml.parsers.DocumentBuilderFactory

/** The manifest and the rules of upload, read as they stand. */
class ManifestTest {
    private val manifest = read("src/main/AndroidManifest.xml")

    @Test fun nothingIsAskedForButNoticesStartAndTouch() {
        val asked = manifest.all("uses-permission").map { it.getAttribute("android:name").substringAfterLast('.') }
        assertEquals(listOf("POST_NOTIFICATIONS", "RECEIVE_BOOT_COMPLETED", "VIBRATE"), asked)
    }

    @Test fun onlyWhatTheLauncherStartsIsOpenToOtherApps() {
        val parts = listOf("activity", "receiver", "provider", "service").flatMap { manifest.all(it) }
        assertTrue(parts.size >= 5)
        val open = parts.filter { it.getAttribute("android:exported") != "false" }
        assertEquals(listOf(".MainActivity"), open.map { it.getAttribute("android:name") })
    }

    @Test fun onlyTheCopyOfTheBackupIsEverUploaded() {
        val rules = listOf("xml/backup_rules.xml", "xml-v28/backup_rules.xml", "xml/extraction_rules.xml")
        val included = rules.flatMap { read("src/main/res/$it").all("include") }
        assertEquals(setOf("nothing/", "cloud/"), included.map { it.getAttribute("path") }.toSet())
        assertTrue(included.all { it.getAttribute("domain") == "file" })
        val flagged = read("src/main/res/xml-v28/backup_rules.xml").all("include").single()
        assertEquals("clientSideEncryption", flagged.getAttribute("requireFlags"))
        val cloud = read("src/main/res/xml/extraction_rules.xml").all("cloud-backup").single()
        assertEquals("true", cloud.getAttribute("disableIfNoEncryptionCapabilities"))
    }

    private fun read(path: String): Element =
        DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(File(path)).documentElement

    private fun Element.all(name: String): List<Element> =
        getElementsByTagName(name).let { found -> (0 until found.length).map { found.item(it) as Element } }
}
