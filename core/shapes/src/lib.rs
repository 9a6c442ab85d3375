#![doc = include_str!("../README.md")]

mod bounds;
mod clip;
mod count;
mod drawing;
mod label;
mod path;
mod point;
mod role;
mod round;
mod spread;

pub mod clamp;
pub mod drift;
pub mod found;
pub mod frame;
pub mod hatch;
pub mod line;
pub mod mesh;
pub mod one_line;
pub mod palette;
pub mod pin;
pub mod places;
pub mod proof;
pub mod screw;
pub mod sign;
pub mod strip;
pub mod svg;
pub mod tag;

pub use bounds::Bounds;
pub use drawing::{Dash, Drawing, Part, Shape};
pub use label::{Anchor, Label, Size, cut, width_of};
pub use path::{Path, Segment};
pub use point::Point;
pub use role::Role;
