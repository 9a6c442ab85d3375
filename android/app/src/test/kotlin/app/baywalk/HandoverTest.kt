package app.baywalk

import android.app.Application
import android.content.Intent
import android.net.Uri
import android.os.Build
import android.provider.MediaStore
import app.baywalk.handover.Asking
import app.baywalk.handover.CloudCopy
import app.baywalk.handover.Copying
import app.baywalk.handover.Folders
import app.baywalk.handover.HandoverProvider
import org.junit.Assert.assertArrayEquals
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNull
import org.junit.Assert.assertThrows
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.RuntimeEnvironment
import org.robolectric.annotation.Config
import java.io.File
import java.io.FileNotFoundException
import java.io.IOException

/** Files that leave and come, against a simulated framework. */
@RunWith(RobolectricTestRunner::class)
@Config(sdk = [26, 34])
class HandoverTest {
    private val app: Application get() = RuntimeEnvironment.getApplication()
    private val folders get() = Folders(app)
    private val bytes = ByteArray(70_000) { (it % 251).toByte() }

    @Test fun aCameraWritesToThePlaceThatItWasGranted() {
        val photo = HandoverProvider.photo()
        val asked = Asking.camera(photo)
        assertEquals(MediaStore.ACTION_IMAGE_CAPTURE, asked.action)
        assertEquals(photo, asked.clipData?.getItemAt(0)?.uri)
        assertTrue(asked.flags and Intent.FLAG_GRANT_WRITE_URI_PERMISSION != 0)
        app.contentResolver.openOutputStream(photo, "w")!!.use { it.write(bytes) }
        assertArrayEquals(bytes, HandoverProvider.fileOf(app, photo)!!.readBytes())
        assertEquals("image/jpeg", app.contentResolver.getType(photo))
    }

    @Test fun aReportIsReadAndNeverWritten() {
        File(folders.outgoing, "walk-2027.html").writeBytes(bytes)
        val uri = HandoverProvider.outgoing("walk-2027.html")
        assertArrayEquals(bytes, app.contentResolver.openInputStream(uri)!!.use { it.readBytes() })
        app.contentResolver.query(uri, null, null, null, null)!!.use {
            assertTrue(it.moveToFirst())
            assertEquals("walk-2027.html", it.getString(0))
            assertEquals(70_000L, it.getLong(1))
        }
        for (mode in listOf("w", "rw", "rwt", "wa")) {
            assertThrows(mode, FileNotFoundException::class.java) { app.contentResolver.openFileDescriptor(uri, mode) }
        }
        assertArrayEquals(bytes, File(folders.outgoing, "walk-2027.html").readBytes())
    }

    @Test fun noAddressReachesOutOfTheTwoFolders() {
        File(folders.book, "book.db").writeText("the only copy")
        val tries = listOf(
            "out/..%2Fbook%2Fbook.db", "out/../book/book.db", "book/book.db", "in/..%2Fbook%2Fbook.db",
            "out/.hidden", "in/photo.jpg", "out", "", "out/a/b.html", "in/%2Fetc%2Fhosts", "out/a%00.html",
        )
        for (path in tries) {
            val uri = Uri.parse("content://${HandoverProvider.AUTHORITY}/$path")
            assertNull(path, HandoverProvider.fileOf(app, uri))
            assertThrows(path, FileNotFoundException::class.java) { app.contentResolver.openInputStream(uri) }
        }
    }

    @Test fun sharingGrantsReadingAlone() {
        val chooser = Asking.share(app, "walk.zip")
        @Suppress("DEPRECATION")
        val send = chooser.getParcelableExtra<Intent>(Intent.EXTRA_INTENT)!!
        assertEquals("application/zip", send.type)
        assertTrue(send.flags and Intent.FLAG_GRANT_READ_URI_PERMISSION != 0)
        assertEquals(0, send.flags and Intent.FLAG_GRANT_WRITE_URI_PERMISSION)
        assertEquals(HandoverProvider.outgoing("walk.zip"), send.clipData?.getItemAt(0)?.uri)
    }

    @Test fun picturesAreAskedForWithoutAPermission() {
        val expected = if (Build.VERSION.SDK_INT >= 33) MediaStore.ACTION_PICK_IMAGES else Intent.ACTION_OPEN_DOCUMENT
        assertEquals(expected, Asking.picture().action)
        assertEquals("walk.zip", Asking.placeForBackup("walk.zip").getStringExtra(Intent.EXTRA_TITLE))
        assertEquals(Intent.ACTION_OPEN_DOCUMENT, Asking.backup().action)
    }

    @Test fun aDocumentIsBroughtInWholeOrNotAtAll() {
        val photo = HandoverProvider.photo()
        app.contentResolver.openOutputStream(photo, "w")!!.use { it.write(bytes) }
        val to = File(folders.incoming, "brought")
        Copying(app).bring(photo, to)
        assertArrayEquals(bytes, to.readBytes())
        to.delete()
        assertThrows(IOException::class.java) { Copying(app).bring(HandoverProvider.photo(), to) }
        assertFalse(to.exists())
        assertEquals(1, folders.incoming.list()!!.size)
    }

    @Test fun aBackupThatIsSentReadsBackTheSame() {
        val backup = File(folders.outgoing, "walk.zip").apply { writeBytes(bytes) }
        val to = HandoverProvider.photo()
        HandoverProvider.fileOf(app, to)!!.writeBytes(ByteArray(200_000))
        assertTrue(Copying(app).send(backup, to))
        assertArrayEquals(bytes, HandoverProvider.fileOf(app, to)!!.readBytes())
    }

    @Test fun theSystemCarriesABackupOnlyWhereTheOwnerSaysSo() {
        val backup = File(folders.outgoing, "walk.zip").apply { writeBytes(bytes) }
        val cloud = CloudCopy(app)
        cloud.keep(backup)
        assertEquals(0, folders.cloud.list()!!.size)
        cloud.allowed = true
        cloud.keep(backup)
        assertArrayEquals(bytes, File(folders.cloud, "last.zip").readBytes())
        assertEquals(1, folders.cloud.list()!!.size)
        CloudCopy(app).allowed = false
        assertEquals(0, folders.cloud.list()!!.size)
    }

    @Test fun theLogbookLiesWhereNothingIsUploaded() {
        val kept = app.noBackupFilesDir.path
        assertTrue(listOf(folders.book, folders.incoming, folders.outgoing).all { it.path.startsWith(kept) })
        assertFalse(folders.cloud.path.startsWith(kept))
    }
}
