//! The one owner of storage: rig files, ledger, photos, backup.
//!
//! [`Logbook`] is what screens call. Below it stand the [`ledger`], which is all that lasts, the
//! tables computed from it, and the [`store`] that holds both in one folder.

pub mod backup;
pub mod ledger;
pub mod lines;
mod logbook;
pub mod photo;
mod projection;
pub mod recover;
pub mod rigfile;
pub mod store;
pub mod stored;

pub use logbook::{ActFault, Clock, ImportFault, Logbook, Outcome, SinceBackup, SystemClock};
pub use projection::{
    Change, Gone, OutlineBay, PointPast, RigGlance, RigOutline, WalkBegun, WalkHead,
};
