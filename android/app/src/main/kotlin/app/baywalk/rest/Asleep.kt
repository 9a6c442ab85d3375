package app.baywalk.rest

import android.Manifest
import android.content.Context
import android.content.Intent
import android.content.pm.PackageManager
import android.net.Uri
import android.os.Build

/** What keeps notices from coming: the system puts apps asleep that are opened once a year, and may silence them. */
class Asleep(private val context: Context) {
    /** Whether the system may put the app asleep; from Android 11 on. */
    fun possible(): Boolean = Build.VERSION.SDK_INT >= 30 && !context.packageManager.isAutoRevokeWhitelisted

    /** Opens the page on which the owner can forbid that. */
    fun page(): Intent =
        Intent(Intent.ACTION_AUTO_REVOKE_PERMISSIONS, Uri.fromParts("package", context.packageName, null))

    /** The permission to show notices, where it is still to be asked; from Android 13 on. */
    fun permission(): String? = Manifest.permission.POST_NOTIFICATIONS.takeIf {
        Build.VERSION.SDK_INT >= 33 && context.checkSelfPermission(it) != PackageManager.PERMISSION_GRANTED
    }
}
