//! A reading while power comes back, and how it was judged.

use super::shape::{choice, record};
use super::{Quantity, Shape, ShapeCause, ShapeFault, Word};
use baywalk_domain::supply::{self, LimitBasis, ReadingStep, SafeAct, Verdict};
use baywalk_domain::units::VoltageUnit;
use serde::{Deserialize, Serialize};

choice! {
    /// What came of a reading.
    Measured = supply::Measured {
        Volts(volts: Quantity<VoltageUnit>),
        Works,
        Fails,
        Not(why: String),
    }
}

record! {
    /// A reading with its place.
    Reading = supply::Reading {
        step: Word<ReadingStep>,
        place: String,
        measured: Measured,
    }
}

/// The limits a reading was judged by, in volts, as decimal text.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Limit {
    least: String,
    most: String,
}

impl Shape for Limit {
    type Domain = (f64, f64);
    fn of((least, most): &Self::Domain) -> Self {
        Self {
            least: least.to_string(),
            most: most.to_string(),
        }
    }
    fn domain(self) -> Result<Self::Domain, ShapeFault> {
        let least = volts(&self.least).map_err(|fault| fault.within("least"))?;
        Ok((
            least,
            volts(&self.most).map_err(|fault| fault.within("most"))?,
        ))
    }
}

/// Reads plain decimal text, as it is written above: no exponent, no infinity.
fn volts(text: &str) -> Result<f64, ShapeFault> {
    let plain = |b: u8| b.is_ascii_digit() || b == b'.' || b == b'-';
    let number = text.bytes().all(plain).then(|| text.parse().ok()).flatten();
    number.ok_or_else(|| {
        ShapeFault::from(ShapeCause::Form {
            found: text.to_owned(),
            expected: "decimal number",
        })
    })
}

record! {
    /// A verdict with its limits.
    Judged = supply::Judged {
        verdict: Word<Verdict>,
        act: Word<SafeAct>,
        limits: Option<Limit>,
        basis: Word<LimitBasis>,
    }
}
