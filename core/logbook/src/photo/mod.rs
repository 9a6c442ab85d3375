//! Photos: taken in by path, decoded within limits, kept upright and without what tells a place.
//!
//! Kept are a master with a long edge of 1600 pixels, which the ledger names by its SHA-256, a
//! thumbnail that is made again at will, and by choice the picture as it came. Of all that a
//! camera writes beside the pixels the time alone stays. Decoding is pure Rust and scaled, so that
//! memory follows the size of the master and not that of the camera.

mod check;
mod colour;
mod expected;
mod fault;
mod files;
mod frame;
mod jpeg;
mod keep;
mod kind;
mod make;
mod notes;
mod pixels;
mod png;
mod source;

pub use check::{MissingPhoto, MissingWhy, PhotoCheck, Stray, StrayWhy};
pub use expected::{Arrived, Came};
pub use fault::{Foreign, PhotoFault};
pub use make::{Made, make, smaller, thumbnail};

pub(crate) use expected::Expected;
pub(crate) use files::{digest_of, find};
pub(crate) use keep::KeptPhoto;

/// The long edge of a master, in pixels.
pub const MASTER_EDGE: u32 = 1600;

/// The long edge of a thumbnail, in pixels.
pub const THUMBNAIL_EDGE: u32 = 320;

/// The most bytes that a file may have.
pub const MOST_BYTES: u64 = 64 * 1024 * 1024;

/// The most pixels of a JPEG that is decoded as it is read, and the most that all scans of a JPEG
/// go over: decoding takes no longer than that.
pub const MOST_PIXELS: u64 = 200_000_000;

/// The most pixels of a picture that has to be in memory as a whole: progressive JPEG, PNG.
pub const MOST_PIXELS_WHOLE: u64 = 16_000_000;

/// The most scans of a JPEG: each goes over the whole picture, however few bytes it has.
const MOST_SCANS: u64 = 32;

/// The most marker segments of a JPEG.
const MOST_SEGMENTS: usize = 4096;
