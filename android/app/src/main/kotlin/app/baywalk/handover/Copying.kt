package app.baywalk.handover

import android.content.Context
import android.net.Uri
import java.io.File
import java.io.FileNotFoundException
import java.io.FileOutputStream
import java.io.IOException
import java.io.InputStream
import java.security.MessageDigest

/** Copies between files of ours and documents of other apps, whole or not at all. */
class Copying(private val context: Context) {
    /** Brings a document in as a file: written beside, flushed to the disk, then named. */
    @Throws(IOException::class)
    fun bring(from: Uri, to: File) {
        val part = File(to.path + ".part")
        try {
            opened(from).use { source ->
                FileOutputStream(part).use { sink -> source.copyTo(sink); sink.fd.sync() }
            }
            if (!part.renameTo(to)) throw IOException("${part.name} could not be named ${to.name}")
        } finally {
            part.delete()
        }
    }

    /** Writes a file into a document, flushes it and reads it back; true where it reads back the same. */
    @Throws(IOException::class)
    fun send(from: File, to: Uri): Boolean {
        val target = context.contentResolver.openFileDescriptor(to, "wt") ?: throw FileNotFoundException("$to")
        target.use {
            FileOutputStream(it.fileDescriptor).use { sink ->
                from.inputStream().use { source -> source.copyTo(sink) }
                sink.fd.sync()
            }
        }
        return MessageDigest.isEqual(digest(from.inputStream()), digest(opened(to)))
    }

    private fun opened(uri: Uri) =
        context.contentResolver.openInputStream(uri) ?: throw FileNotFoundException("$uri")

    private fun digest(source: InputStream): ByteArray {
        val digest = MessageDigest.getInstance("SHA-256")
        val buffer = ByteArray(DEFAULT_BUFFER_SIZE)
        source.use {
            while (true) {
                val read = it.read(buffer)
                if (read < 0) break
                digest.update(buffer, 0, read)
            }
        }
        return digest.digest()
    }
}
