//! Conductors: their geometry and their resistance.

mod geometry;

pub use geometry::{area_mm2, diameter_mm};
