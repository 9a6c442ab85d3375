package app.baywalk.handover

import android.content.ClipData
import android.content.Context
import android.content.Intent
import android.net.Uri
import android.os.Build
import android.provider.MediaStore

/** What is asked of other apps, one intent each. None needs a permission: each file is granted by itself. */
object Asking {
    private const val WRITE = Intent.FLAG_GRANT_WRITE_URI_PERMISSION or Intent.FLAG_GRANT_READ_URI_PERMISSION
    private const val ZIP = "application/zip"

    /** Asks a camera to write a photo to a place of ours. */
    fun camera(photo: Uri): Intent = Intent(MediaStore.ACTION_IMAGE_CAPTURE)
        .putExtra(MediaStore.EXTRA_OUTPUT, photo)
        .granting(photo, WRITE)

    /** Asks for a photo that is there already. */
    fun picture(): Intent =
        if (Build.VERSION.SDK_INT >= 33) Intent(MediaStore.ACTION_PICK_IMAGES)
        else Intent(Intent.ACTION_OPEN_DOCUMENT).addCategory(Intent.CATEGORY_OPENABLE).setType("image/*")

    /** Offers a file of the outgoing folder to whoever takes it. */
    fun share(context: Context, name: String): Intent {
        val uri = HandoverProvider.outgoing(name)
        val send = Intent(Intent.ACTION_SEND)
            .setType(context.contentResolver.getType(uri))
            .putExtra(Intent.EXTRA_STREAM, uri)
            .granting(uri, Intent.FLAG_GRANT_READ_URI_PERMISSION)
        return Intent.createChooser(send, null)
    }

    /** Asks where a backup is to be written. */
    fun placeForBackup(name: String): Intent = Intent(Intent.ACTION_CREATE_DOCUMENT)
        .addCategory(Intent.CATEGORY_OPENABLE).setType(ZIP).putExtra(Intent.EXTRA_TITLE, name)

    /** Asks for a backup; any type, since some apps forget what a file is. */
    fun backup(): Intent = Intent(Intent.ACTION_OPEN_DOCUMENT)
        .addCategory(Intent.CATEGORY_OPENABLE).setType("*/*")

    private fun Intent.granting(uri: Uri, flags: Int) = apply {
        clipData = ClipData.newRawUri(null, uri)
        addFlags(flags)
    }
}
