package app.baywalk

import android.content.Context
import android.content.SharedPreferences
import app.baywalk.handover.Folders
import app.baywalk.mobile.Baywalk
import app.baywalk.safe.LANGUAGE

/** Where the choices of the person are kept. */
fun choicesOf(context: Context): SharedPreferences = context.getSharedPreferences("choices", Context.MODE_PRIVATE)

/** The one logbook of the process: an activity that is made anew finds it open. */
object Book {
    private var open: Baywalk? = null

    /** Opens the logbook, or gives the one that is open; a `Fault` says in words why it can't be opened. */
    @Synchronized
    fun of(context: Context): Baywalk = open ?: Baywalk.open(Folders(context).book.path, locales(context)).also { open = it }

    /** The language that was chosen, then those of the phone. */
    private fun locales(context: Context): List<String> {
        val all = context.resources.configuration.locales
        val chosen = choicesOf(context).getString(LANGUAGE, null)?.ifEmpty { null }
        return listOfNotNull(chosen) + (0 until all.size()).map { all[it].toLanguageTag() }
    }
}
