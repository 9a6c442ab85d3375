package androidx.activity

/** Declarations only, so that MainActivity is type-checked where androidx is not to be had; never packaged. */
open class ComponentActivity : android.app.Activity()
