//! The store: a folder with the database, its lock and the photos. One writer at a time.

mod fault;
mod folder;
mod header;
mod lock;
mod migrate;
mod open;
mod pragma;
mod reader;
mod room;
mod scratch;
mod swap;

pub use fault::{Damage, Newer, StoreFault};

pub(crate) use folder::sync;
pub(crate) use lock::lock;
pub(crate) use open::{Store, same_schema};
pub(crate) use reader::Reader;
pub(crate) use room::room;
pub(crate) use swap::Swap;

/// Marks the file as one of this project ("bayw").
const APPLICATION: i32 = 0x6261_7977;

/// The version of the store: the form of its lasting tables and the kinds and versions of entries
/// that may stand in it. It goes up when an older program could no longer read all of it.
pub const VERSION: u32 = 3;

/// The name of the database file.
pub const DATABASE: &str = "baywalk.db";

/// The name of the folder of photos.
pub const PHOTOS: &str = "photos";
