package app.baywalk

import android.app.Activity
import android.content.ActivityNotFoundException
import android.graphics.BitmapFactory
import android.net.Uri
import androidx.compose.ui.graphics.ImageBitmap
import androidx.compose.ui.graphics.asImageBitmap
import app.baywalk.handover.Asking
import app.baywalk.handover.CloudCopy
import app.baywalk.handover.Copying
import app.baywalk.handover.Folders
import app.baywalk.handover.HandoverProvider
import app.baywalk.mobile.Baywalk
import app.baywalk.rest.Asleep
import java.io.File
import java.io.IOException
import java.time.LocalDateTime
import java.time.format.DateTimeFormatter

/** What the screens ask of the phone. Nothing here is kept in memory alone: the process may die behind a camera. */
class AndroidPhone(private val activity: Activity, private val core: Baywalk) : Phone {
    private val choices = choicesOf(activity)
    private val folders = Folders(activity)
    private val cloud = CloudCopy(activity)
    private var waiting: ((List<String>) -> Unit)? = null
    private var waitingBackup: ((String) -> Unit)? = null

    override fun kept(key: String): String? = choices.getString(key, null)

    override fun keep(key: String, value: String) {
        choices.edit().putString(key, value).commit()
    }

    override fun backupPath(): String = File(folders.outgoing, "backup-${STAMP.format(LocalDateTime.now())}.zip").path

    override val outgoing: String get() = folders.outgoing.path

    override fun tablesPath(): String = File(folders.outgoing, "tables-${STAMP.format(LocalDateTime.now())}.zip").path

    override val country: String get() = activity.resources.configuration.locales[0].country

    override fun share(file: String) = activity.startActivity(Asking.share(activity, File(file).name))

    override fun shareCalendar(rig: String, ics: String) {
        val file = File(folders.outgoing, "walks-${STAMP.format(LocalDateTime.now())}.ics")
        file.writeText(ics)
        share(file.path)
    }

    override fun handOver(backup: String) {
        // Where the copy for the system's own backup can't be written, the backup itself is handed on all the same.
        try { cloud.keep(File(backup)) } catch (_: IOException) { }
        share(backup)
    }

    override val offers: List<Offer>
        get() {
            val asleep = Asleep(activity)
            val awake = Offer("shell-awake", "shell-awake-note", false) { activity.startActivity(asleep.page()) }
            return listOfNotNull(
                awake.takeIf { asleep.possible() },
                Offer("shell-cloud", "shell-cloud-note", cloud.allowed) { cloud.allowed = !cloud.allowed },
            )
        }

    override fun pickBackup(picked: (String) -> Unit) {
        waitingBackup = picked
        activity.startActivityForResult(Asking.backup(), BACKUP)
    }

    override fun picture(path: String): ImageBitmap? = BitmapFactory.decodeFile(path)?.asImageBitmap()

    /**
     * Takes a photo, or asks for one where there is no camera. The core expects it before either opens, and enters it when
     * one comes back; where the process dies behind the camera, the next start enters it.
     */
    override fun photo(rig: String, place: String, entered: (List<String>) -> Unit) = activity.telling {
        val uri = HandoverProvider.photo()
        val file = HandoverProvider.fileOf(activity, uri) ?: return@telling
        core.photoExpected(rig, place, file.path)
        keep(EXPECTED, file.path)
        waiting = entered
        try {
            activity.startActivityForResult(Asking.camera(uri), CAMERA)
        } catch (_: ActivityNotFoundException) {
            activity.startActivityForResult(Asking.picture(), PICTURE)
        }
    }

    /** A camera or a picker came back; what it gave is taken in. */
    fun returned(request: Int, picked: Uri?) = activity.telling {
        if (request == BACKUP) return@telling returnedBackup(picked)
        val expected = kept(EXPECTED)?.let(::File) ?: return@telling
        if (request == PICTURE && picked != null) {
            try { Copying(activity).bring(picked, expected) } catch (_: IOException) { expected.delete() }
        }
        val told = core.photosArrived().map { it.words }
        waiting?.invoke(told)
        waiting = null
    }

    /** A copy of our own is read: what another app gives can be taken back at any moment. The core tells where there is none. */
    private fun returnedBackup(picked: Uri?) {
        val file = File(folders.incoming, "backup.zip")
        val then = waitingBackup
        waitingBackup = null
        if (picked == null || then == null) return
        file.delete()
        try { Copying(activity).bring(picked, file) } catch (_: IOException) { file.delete() }
        then(file.path)
    }

    companion object {
        const val CAMERA = 1
        const val PICTURE = 2
        const val BACKUP = 3
        private const val EXPECTED = "expected-photo"
        private val STAMP = DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss")
    }
}
