//! `calc wire`: geometry and resistance of a conductor.

use super::shape::{HeadOut, Word};
use super::{Calculate, Fault, at};
use baywalk_domain::rig::{Material, Strands, WireSize};
use baywalk_domain::wire::{
    Resistance, ResistanceBasis, WireTable, area_mm2, diameter_mm, resistance,
};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The calculation.
pub(super) struct Calculation;

/// A conductor.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct Given {
    /// Its size, such as 6 AWG, 2/0 AWG, 250 kcmil or 2.5 mm2.
    size: String,
    /// Its metal; copper where left out.
    material: Option<Word<Material>>,
    /// How it is built; stranded where left out.
    strands: Option<Word<Strands>>,
    /// Its temperature in degrees Celsius; 20 where left out.
    celsius: Option<f64>,
}

/// Its geometry and resistance.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Found {
    area_mm2: f64,
    /// Of one solid wire of that area.
    diameter_mm: f64,
    circular_mils: f64,
    celsius: f64,
    ohm_per_metre: f64,
    ohm_per_kilometre: f64,
    ohm_per_thousand_feet: f64,
    basis: BasisOut,
}

/// Where the resistance comes from.
#[derive(Debug, Serialize, JsonSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
enum BasisOut {
    /// A row of a table, brought to the temperature.
    Table {
        id: Word<WireTable>,
        head: Option<HeadOut>,
        row: &'static str,
        column: &'static str,
        celsius: f64,
    },
    /// Resistivity over area, and 2 % for strands.
    Calculation,
}

impl From<&Resistance> for BasisOut {
    fn from(found: &Resistance) -> Self {
        match found.basis {
            ResistanceBasis::Calculation => Self::Calculation,
            ResistanceBasis::Table { table, row, column } => Self::Table {
                id: Word(table),
                head: table.table().map(|table| table.head().into()),
                row,
                column,
                celsius: table.celsius(),
            },
        }
    }
}

impl Calculate for Calculation {
    const NAME: &'static str = "wire";
    const ABOUT: &'static str =
        "Area, diameter and direct-current resistance of a conductor at a temperature.";
    type In = Given;
    type Out = Found;

    fn calculate(given: Given) -> Result<Found, Fault> {
        let size = WireSize::parse(&given.size).map_err(at("size"))?;
        let material = given.material.map_or(Material::Copper, |word| word.0);
        let strands = given.strands.map_or(Strands::Stranded, |word| word.0);
        let celsius = given.celsius.unwrap_or(20.0);
        let found = resistance(&size, material, strands, celsius).map_err(at("celsius"))?;
        let diameter_mm = diameter_mm(&size);
        Ok(Found {
            area_mm2: area_mm2(&size),
            diameter_mm,
            circular_mils: (diameter_mm / 0.0254).powi(2),
            celsius,
            ohm_per_metre: found.ohm_per_metre,
            ohm_per_kilometre: found.ohm_per_metre * 1000.0,
            ohm_per_thousand_feet: found.ohm_per_metre * 304.8,
            basis: (&found).into(),
        })
    }
}
