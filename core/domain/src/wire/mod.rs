//! Conductors: their geometry and their resistance.

mod geometry;
mod resistance;
mod table;

pub use geometry::{area_mm2, diameter_mm};
pub use resistance::{
    COLDEST, HOTTEST, Resistance, ResistanceBasis, resistance, resistivity,
    temperature_coefficient, temperature_factor,
};
pub use table::WireTable;
