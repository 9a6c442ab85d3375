package app.baywalk

import android.content.Intent
import android.os.Bundle
import androidx.activity.ComponentActivity
import androidx.activity.compose.BackHandler
import androidx.activity.compose.setContent
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import app.baywalk.mobile.Baywalk
import app.baywalk.mobile.Fault
import app.baywalk.notice.Notices
import app.baywalk.rest.Asleep

/** The one activity: it opens the logbook and shows the shared screens. */
class MainActivity : ComponentActivity() {
    private var phone: AndroidPhone? = null
    private var back by mutableStateOf<(() -> Unit)?>(null)

    override fun onCreate(savedInstanceState: Bundle?) {
        super.onCreate(savedInstanceState)
        telling({ finish() }) { start(Book.of(this)) }
    }

    private fun start(core: Baywalk) {
        core.photosArrived()
        listNotices(core)
        val phone = AndroidPhone(this, core).also { phone = it }
        Asleep(this).permission()?.let { requestPermissions(arrayOf(it), 0) }
        setContent {
            BackHandler(back != null) { back?.invoke() }
            App(core, phone, onBackKey = { back = it })
        }
    }

    /** Days may have moved while the screens were in front. */
    override fun onStop() {
        super.onStop()
        if (phone == null) return
        try {
            listNotices(Book.of(this))
        } catch (_: Fault) {
            // The screens have told it; the notices of before stand.
        }
    }

    private fun listNotices(core: Baywalk) = Notices(this).list(noticesOf(core), noticeWordsOf(core))

    @Deprecated("the framework's own way; the newer one keeps no more over the death of the process")
    override fun onActivityResult(requestCode: Int, resultCode: Int, data: Intent?) {
        super.onActivityResult(requestCode, resultCode, data)
        phone?.returned(requestCode, data?.data)
    }
}
