//! What a proof is read with.

use crate::coded::coded;

coded! {
    /// What was used to read.
    MeterKind as "meter" {
        /// A meter whose probes touch the conductor.
        Contact = "contact",
        /// A tester that only comes near; it proves nothing.
        Proximity = "proximity",
    }
}

coded! {
    /// The measurement category marked on a meter beside its voltage (IEC 61010, from memory): how
    /// near to the supply it may be used.
    MeterCategory as "meter-category" {
        /// Not noted, as in older entries.
        NotNoted = "not_noted",
        /// None is marked on it.
        Unmarked = "unmarked",
        /// For what is plugged into an outlet.
        Two = "cat_ii",
        /// For the wiring of a building, panels among it.
        Three = "cat_iii",
        /// For the supply itself.
        Four = "cat_iv",
    }
}

impl MeterCategory {
    /// Whether a meter so marked may prove AC conductors: one with no category may burst on a
    /// fault. Ours.
    #[must_use]
    pub const fn is_for_ac(self) -> bool {
        matches!(self, Self::Two | Self::Three | Self::Four)
    }
}

/// A meter, as a proof names it.
///
/// # Example
/// ```
/// use baywalk_domain::isolation::{Meter, MeterCategory};
/// let meter = Meter::contact("bench meter", MeterCategory::Three);
/// assert!(meter.category.is_for_ac());
/// assert!(!MeterCategory::Unmarked.is_for_ac());
/// ```
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Meter {
    /// Its kind.
    pub kind: MeterKind,
    /// What it is called, so that before and after are read with the same one.
    pub name: String,
    /// Its category.
    pub category: MeterCategory,
}

impl Meter {
    /// A contact meter.
    #[must_use]
    pub fn contact(name: &str, category: MeterCategory) -> Self {
        Self {
            kind: MeterKind::Contact,
            name: name.to_owned(),
            category,
        }
    }
}
