package app.baywalk

import android.app.Activity
import android.app.AlertDialog
import app.baywalk.card.sentenceOf
import app.baywalk.mobile.Fault

/** Does something with the core outside its screens; a fault is told in a box, and [after] follows when it is closed. */
inline fun Activity.telling(crossinline after: () -> Unit = {}, work: () -> Unit) {
    try {
        work()
    } catch (fault: Fault) {
        AlertDialog.Builder(this).setMessage(sentenceOf(fault)).setOnDismissListener { after() }.show()
    }
}
