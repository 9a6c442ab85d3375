package app.baywalk

import android.content.Context
import app.baywalk.handover.Folders
import app.baywalk.mobile.Baywalk

/** The one logbook of the process: an activity that is made anew finds it open. */
object Book {
    private var open: Baywalk? = null

    /** Opens the logbook, or gives the one that is open; a `Fault` says in words why it can't be opened. */
    @Synchronized
    fun of(context: Context): Baywalk = open ?: Baywalk.open(Folders(context).book.path, locales(context)).also { open = it }

    private fun locales(context: Context): List<String> {
        val all = context.resources.configuration.locales
        return (0 until all.size()).map { all[it].toLanguageTag() }
    }
}
