//! Prints the script of the sample walk: `cargo run -p baywalk-tests --example record`.

use std::io::Write;

fn main() -> std::io::Result<()> {
    std::io::stdout().write_all(baywalk_tests::record::wren().as_bytes())
}
