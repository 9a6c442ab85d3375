package app.baywalk

import android.app.Activity
import android.content.ActivityNotFoundException
import android.net.Uri
import app.baywalk.handover.Asking
import app.baywalk.handover.Copying
import app.baywalk.handover.Folders
import app.baywalk.handover.HandoverProvider
import app.baywalk.mobile.Baywalk
import app.baywalk.mobile.Room
import java.io.File
import java.io.IOException
import java.time.LocalDateTime
import java.time.format.DateTimeFormatter

/** What the screens ask of the phone. Nothing here is kept in memory alone: the process may die behind a camera. */
class AndroidPhone(private val activity: Activity, private val core: Baywalk) : Phone {
    private val choices = activity.getSharedPreferences("choices", Activity.MODE_PRIVATE)
    private val folders = Folders(activity)
    private var waiting: ((String) -> Unit)? = null

    override fun kept(key: String): String? = choices.getString(key, null)

    override fun keep(key: String, value: String) {
        choices.edit().putString(key, value).commit()
    }

    override fun backupPath(): String = File(folders.outgoing, "backup-${STAMP.format(LocalDateTime.now())}.zip").path

    override fun shareReport(rig: String, html: String) {
        val report = "walk-${STAMP.format(LocalDateTime.now())}.html"
        File(folders.outgoing, report).writeText(html)
        activity.startActivity(Asking.share(activity, report))
    }

    /**
     * Takes a photo, or asks for one where there is no camera. The core expects it before either opens: where the process
     * dies behind the camera, the next start enters it, and [taken] is not needed.
     */
    override fun photo(rig: String, taken: (String) -> Unit) = activity.telling {
        val uri = HandoverProvider.photo()
        val file = HandoverProvider.fileOf(activity, uri) ?: return@telling
        core.photoExpected(rig, placeIn(rig), file.path)
        keep(EXPECTED, file.path)
        waiting = taken
        try {
            activity.startActivityForResult(Asking.camera(uri), CAMERA)
        } catch (_: ActivityNotFoundException) {
            activity.startActivityForResult(Asking.picture(), PICTURE)
        }
    }

    /** A camera or a picker came back; what it gave is handed on, and where it gave nothing none is expected any more. */
    fun returned(request: Int, picked: Uri?) = activity.telling {
        val expected = kept(EXPECTED)?.let(::File) ?: return@telling
        if (request == PICTURE && picked != null) {
            try { Copying(activity).bring(picked, expected) } catch (_: IOException) { expected.delete() }
        }
        val taken = waiting
        waiting = null
        when {
            expected.length() == 0L -> core.photoForgotten(expected.path)
            taken == null -> core.photosArrived()
            else -> {
                taken(expected.path)
                core.photoForgotten(expected.path)
            }
        }
    }

    private fun placeIn(rig: String): String =
        core.card(rig, ANY).card.tag ?: core.rigs().rigs.first { it.id == rig }.name

    companion object {
        const val CAMERA = 1
        const val PICTURE = 2
        private const val EXPECTED = "expected-photo"
        private val ANY = Room(328.0, 1.0)
        private val STAMP = DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss")
    }
}
