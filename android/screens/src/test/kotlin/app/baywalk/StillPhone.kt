package app.baywalk

import androidx.compose.ui.graphics.ImageBitmap
import java.io.File

/** A phone that keeps what it is given and has one backup to pick. */
class StillPhone(private val backup: String) : Phone {
    private val choices = mutableMapOf<String, String>()
    val handedOver = mutableListOf<String>()

    override fun kept(key: String): String? = choices[key]
    override fun keep(key: String, value: String) { choices[key] = value }
    override fun backupPath(): String = backup
    override val outgoing: String get() = File(backup).parent
    override val country = "US"
    override fun share(file: String) { handedOver += file }
    override fun tablesPath(): String = "$backup.tables"
    override fun shareCalendar(rig: String, ics: String) = Unit
    override fun handOver(backup: String) { handedOver += backup }
    override fun pickBackup(picked: (String) -> Unit) = picked(backup)
    override fun photo(rig: String, place: String, entered: (List<String>) -> Unit) = Unit
    override val offers = listOf(Offer("shell-cloud", "shell-cloud-note", true) { handedOver += "offer" })
    override fun picture(path: String): ImageBitmap? = null
}
