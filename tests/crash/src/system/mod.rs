//! The calls by which this program reaches its files, seen on their way to the system.
//!
//! `open`, `write`, `fsync`, `rename` and the like are defined here, in the program itself, so that
//! the linker takes these and not the ones of the C library: the database engine and the standard
//! library both call them. Unless the calling thread watches a folder they go straight on. Where it
//! does, each call below that folder is noted, counted, and failed where a plan asks for it.

mod calls;
mod fault;
mod op;
mod watch;

pub use fault::{Fault, Plan};
pub use op::{FileId, Op};
pub use watch::{Counts, Seen, mark, unwatch, watch};
