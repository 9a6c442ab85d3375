#![doc = include_str!("../README.md")]

mod act;
mod baywalk;
mod book;
mod fault;
#[cfg(feature = "parity")]
mod parity;
mod past;
mod photo;
mod picture;
mod plan;
mod resume;
mod safe;
mod screens;
mod set_up;
mod text;
mod timing;
mod view;

pub use baywalk::Baywalk;
pub use book::Field;
pub use fault::Fault;
#[cfg(feature = "parity")]
pub use parity::SteadyClock;
pub use past::PastView;
pub use photo::PinPlace;
pub use picture::{Anchor, Dash, Label, Part, Picture, Role, Segment, Shape};
pub use safe::{Progress, Watcher};
pub use view::{
    BayView, CardView, Glyph, PinView, PointRow, PressedView, ResultView, RigView, Room, ShownPair,
    WeighedView,
};

uniffi::setup_scaffolding!();
