//! `calc heat-rise`: the class of a temperature rise, as measured and at normal load.

use super::shape::Word;
use super::{Calculate, Fault, at};
use baywalk_domain::joint::{
    Compared, EXPONENTS, HeatCaution, HeatClass, Loading, Rise, Surface, heat,
};
use baywalk_domain::units::Current;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The calculation.
pub(super) struct Calculation;

/// A temperature rise.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct Given {
    /// The difference in kelvin or degrees Celsius.
    rise: f64,
    compared: Word<Compared>,
    surface: Word<Surface>,
    /// The currents; the rise is brought to normal load where they are given.
    load: Option<LoadIn>,
}

/// The current while the rise was measured, and the normal one.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct LoadIn {
    /// In amperes.
    now: f64,
    /// In amperes.
    normal: f64,
}

/// What the rise says.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Found {
    class: Word<HeatClass>,
    /// At normal load; null where the load was not given.
    normal: Option<NormalOut>,
    cautions: Vec<Word<HeatCaution>>,
}

#[derive(Debug, Serialize, JsonSchema)]
struct NormalOut {
    /// The least rise in kelvin, and its class.
    least: f64,
    least_class: Word<HeatClass>,
    /// The most, and its class.
    most: f64,
    most_class: Word<HeatClass>,
    /// The exponents of the range.
    exponents: [f64; 2],
}

impl Calculate for Calculation {
    const NAME: &'static str = "heat-rise";
    const ABOUT: &'static str =
        "The class of a temperature rise (NETA table 100.18), as measured and at normal load.";
    type In = Given;
    type Out = Found;

    fn calculate(given: Given) -> Result<Found, Fault> {
        let rise = Rise::new(given.rise).map_err(at("rise"))?;
        let loading = given.load.map(loading).transpose()?;
        let judged = heat(given.compared.0, rise, given.surface.0, loading.as_ref());
        let normal = judged.normal.zip(judged.classes);
        Ok(Found {
            class: Word(judged.class),
            normal: normal.map(|((least, most), classes)| NormalOut {
                least,
                least_class: Word(classes.0),
                most,
                most_class: Word(classes.1),
                exponents: [EXPONENTS.0, EXPONENTS.1],
            }),
            cautions: judged.cautions.into_iter().map(Word).collect(),
        })
    }
}

fn loading(given: LoadIn) -> Result<Loading, Fault> {
    let now = Current::from_amperes(given.now).map_err(at("load.now"))?;
    let normal = Current::from_amperes(given.normal).map_err(at("load.normal"))?;
    Loading::new(now, normal).map_err(|fault| Fault::Refused(fault.to_string()))
}
