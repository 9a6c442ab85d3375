package app.baywalk.feel

import android.content.Context
import android.os.VibrationEffect
import android.os.Vibrator

/** What a hand in a glove feels: told by count and length, since strength is not felt through leather. */
enum class Feel(private vararg val beats: Long) {
    ONE(0, SHORT),
    TWO(0, SHORT, GAP, SHORT),
    THREE(0, SHORT, GAP, SHORT, GAP, SHORT),
    LONG(0, LASTING),
    REFUSED(0, LASTING, GAP, SHORT);

    fun play(context: Context) {
        @Suppress("DEPRECATION") // its successor is there from Android 12 on only
        val vibrator = context.getSystemService(Vibrator::class.java)
        if (vibrator.hasVibrator()) vibrator.vibrate(VibrationEffect.createWaveform(beats, -1))
    }
}

private const val SHORT = 60L
private const val GAP = 120L
private const val LASTING = 400L
