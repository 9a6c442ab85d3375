package app.baywalk.handover

import android.content.Context
import java.io.File

/** Where things lie on the phone. The system uploads nothing of these but [cloud]. */
class Folders(context: Context) {
    /** The logbook. */
    val book = File(context.noBackupFilesDir, "book").made()

    /** Photos that a camera is to write; the core takes them in from here. */
    val incoming = File(context.noBackupFilesDir, "incoming").made()

    /** Reports and backups on their way out. */
    val outgoing = File(context.noBackupFilesDir, "outgoing").made()

    /** The last backup, where the owner lets the system's own backup carry it. */
    val cloud = File(context.filesDir, "cloud").made()

    private fun File.made() = apply { mkdirs() }
}
