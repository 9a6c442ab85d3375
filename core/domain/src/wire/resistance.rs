//! Resistance of a conductor at any temperature.

use super::{WireTable, area_mm2};
use crate::published::Row;
use crate::rig::{Material, Strands, WireSize};
use crate::units::OutOfRange;

/// The coldest conductor that is calculated, in degrees Celsius.
pub const COLDEST: f64 = -55.0;
/// The hottest conductor that is calculated, in degrees Celsius.
pub const HOTTEST: f64 = 250.0;
/// How much longer the strands are than the conductor: about 2 %, as NEC table 8 has it (computed).
const LAY: f64 = 1.02;

/// The resistance of a conductor per length.
#[derive(Debug, Clone, PartialEq)]
pub struct Resistance {
    /// Ohms per metre.
    pub ohm_per_metre: f64,
    /// The temperature it holds for, in degrees Celsius.
    pub celsius: f64,
    /// Where it comes from.
    pub basis: ResistanceBasis,
}

/// Where a resistance comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ResistanceBasis {
    /// A row of a table, brought to the temperature.
    Table {
        /// The table.
        table: WireTable,
        /// The row.
        row: &'static str,
        /// The column.
        column: &'static str,
    },
    /// Resistivity over area, and 2 % for strands.
    Calculation,
}

/// Resistivity at 20 °C in nΩ·m: annealed copper of 100 % IACS, aluminium for conductors
/// (IEC 60028, IEC 60889, second hand). The same number is mΩ·mm²/m.
#[must_use]
pub const fn resistivity(material: Material) -> f64 {
    match material {
        Material::Copper | Material::TinnedCopper => 17.241,
        Material::Aluminium => 28.264,
    }
}

/// Change of resistance per kelvin, as a share of that at 20 °C (IEC 60028, IEC 60287, second
/// hand).
#[must_use]
pub const fn temperature_coefficient(material: Material) -> f64 {
    match material {
        Material::Copper | Material::TinnedCopper => 0.003_93,
        Material::Aluminium => 0.004_03,
    }
}

/// By what a resistance at one temperature is multiplied to have it at another; both in degrees
/// Celsius: (1 + α·(T − 20)) / (1 + α·(T0 − 20)).
#[must_use]
pub fn temperature_factor(material: Material, from: f64, to: f64) -> f64 {
    let at = |celsius: f64| temperature_coefficient(material).mul_add(celsius - 20.0, 1.0);
    at(to) / at(from)
}

/// The resistance of a conductor at a temperature in degrees Celsius: by NEC chapter 9 table 8 for
/// gauges, by the maximum of IEC 60228 for square millimetres, by resistivity and area for sizes
/// and metals that the tables leave out.
///
/// # Errors
/// [`OutOfRange`] below −55 or above 250 °C.
///
/// # Example
/// ```
/// use baywalk_domain::rig::{Material, Strands, WireSize};
/// use baywalk_domain::wire::resistance;
/// let six = WireSize::parse("6 AWG")?;
/// let found = resistance(&six, Material::Copper, Strands::Stranded, 75.0)?;
/// assert_eq!(format!("{:.3}", found.ohm_per_metre * 304.8), "0.491");
/// assert!(resistance(&six, Material::Copper, Strands::Stranded, f64::NAN).is_err());
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn resistance(
    size: &WireSize,
    material: Material,
    strands: Strands,
    celsius: f64,
) -> Result<Resistance, OutOfRange> {
    if !(celsius.is_finite() && (COLDEST..=HOTTEST).contains(&celsius)) {
        return Err(OutOfRange {
            quantity: "temperature",
            found: celsius,
            least: COLDEST,
            most: HOTTEST,
            unit: "degC",
        });
    }
    let (at_table, from, basis) =
        tabled(size, material, strands).unwrap_or_else(|| calculated(size, material, strands));
    Ok(Resistance {
        ohm_per_metre: at_table * temperature_factor(material, from, celsius),
        celsius,
        basis,
    })
}

/// Ohms per metre, the temperature they hold for, and where they come from.
type Found = (f64, f64, ResistanceBasis);

fn tabled(size: &WireSize, material: Material, strands: Strands) -> Option<Found> {
    let (table, column) = column(size, material, strands)?;
    let row: Row<'static> = table
        .table()?
        .rows()
        .find(|row| WireSize::parse(row.name()).is_ok_and(|listed| same(&listed, size)))?;
    Some((
        row.number(column)? * table.ohm_per_metre(),
        table.celsius(),
        ResistanceBasis::Table {
            table,
            row: row.name(),
            column,
        },
    ))
}

/// The table and column that speak of a conductor.
const fn column(
    size: &WireSize,
    material: Material,
    strands: Strands,
) -> Option<(WireTable, &'static str)> {
    use {Material as M, Strands as S};
    match (size, material, strands) {
        (WireSize::SquareMillimetres(_), M::Copper, S::Fine) => {
            Some((WireTable::Iec60228, "class_5_copper"))
        }
        (WireSize::SquareMillimetres(_), M::Copper, S::Stranded) => {
            Some((WireTable::Iec60228, "class_2_copper"))
        }
        (WireSize::SquareMillimetres(_), M::Aluminium, S::Stranded) => {
            Some((WireTable::Iec60228, "class_2_aluminium"))
        }
        (WireSize::SquareMillimetres(_) | WireSize::Kcmil(_), _, _) => None,
        (WireSize::Awg(_), M::Copper, S::Solid) => Some((WireTable::NecTable8, "copper_solid")),
        (WireSize::Awg(_), M::Copper, _) => Some((WireTable::NecTable8, "copper_stranded")),
        (WireSize::Awg(_), M::TinnedCopper, S::Solid) => None,
        (WireSize::Awg(_), M::TinnedCopper, _) => Some((WireTable::NecTable8, "tinned_stranded")),
        (WireSize::Awg(_), M::Aluminium, S::Solid) => {
            Some((WireTable::NecTable8, "aluminium_solid"))
        }
        (WireSize::Awg(_), M::Aluminium, _) => Some((WireTable::NecTable8, "aluminium_stranded")),
    }
}

/// Whether two sizes of one system are the same: `1.5 mm2` and `1,50 mm2` are.
fn same(one: &WireSize, other: &WireSize) -> bool {
    match (one, other) {
        (WireSize::SquareMillimetres(one), WireSize::SquareMillimetres(other)) => {
            (one.value() - other.value()).abs() < 1e-9
        }
        _ => one == other,
    }
}

fn calculated(size: &WireSize, material: Material, strands: Strands) -> Found {
    let lay = match strands {
        Strands::Solid => 1.0,
        Strands::Stranded | Strands::Fine => LAY,
    };
    let ohm_per_metre = resistivity(material) / 1000.0 / area_mm2(size) * lay;
    (ohm_per_metre, 20.0, ResistanceBasis::Calculation)
}
