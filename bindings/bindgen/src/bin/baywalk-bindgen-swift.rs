//! Writes the Swift, the headers and the module map that call the core, from its static library:
//! `cargo run -p baywalk-bindgen --bin baywalk-bindgen-swift -- --swift-sources LIBRARY FOLDER`.

fn main() {
    uniffi::uniffi_bindgen_swift();
}
