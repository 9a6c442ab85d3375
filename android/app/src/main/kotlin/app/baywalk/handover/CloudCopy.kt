package app.baywalk.handover

import android.content.Context
import java.io.File
import java.io.FileOutputStream
import java.io.IOException

/**
 * The last backup, kept where the system's own backup takes it along: only where the owner says so, and only a backup
 * file, never the live logbook. The rules of upload stand in `res/xml*`.
 */
class CloudCopy(context: Context) {
    private val kept = context.getSharedPreferences("cloud", Context.MODE_PRIVATE)
    private val copy = File(Folders(context).cloud, "last.zip")

    /** Whether the owner lets a copy be carried. */
    var allowed: Boolean
        get() = kept.getBoolean(ALLOWED, false)
        set(value) {
            kept.edit().putBoolean(ALLOWED, value).commit()
            if (!value) copy.delete()
        }

    /** Takes a backup over, where that is allowed; the old copy stands until the new one is whole. */
    @Throws(IOException::class)
    fun keep(backup: File) {
        if (!allowed) return
        val part = File(copy.path + ".part")
        FileOutputStream(part).use { sink ->
            backup.inputStream().use { it.copyTo(sink) }
            sink.fd.sync()
        }
        if (!part.renameTo(copy)) throw IOException("${part.name} could not be named ${copy.name}")
    }

    private companion object { const val ALLOWED = "allowed" }
}
