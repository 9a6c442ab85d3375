//! Judges a bank by its voltage at rest and under a known load.

use super::Nominal;
use crate::coded::coded;
use crate::supply::SafeAct;
use crate::units::{Current, Voltage};

/// What was measured at one place: red probe on the positive, black on the negative.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BankReading {
    rest: f64,
    loaded: Option<(f64, f64)>,
    error: f64,
}

/// Why a reading of a bank was not taken.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum BankReadingFault {
    /// A meter error that is none.
    #[error("a meter error of {volts} V; expected 0 or more")]
    Error {
        /// What was found.
        volts: f64,
    },
    /// A load without current.
    #[error("a load of {amperes} A; expected more than 0")]
    NoCurrent {
        /// What was found.
        amperes: f64,
    },
}

impl BankReading {
    /// Takes the voltage at rest, with sign; where a load was put on, the voltage then and its current;
    /// and how far the meter may be off.
    ///
    /// # Errors
    /// [`BankReadingFault`] for an error below 0 and a load of 0 A.
    pub fn new(
        rest: Voltage,
        loaded: Option<(Voltage, Current)>,
        error: Voltage,
    ) -> Result<Self, BankReadingFault> {
        if error.volts() < 0.0 {
            return Err(BankReadingFault::Error {
                volts: error.volts(),
            });
        }
        let loaded = loaded.map(|(volts, current)| (volts.volts(), current.amperes()));
        if let Some((_, amperes)) = loaded.filter(|(_, amperes)| *amperes <= 0.0) {
            return Err(BankReadingFault::NoCurrent { amperes });
        }
        Ok(Self {
            rest: rest.volts(),
            loaded,
            error: error.volts(),
        })
    }
}

coded! {
    /// What a reading of a bank says, the gravest first.
    BankFinding as "bank-finding" {
        /// Positive and negative have changed places.
        Reversed = "reversed",
        /// Above what charging gives: another system, or a charger without control.
        High = "high",
        /// Hardly any voltage. It is no proof of absence: an electronic switch can close again.
        NoVoltage = "no_voltage",
        /// Below a nearly empty bank.
        Low = "low",
        /// More than a tenth is lost under load.
        LargeDrop = "large_drop",
        /// More than 3 % is lost under load.
        Drop = "drop",
        /// The voltage rose under load: something charges, or the readings were exchanged.
        Rises = "rises",
        /// So near to a limit that the meter's error reaches across it.
        Borderline = "borderline",
    }
}

coded! {
    /// How large a drop is: 3 % for critical circuits and 10 % for others, there and back (ABYC E-11,
    /// from memory; for boats, taken by analogy).
    DropClass as "drop-class" {
        /// Up to 3 %.
        Critical = "within_3_percent",
        /// Up to 10 %.
        Other = "within_10_percent",
        /// Above 10 %.
        Over = "over_10_percent",
    }
}

/// What the readings of a bank say.
#[derive(Debug, Clone, PartialEq)]
pub struct BankJudged {
    /// What is wrong, the gravest first; empty where nothing is.
    pub findings: Vec<BankFinding>,
    /// What is done first.
    pub act: SafeAct,
    /// What is lost under load, in volts.
    pub drop: Option<f64>,
    /// The resistance of bank and way together, least and most by the meter's error, in ohms.
    pub ohms: Option<(f64, f64)>,
    /// How large the drop is.
    pub class: Option<DropClass>,
}

/// The share of the nominal voltage that a critical circuit may lose.
const CRITICAL: f64 = 0.03;
/// The share that any other circuit may lose.
const OTHER: f64 = 0.10;
/// Below this share of the nominal voltage there is hardly any. Ours.
const HARDLY: f64 = 0.1;

/// Judges a bank and the way from it to the place of the reading.
///
/// The drop is held against the nominal voltage. Drop at the bank's own posts is the bank's; what the
/// bus loses beyond that is lost in the way and its joints.
///
/// # Example
/// ```
/// use baywalk_domain::bank::{BankFinding, BankReading, Nominal, judge};
/// use baywalk_domain::units::{Current, Voltage};
/// let volts = Voltage::from_volts;
/// let reversed = BankReading::new(volts(-12.8)?, None, volts(0.1)?)?;
/// assert_eq!(judge(Nominal::V12, &reversed).findings, [BankFinding::Reversed]);
/// // Computed: 0.6 V at 50 A are 12 milliohms; 5 % of 12 V.
/// let load = Some((volts(12.2)?, Current::from_amperes(50.0)?));
/// let judged = judge(Nominal::V12, &BankReading::new(volts(12.8)?, load, volts(0.05)?)?);
/// assert_eq!(judged.findings, [BankFinding::Drop]);
/// assert!(judged.ohms.is_some_and(|(least, most)| least < 0.012 && most > 0.012));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn judge(nominal: Nominal, reading: &BankReading) -> BankJudged {
    let mut findings = level(nominal, reading);
    let drop = reading.loaded.map(|(volts, _)| reading.rest - volts);
    // Two readings, so twice the meter's error.
    let off = 2.0 * reading.error;
    let class = drop.map(|drop| drop_class(drop / nominal.volts()));
    if let Some(drop) = drop.filter(|_| reading.rest > 0.0) {
        match class {
            Some(DropClass::Over) => findings.push(BankFinding::LargeDrop),
            Some(DropClass::Other) => findings.push(BankFinding::Drop),
            _ if drop < -off => findings.push(BankFinding::Rises),
            _ => {}
        }
        let near = |share: f64| (drop - share * nominal.volts()).abs() <= off;
        if near(CRITICAL) || near(OTHER) {
            findings.push(BankFinding::Borderline);
        }
    }
    findings.sort_unstable();
    findings.dedup();
    let ohms = reading.loaded.map(|(volts, amperes)| {
        let drop = reading.rest - volts;
        (
            ((drop - off) / amperes).max(0.0),
            ((drop + off) / amperes).max(0.0),
        )
    });
    BankJudged {
        act: act(&findings),
        findings,
        drop,
        ohms,
        class,
    }
}

/// What the voltage at rest says.
fn level(nominal: Nominal, reading: &BankReading) -> Vec<BankFinding> {
    let (volts, error) = (reading.rest, reading.error);
    let hardly = HARDLY * nominal.volts();
    let near = |limit: f64| (volts - limit).abs() <= error;
    let found = if volts <= -hardly {
        Some(BankFinding::Reversed)
    } else if volts < hardly {
        Some(BankFinding::NoVoltage)
    } else if volts > nominal.charging() {
        Some(BankFinding::High)
    } else if volts < nominal.empty() {
        Some(BankFinding::Low)
    } else {
        None
    };
    let border = near(nominal.charging()) || near(nominal.empty());
    found
        .into_iter()
        .chain(border.then_some(BankFinding::Borderline))
        .collect()
}

fn drop_class(share: f64) -> DropClass {
    if share > OTHER {
        DropClass::Over
    } else if share > CRITICAL {
        DropClass::Other
    } else {
        DropClass::Critical
    }
}

fn act(findings: &[BankFinding]) -> SafeAct {
    match findings.first() {
        Some(BankFinding::Reversed | BankFinding::High) => SafeAct::BatteryOff,
        Some(BankFinding::NoVoltage | BankFinding::LargeDrop) => SafeAct::OutOfService,
        Some(BankFinding::Low | BankFinding::Rises) => SafeAct::MeasureLater,
        Some(BankFinding::Drop | BankFinding::Borderline) | None => SafeAct::GoOn,
    }
}
