//! `calc joint`: resistance and heat of joints from their drops, against their like and their wire.

use super::{Calculate, Fault, at};
use baywalk_domain::joint::{
    Against, AgainstWire, INVESTIGATE_ABOVE, JointFault, Measured, MicroOhms, against_like,
    against_wire, measure,
};
use baywalk_domain::units::{Current, Voltage};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The calculation.
pub(super) struct Calculation;

/// Like joints: same kind, same size, same current path.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct Given {
    joints: Vec<JointIn>,
    /// The wire that the joints hold, to compare with.
    wire: Option<WireIn>,
}

/// One joint under current.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct JointIn {
    /// The drop across it, in millivolts.
    millivolts: f64,
    /// The current, in amperes.
    amperes: f64,
    /// How far the drop may be off, in millivolts; 0 where left out.
    error_millivolts: Option<f64>,
}

/// As much wire as lies between the probes.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct WireIn {
    /// The distance of the probes, in metres.
    metres: f64,
    /// The resistance of the wire, in ohms a metre; `calc wire` gives it.
    ohm_per_metre: f64,
}

/// How each joint stands.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Found {
    /// In the order given.
    joints: Vec<JointOut>,
    /// Above this many times the lowest a joint is investigated.
    investigate_above: f64,
}

#[derive(Debug, Serialize, JsonSchema)]
struct JointOut {
    micro_ohms: f64,
    least_micro_ohms: f64,
    most_micro_ohms: f64,
    watts: f64,
    /// Against the lowest of the like joints; null where there is one joint alone.
    like: Option<LikeOut>,
    /// Against the same length of wire; null where no wire was given.
    wire: Option<WireOut>,
}

#[derive(Debug, Serialize, JsonSchema)]
struct LikeOut {
    ratio: f64,
    limit_micro_ohms: f64,
    investigate: bool,
}

#[derive(Debug, Serialize, JsonSchema)]
struct WireOut {
    micro_ohms: f64,
    ratio: f64,
    above: bool,
}

impl Calculate for Calculation {
    const NAME: &'static str = "joint";
    const ABOUT: &'static str = "Resistance and heat of joints from their drops at a current, against like joints and the same length of wire.";
    type In = Given;
    type Out = Found;

    fn calculate(given: Given) -> Result<Found, Fault> {
        let measured: Vec<Measured> = given.joints.iter().map(one).collect::<Result<_, _>>()?;
        let resistances: Vec<MicroOhms> = measured.iter().map(|one| one.resistance).collect();
        let like = match against_like(&resistances) {
            Err(JointFault::TooFew { found: 1 }) => vec![None],
            found => found.map_err(at("joints"))?.into_iter().map(Some).collect(),
        };
        let joints = measured.iter().zip(like).map(|(measured, like)| {
            let wire = given
                .wire
                .as_ref()
                .map(|wire| against_wire(measured.resistance, wire.metres, wire.ohm_per_metre));
            let wire = wire.transpose().map_err(at("wire"))?;
            Ok(out(measured, like, wire))
        });
        Ok(Found {
            joints: joints.collect::<Result<_, Fault>>()?,
            investigate_above: INVESTIGATE_ABOVE,
        })
    }
}

fn one(given: &JointIn) -> Result<Measured, Fault> {
    let volts = |millivolts: f64| Voltage::from_volts(millivolts / 1000.0);
    let drop = volts(given.millivolts).map_err(at("joints.millivolts"))?;
    let error = volts(given.error_millivolts.unwrap_or(0.0));
    let error = error.map_err(at("joints.error_millivolts"))?;
    let current = Current::from_amperes(given.amperes).map_err(at("joints.amperes"))?;
    measure(drop, current, error).map_err(at("joints"))
}

fn out(measured: &Measured, like: Option<Against>, wire: Option<AgainstWire>) -> JointOut {
    JointOut {
        micro_ohms: measured.resistance.micro_ohms(),
        least_micro_ohms: measured.range.0.micro_ohms(),
        most_micro_ohms: measured.range.1.micro_ohms(),
        watts: measured.watts,
        like: like.map(|like| LikeOut {
            ratio: like.ratio,
            limit_micro_ohms: like.limit.micro_ohms(),
            investigate: like.investigate,
        }),
        wire: wire.map(|wire| WireOut {
            micro_ohms: wire.wire.micro_ohms(),
            ratio: wire.ratio,
            above: wire.above,
        }),
    }
}
