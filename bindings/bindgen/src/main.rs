//! Writes the Kotlin and Swift that call the core, from the library itself: `cargo run
//! -p baywalk-bindgen -- generate --language kotlin --no-format --out-dir FOLDER LIBRARY`.

fn main() {
    uniffi::uniffi_bindgen_main();
}
