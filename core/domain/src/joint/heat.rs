//! A temperature rise and the class that it falls into.

use super::{Loading, at_normal_load};
use crate::coded::coded;

/// A difference of temperature in kelvin (degrees Celsius), from −100 to 1,500.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Rise(f64);

/// A difference of temperature that is none.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[error("a difference of {found} degrees; expected -100 to 1500")]
pub struct HeatFault {
    /// What was found.
    pub found: f64,
}

impl Rise {
    /// Takes a difference in kelvin or degrees Celsius.
    ///
    /// # Errors
    /// [`HeatFault`] where it is no number or out of range.
    pub fn new(kelvin: f64) -> Result<Self, HeatFault> {
        if (-100.0..=1500.0).contains(&kelvin) {
            Ok(Self(kelvin))
        } else {
            Err(HeatFault { found: kelvin })
        }
    }

    /// The difference in kelvin.
    #[must_use]
    pub const fn kelvin(self) -> f64 {
        self.0
    }
}

coded! {
    /// What a temperature was held against.
    Compared as "heat-compared" {
        /// A like part under a like load.
        Similar = "similar",
        /// The air around.
        Ambient = "ambient",
    }
}

coded! {
    /// The class of a rise, the least grave first.
    HeatClass as "heat-class" {
        /// Below 1 degree: nothing to act on.
        Unclassed = "unclassed",
        /// Possible deficiency: investigate.
        Possible = "possible",
        /// Probable deficiency: repair as time permits.
        Probable = "probable",
        /// Watch it until it is corrected.
        Monitor = "monitor",
        /// Major discrepancy: repair at once.
        Major = "major",
    }
}

/// The class of a rise by NETA table 100.18 (second hand).
///
/// The table has whole degrees with gaps between its rows: 1–3, 4–15, above 15 against a like part;
/// 1–10, 11–20, 21–40, above 40 against air. Our rule: the next class starts just above 3 and 15,
/// and just above 10, 20 and 40, so that what falls into a gap takes the graver class. The table has
/// no row "monitor" against a like part.
///
/// # Example
/// ```
/// use baywalk_domain::joint::{Compared, HeatClass, Rise, class};
/// assert_eq!(class(Compared::Similar, Rise::new(3.0)?), HeatClass::Possible);
/// assert_eq!(class(Compared::Similar, Rise::new(3.1)?), HeatClass::Probable);
/// assert_eq!(class(Compared::Ambient, Rise::new(40.1)?), HeatClass::Major);
/// # Ok::<(), baywalk_domain::joint::HeatFault>(())
/// ```
#[must_use]
pub fn class(compared: Compared, rise: Rise) -> HeatClass {
    class_of(compared, rise.0)
}

fn class_of(compared: Compared, kelvin: f64) -> HeatClass {
    use HeatClass::{Major, Monitor, Possible, Probable, Unclassed};
    let rows: &[(f64, HeatClass)] = match compared {
        Compared::Similar => &[(15.0, Major), (3.0, Probable)],
        Compared::Ambient => &[(40.0, Major), (20.0, Monitor), (10.0, Probable)],
    };
    let above = rows
        .iter()
        .find(|(limit, _)| kelvin > *limit)
        .map(|(_, class)| *class);
    above.unwrap_or(if kelvin >= 1.0 { Possible } else { Unclassed })
}

coded! {
    /// What the temperature was measured on.
    Surface as "heat-surface" {
        /// Insulation, paint or tape next to the joint.
        Covered = "covered",
        /// Bare metal.
        BareMetal = "bare_metal",
        /// A probe that touches, with the part proved dead before.
        Contact = "contact",
    }
}

coded! {
    /// What to mind about a rise.
    HeatCaution as "heat-caution" {
        /// Bare metal shows less heat than it has: measure on the insulation beside it.
        BareMetalReadsLow = "bare_metal_reads_low",
        /// A loose joint does not keep its resistance: the rise at normal load is an orientation.
        NotConstant = "not_constant",
        /// Without the load nothing is known of the rise at normal load.
        LoadUnknown = "load_unknown",
        /// A glowing joint trips neither breaker, fuse nor ground-fault device.
        NoTrip = "no_trip",
    }
}

/// What a rise says.
#[derive(Debug, Clone, PartialEq)]
pub struct HeatJudged {
    /// The class of the rise as measured.
    pub class: HeatClass,
    /// The rise at normal load, least and most, in kelvin, where the load is known.
    pub normal: Option<(f64, f64)>,
    /// The classes at normal load, of the least and of the most.
    pub classes: Option<(HeatClass, HeatClass)>,
    /// What to mind, the gravest first.
    pub cautions: Vec<HeatCaution>,
}

/// Judges a rise as measured and, where the load is known, at normal load.
#[must_use]
pub fn heat(
    compared: Compared,
    rise: Rise,
    surface: Surface,
    loading: Option<&Loading>,
) -> HeatJudged {
    let normal = loading.map(|loading| at_normal_load(rise, loading));
    let classes = normal.map(|(least, most)| (class_of(compared, least), class_of(compared, most)));
    let class = class(compared, rise);
    let gravest = classes.map_or(class, |(_, most)| most.max(class));
    let asked = [
        (gravest == HeatClass::Major, HeatCaution::NoTrip),
        (
            surface == Surface::BareMetal,
            HeatCaution::BareMetalReadsLow,
        ),
        (
            loading.is_some_and(|loading| loading.share() < 1.0),
            HeatCaution::NotConstant,
        ),
        (loading.is_none(), HeatCaution::LoadUnknown),
    ];
    HeatJudged {
        class,
        normal,
        classes,
        cautions: asked
            .into_iter()
            .filter_map(|(applies, caution)| applies.then_some(caution))
            .collect(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Current;

    #[test]
    fn a_light_load_can_hide_a_major_discrepancy() {
        let amperes = |value| Current::from_amperes(value).unwrap();
        let loading = Loading::new(amperes(20.0), amperes(50.0)).unwrap();
        let judged = heat(
            Compared::Similar,
            Rise::new(3.0).unwrap(),
            Surface::BareMetal,
            Some(&loading),
        );
        assert_eq!(judged.class, HeatClass::Possible);
        assert_eq!(
            judged.classes,
            Some((HeatClass::Probable, HeatClass::Major))
        );
        assert_eq!(
            judged.cautions,
            [
                HeatCaution::NoTrip,
                HeatCaution::BareMetalReadsLow,
                HeatCaution::NotConstant
            ]
        );
    }
}
