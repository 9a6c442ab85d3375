//! The kinds of quantity: torque, voltage, current, distance travelled, hours run.

use super::Unit;
use crate::coded::coded;

/// A value outside the range a quantity can have.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{found} is outside what {quantity} can be: from {least} to {most} {unit}")]
pub struct OutOfRange {
    /// The name of the quantity, as in message keys.
    pub quantity: &'static str,
    /// The number found, in the unit it was given in.
    pub found: f64,
    /// The least that is taken, in that unit.
    pub least: f64,
    /// The most that is taken, in that unit.
    pub most: f64,
    /// The code of the unit.
    pub unit: &'static str,
}

macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident $word:literal in $si:ident $from:ident, $least:literal to $most:literal, by $unit:ident($base:ident) as $list:literal {
        $($(#[$udoc:meta])* $variant:ident = $code:literal * $factor:expr),+ $(,)?
    }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
        pub struct $name(f64);

        impl $name {
            /// The least value that is taken, in the SI unit.
            pub const LEAST: f64 = $least;
            /// The most that is taken, in the SI unit.
            pub const MOST: f64 = $most;

            /// Takes a value in the SI unit.
            ///
            /// # Errors
            /// [`OutOfRange`] where it is no number or outside the range.
            pub fn $from(value: f64) -> Result<Self, OutOfRange> {
                $unit::SI.quantity(value)
            }

            /// The value in the SI unit.
            #[must_use]
            pub const fn $si(self) -> f64 {
                self.0
            }

            /// The value in another unit.
            #[must_use]
            pub fn in_unit(self, unit: $unit) -> f64 {
                self.0 / unit.factor()
            }
        }

        coded! {
            /// The units that are understood for this quantity.
            $unit as $list { $($(#[$udoc])* $variant = $code),+ }
        }

        impl $unit {
            /// The SI unit of the quantity.
            pub const SI: Self = Self::$base;

            /// How many of the SI unit one of this unit is; exact by definition.
            #[must_use]
            pub const fn factor(self) -> f64 {
                match self { $(Self::$variant => $factor),+ }
            }
        }

        impl Unit for $unit {
            type Quantity = $name;
            fn quantity(self, value: f64) -> Result<$name, OutOfRange> {
                let si = value * self.factor();
                if si.is_finite() && ($least..=$most).contains(&si) {
                    Ok($name(si))
                } else {
                    Err(OutOfRange {
                        quantity: $word,
                        found: value,
                        least: $least / self.factor(),
                        most: $most / self.factor(),
                        unit: $crate::coded::Coded::code(self),
                    })
                }
            }
        }
    };
}

/// One pound-force in newtons, exact: 0.453 592 37 kg × 9.806 65 m/s².
const POUND_FORCE: f64 = 4.448_221_615_260_5;
/// One inch in metres, exact.
const INCH: f64 = 0.0254;

quantity! {
    /// A tightening torque or a step of a torque tool's scale, from 0.01 to 1,000 N·m: below that no
    /// tool has a step, above it no terminal of a vehicle is tightened.
    Torque "torque" in newton_metres from_newton_metres, 0.01 to 1000.0, by TorqueUnit(NewtonMetres) as "torque-unit" {
        /// Newton metres.
        NewtonMetres = "N.m" * 1.0,
        /// Inch-pounds.
        InchPounds = "lbf.in" * POUND_FORCE * INCH,
        /// Foot-pounds.
        FootPounds = "lbf.ft" * POUND_FORCE * INCH * 12.0,
        /// Kilogram-force centimetres.
        KilogramForceCentimetres = "kgf.cm" * 0.098_066_5,
    }
}

quantity! {
    /// A voltage, from −1,500 to 1,500 V.
    Voltage "voltage" in volts from_volts, -1500.0 to 1500.0, by VoltageUnit(Volts) as "voltage-unit" {
        /// Volts.
        Volts = "V" * 1.0,
        /// Thousandths of a volt.
        Millivolts = "mV" * 0.001,
    }
}

quantity! {
    /// A current that a circuit carries, from 0 to 5,000 A.
    Current "current" in amperes from_amperes, 0.0 to 5000.0, by CurrentUnit(Amperes) as "current-unit" {
        /// Amperes.
        Amperes = "A" * 1.0,
        /// Thousandths of an ampere.
        Milliamperes = "mA" * 0.001,
    }
}

quantity! {
    /// A distance travelled, up to five million kilometres.
    Distance "distance" in kilometres from_kilometres, 0.0 to 5_000_000.0, by DistanceUnit(Kilometres) as "distance-unit" {
        /// Kilometres.
        Kilometres = "km" * 1.0,
        /// Miles.
        Miles = "mi" * 1.609_344,
    }
}

quantity! {
    /// What an hour meter of an engine shows, up to 200,000 h.
    EngineHours "engine-hours" in hours from_hours, 0.0 to 200_000.0, by HourUnit(Hours) as "hour-unit" {
        /// Hours.
        Hours = "h" * 1.0,
    }
}
