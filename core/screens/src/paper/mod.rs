//! What is put on paper, or into a file that is read as paper: report, follow-up sheet, labels.

mod album;
mod labels;
mod offer;
mod report;
mod save;
mod wanted;

pub use baywalk_paper::Paper;
pub use labels::labels;
pub use offer::{papers, write_by_key};
pub use report::{last_walk, write, write_follow_up};
pub use wanted::{Format, PhotoSize, Wanted};

pub(crate) use album::Album;
pub(crate) use save::{save, save_bytes};

/// The edition of the software.
const EDITION: &str = concat!("baywalk ", env!("CARGO_PKG_VERSION"));
