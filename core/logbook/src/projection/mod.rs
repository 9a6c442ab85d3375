//! What screens read: tables computed from the ledger, dropped and rebuilt at will.

mod behind;
mod book;
mod change;
mod ended;
mod facts;
mod finding;
mod fingerprint;
mod fold;
mod glance;
mod gone;
mod json;
mod past;
mod progress;
mod project;
mod rebuild;
mod standing;
mod timing;
mod walk;

pub use change::Change;
pub use glance::{OutlineBay, RigGlance, RigOutline, WalkBegun};
pub use gone::Gone;
pub use past::PointPast;
pub use walk::WalkHead;

pub(crate) use behind::behind;
pub(crate) use book::book_at;
pub(crate) use change::changes;
pub(crate) use facts::{Facts, facts};
pub(crate) use fingerprint::fingerprint;
pub(crate) use fold::OpenWalk;
pub(crate) use fold::RigFold;
pub(crate) use glance::{glance, glances, outline};
pub(crate) use past::point_past;
pub(crate) use progress::{Progress, progress};
pub(crate) use project::project;
pub(crate) use rebuild::rebuild;
pub(crate) use timing::acts as timing_acts;
pub(crate) use walk::{walk_extent, walks};

/// The version of the computed tables; where a store has another one they are rebuilt.
pub(crate) const VERSION: u32 = 4;
