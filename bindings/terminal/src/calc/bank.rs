//! `calc bank`: what the voltage of a DC bank at rest and under load says.

use super::shape::Word;
use super::{Calculate, Fault, at};
use baywalk_domain::bank::{BankFinding, BankReading, DropClass, Nominal, judge};
use baywalk_domain::supply::SafeAct;
use baywalk_domain::units::{Current, Voltage};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The calculation.
pub(super) struct Calculation;

/// Readings of a bank at one place, with sign.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct Given {
    nominal: Word<Nominal>,
    /// Volts at rest; negative where the probes show it so.
    rest: f64,
    load: Option<LoadIn>,
    /// How far the meter may be off, in volts; 0 where left out.
    error: Option<f64>,
}

/// The same reading with a load on.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct LoadIn {
    volts: f64,
    amperes: f64,
}

/// What the readings say.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Found {
    /// The gravest first; empty where nothing is wrong.
    findings: Vec<Word<BankFinding>>,
    act: Word<SafeAct>,
    drop_volts: Option<f64>,
    drop_class: Option<Word<DropClass>>,
    /// The resistance of bank and way together, least and most.
    ohms: Option<[f64; 2]>,
}

impl Calculate for Calculation {
    const NAME: &'static str = "bank";
    const ABOUT: &'static str = "Polarity, level and drop of a DC bank at rest and under load.";
    type In = Given;
    type Out = Found;

    fn calculate(given: Given) -> Result<Found, Fault> {
        let rest = Voltage::from_volts(given.rest).map_err(at("rest"))?;
        let error = Voltage::from_volts(given.error.unwrap_or(0.0)).map_err(at("error"))?;
        let load = given.load.map(loaded).transpose()?;
        let reading = BankReading::new(rest, load, error).map_err(at("load"))?;
        let judged = judge(given.nominal.0, &reading);
        Ok(Found {
            findings: judged.findings.into_iter().map(Word).collect(),
            act: Word(judged.act),
            drop_volts: judged.drop,
            drop_class: judged.class.map(Word),
            ohms: judged.ohms.map(|(least, most)| [least, most]),
        })
    }
}

fn loaded(given: LoadIn) -> Result<(Voltage, Current), Fault> {
    Ok((
        Voltage::from_volts(given.volts).map_err(at("load.volts"))?,
        Current::from_amperes(given.amperes).map_err(at("load.amperes"))?,
    ))
}
