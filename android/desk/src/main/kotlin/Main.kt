package app.baywalk.desk

import androidx.compose.ui.graphics.ImageBitmap
import androidx.compose.ui.graphics.toComposeImageBitmap
import androidx.compose.ui.unit.DpSize
import androidx.compose.ui.unit.dp
import androidx.compose.ui.window.Window
import androidx.compose.ui.window.application
import androidx.compose.ui.window.rememberWindowState
import app.baywalk.App
import app.baywalk.Offer
import app.baywalk.Phone
import app.baywalk.card.sentenceOf
import app.baywalk.mobile.Baywalk
import app.baywalk.mobile.Fault
import app.baywalk.safe.LANGUAGE
import java.awt.FileDialog
import java.awt.Frame
import java.io.File
import java.io.IOException
import java.util.Locale
import org.jetbrains.skia.Image

/** This computer in the place of a phone: choices and files lie beside the logbook. */
class Desk(private val folder: File, private val core: Baywalk) : Phone {
    override fun kept(key: String): String? = File(folder, "$key.txt").takeIf { it.exists() }?.readText()

    override fun keep(key: String, value: String) = File(folder, "$key.txt").writeText(value)

    override fun backupPath(): String = File(folder, "backup-${System.currentTimeMillis()}.zip").path

    override val outgoing: String get() = folder.path

    override val country: String get() = Locale.getDefault().country

    override fun share(file: String) = Unit

    override fun tablesPath(): String = File(folder, "tables-${System.currentTimeMillis()}.zip").path

    override fun shareCalendar(rig: String, ics: String) = File(folder, "walks.ics").writeText(ics)

    override fun handOver(backup: String) = Unit

    override fun pickBackup(picked: (String) -> Unit) {
        chosen()?.let(picked)
    }

    override fun photo(rig: String, place: String, entered: (List<String>) -> Unit) {
        val path = chosen() ?: return
        try {
            entered(core.photoAdd(rig, place, path, "").sentences)
        } catch (fault: Fault) {
            entered(listOf(sentenceOf(fault)))
        }
    }

    override fun picture(path: String): ImageBitmap? = try {
        Image.makeFromEncoded(File(path).readBytes()).toComposeImageBitmap()
    } catch (_: IOException) {
        null
    } catch (_: IllegalArgumentException) {
        null
    }

    override val offers: List<Offer> = emptyList()

    private fun chosen(): String? = FileDialog(null as Frame?).apply { isVisible = true }.files.firstOrNull()?.path
}

/** The language that was chosen, else that of this computer. */
private fun locales(folder: File): List<String> =
    listOfNotNull(File(folder, "$LANGUAGE.txt").takeIf { it.exists() }?.readText()?.ifEmpty { null }, Locale.getDefault().toLanguageTag())

fun main(args: Array<String>) {
    val folder = File(args.firstOrNull() ?: "baywalk-desk").apply { mkdirs() }
    val core = Baywalk.open(File(folder, "store").path, locales(folder))
    if (core.rigs().rigs.isEmpty()) core.startFrom("sample-motorhome", "Wren")
    application {
        val size = rememberWindowState(size = DpSize(376.dp, 820.dp))
        Window(onCloseRequest = ::exitApplication, state = size, title = "Baywalk") { App(core, Desk(folder, core)) }
    }
}
