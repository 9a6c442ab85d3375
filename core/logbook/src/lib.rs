//! The one owner of storage: rig files, ledger, photos, backup.
//!
//! [`Logbook`] is what screens call. Below it stand the [`ledger`], which is all that lasts, the
//! tables computed from it, and the [`store`] that holds both in one folder.

pub mod ledger;
mod logbook;
pub mod photo;
mod projection;
pub mod rigfile;
pub mod store;
pub mod stored;

pub use logbook::{ActFault, Clock, ImportFault, Logbook, Outcome, SystemClock};
pub use projection::{Change, PointPast, WalkHead};
