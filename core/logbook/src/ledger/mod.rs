//! The ledger: the append-only chain of entries that everything else is computed from.
//!
//! Each entry is one line of canonical JSON (RFC 8785). Its digest is SHA-256 over the digest before
//! and the stored bytes of the entry. The chain tells of accident and clumsy change, not of a forger
//! who has the file and computes it anew.

mod append;
mod digest;
mod fault;
mod kinds;
mod misfit;
mod read;
mod upcast;
mod verify;

pub use digest::{Digest, Head};
pub use fault::EntryFault;
pub use kinds::{KINDS, current};
pub use misfit::{Misfit, MisfitWhy, Verified};
pub use read::{Numbered, read};

pub(crate) use append::{append, put};
pub(crate) use read::{
    by_id, each, each_stored, head, of_kind, of_walk, origins, photos, versioned,
};
pub(crate) use verify::{Depth, verify};
