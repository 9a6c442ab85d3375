//! The nominal voltages of DC systems and what they can rise and fall to.

use crate::coded::coded;

coded! {
    /// The nominal voltage of a DC system.
    Nominal as "dc-nominal" {
        /// 12 V.
        V12 = "12V",
        /// 24 V.
        V24 = "24V",
        /// 48 V; in use it passes 50 V.
        V48 = "48V",
    }
}

impl Nominal {
    /// How many 12 V steps it has.
    const fn steps(self) -> f64 {
        match self {
            Self::V12 => 1.0,
            Self::V24 => 2.0,
            Self::V48 => 4.0,
        }
    }

    /// The nominal voltage in volts.
    #[must_use]
    pub const fn volts(self) -> f64 {
        12.0 * self.steps()
    }

    /// The highest voltage while charging, in volts: 14.6, 29.2, 58.4 (four, eight, sixteen cells at
    /// 3.65 V; computed, from memory of the cells' maximum).
    #[must_use]
    pub const fn charging(self) -> f64 {
        14.6 * self.steps()
    }

    /// Below this a resting bank is nearly empty, in volts: 11.8 V a 12 V step. Common practice, no
    /// source; kinds of battery differ.
    #[must_use]
    pub const fn empty(self) -> f64 {
        11.8 * self.steps()
    }
}
