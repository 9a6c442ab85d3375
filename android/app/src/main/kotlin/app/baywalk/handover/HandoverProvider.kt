package app.baywalk.handover

import android.content.ContentProvider
import android.content.ContentValues
import android.content.Context
import android.database.Cursor
import android.database.MatrixCursor
import android.net.Uri
import android.os.ParcelFileDescriptor
import android.provider.OpenableColumns
import java.io.File
import java.io.FileNotFoundException
import java.util.UUID

/** Hands single files to other apps, to those that were granted one: a photo to be written, a report to be read. */
class HandoverProvider : ContentProvider() {
    override fun onCreate() = true

    override fun openFile(uri: Uri, mode: String): ParcelFileDescriptor {
        if (uri.pathSegments.firstOrNull() == OUT && mode != "r") throw FileNotFoundException("$uri is only read")
        return ParcelFileDescriptor.open(file(uri), ParcelFileDescriptor.parseMode(mode))
    }

    override fun getType(uri: Uri) = when (uri.lastPathSegment?.substringAfterLast('.')) {
        "jpg" -> "image/jpeg"
        "html" -> "text/html"
        "pdf" -> "application/pdf"
        "ics" -> "text/calendar"
        "zip" -> "application/zip"
        else -> "application/octet-stream"
    }

    override fun query(uri: Uri, columns: Array<String>?, where: String?, with: Array<String>?, by: String?): Cursor {
        val file = file(uri)
        val asked = columns ?: arrayOf(OpenableColumns.DISPLAY_NAME, OpenableColumns.SIZE)
        val row = asked.map { column ->
            when (column) {
                OpenableColumns.DISPLAY_NAME -> file.name
                OpenableColumns.SIZE -> file.length()
                else -> null
            }
        }
        return MatrixCursor(asked).apply { addRow(row) }
    }

    override fun insert(uri: Uri, values: ContentValues?): Uri? = throw UnsupportedOperationException()
    override fun delete(uri: Uri, where: String?, with: Array<String>?): Int = throw UnsupportedOperationException()
    override fun update(uri: Uri, values: ContentValues?, where: String?, with: Array<String>?): Int =
        throw UnsupportedOperationException()

    private fun file(uri: Uri): File {
        val context = context ?: throw FileNotFoundException("$uri")
        return fileOf(context, uri) ?: throw FileNotFoundException("$uri")
    }

    companion object {
        const val AUTHORITY = "app.baywalk.handover"
        private const val IN = "in"
        private const val OUT = "out"
        private val PHOTO = Regex("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}\\.jpg")
        private val NAME = Regex("[A-Za-z0-9][A-Za-z0-9-]{0,79}\\.[a-z]{2,5}")

        /** A place for a photo that is to be written. */
        fun photo(): Uri = uri(IN, "${UUID.randomUUID()}.jpg")

        /** A file in the outgoing folder, by its name. */
        fun outgoing(name: String): Uri = uri(OUT, name)

        /** The file that an address of ours means; nothing for any other address. */
        fun fileOf(context: Context, uri: Uri): File? {
            val (folder, name) = uri.pathSegments.takeIf { it.size == 2 } ?: return null
            return when {
                folder == IN && PHOTO.matches(name) -> File(Folders(context).incoming, name)
                folder == OUT && NAME.matches(name) -> File(Folders(context).outgoing, name)
                else -> null
            }
        }

        private fun uri(folder: String, name: String): Uri =
            Uri.Builder().scheme("content").authority(AUTHORITY).appendPath(folder).appendPath(name).build()
    }
}
