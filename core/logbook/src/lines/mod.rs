//! The ledger as JSON Lines: what stands in a backup, and what is exported and imported.
//!
//! Each line is `{"digest":"…","entry":…}`: the entry's stored bytes as they are, and the digest by
//! which they hang on the line before. The last line is `{"end":{"digest":"…","seq":…}}`, so that a
//! file that was cut off shows. Every line is canonical JSON (RFC 8785).

mod export;
mod fault;
mod import;
mod read;
#[cfg(feature = "schema")]
mod schema;
mod write;

pub use fault::{LineFault, LinesFault};
pub use read::{Line, Lines};
#[cfg(feature = "schema")]
pub use schema::schema;

pub(crate) use export::export;
pub(crate) use import::import;
pub(crate) use write::Writer;

/// The most bytes of a line: many times the largest book.
pub const MOST_LINE: usize = 16 * 1024 * 1024;

const DIGEST: &str = r#"{"digest":""#;
const ENTRY: &str = r#"","entry":"#;
const END: &str = r#"{"end":{"digest":""#;
const SEQ: &str = r#"","seq":"#;
