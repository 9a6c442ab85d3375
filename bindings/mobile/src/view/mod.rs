//! What a screen shows, with its pictures.

mod bay;
mod card;
mod glyph;
mod line;
mod places;
mod proof;
mod result;
mod rig;
mod sources;
mod weigh;

pub use bay::{BayView, PinView, PointRow};
pub use card::{CardView, PressedView, Room};
pub use glyph::Glyph;
pub use proof::ShownPair;
pub use result::ResultView;
pub use rig::RigView;
pub use weigh::WeighedView;

pub(crate) use bay::bay;
pub(crate) use card::card;
pub(crate) use result::result;
pub(crate) use rig::rig;
pub(crate) use weigh::weigh;
