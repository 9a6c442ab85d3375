//! `calc isolation`: what feeds what in a rig, what stays live, and the order of taking away.

use super::{Calculate, Fault, at};
use baywalk_domain::coded::Coded;
use baywalk_domain::ids::{ActId, SourceId};
use baywalk_domain::isolation::{Passing, Reach, Wiring, away_order, restore_order};
use baywalk_domain::rig::{Book, Check, ConductorSet, Device, Source};
use baywalk_logbook::rigfile::{self, NamedText};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The calculation.
pub(super) struct Calculation;

/// A rig, and the sources that are away.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct Given {
    /// The text of the rig's TOML file, as docs/rig-files.md tells it.
    rig: String,
    /// Codes of the sources that are isolated as their records say.
    #[serde(default)]
    away: Vec<String>,
}

/// The order of the sources, and each set of each device.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Found {
    /// Codes of the sources that may be there, in the order in which they are taken away.
    take_away: Vec<String>,
    /// The same in the order in which they come back.
    bring_back: Vec<String>,
    sets: Vec<SetOut>,
    bays: Vec<BayOut>,
}

/// A set of a device.
#[derive(Debug, Serialize, JsonSchema)]
struct SetOut {
    /// Device and set, such as FTS/load.
    set: String,
    /// The sources that feed it while everything is closed.
    fed_by: Vec<String>,
    /// The sources that still reach it now.
    still: Vec<String>,
    /// The same where a device that passes one way has failed.
    still_if_failed: Vec<String>,
    /// The sources that still reach it when every source is taken away.
    stays: Vec<String>,
    /// The pairs that must read dead before a terminal of it may be touched.
    pairs: Vec<String>,
}

/// A bay.
#[derive(Debug, Serialize, JsonSchema)]
struct BayOut {
    bay: String,
    fed_by: Vec<String>,
    still: Vec<String>,
}

impl Calculate for Calculation {
    const NAME: &'static str = "isolation";
    const ABOUT: &'static str =
        "Which sources reach which conductors of a rig, and what stays live with some taken away.";
    type In = Given;
    type Out = Found;

    fn calculate(given: Given) -> Result<Found, Fault> {
        let book = book(&given.rig)?;
        let known = |code: &str| book.sources.iter().any(|source| source.code.as_str() == code);
        if let Some(unknown) = given.away.iter().find(|code| !known(code)) {
            return Err(at("away")(format!("the rig has no source {unknown:?}")));
        }
        let is_away = |source: &Source| given.away.iter().any(|code| code == source.code.as_str());
        let wiring = Wiring::of(&book);
        let told = Told {
            book: &book,
            feeding: wiring.feeding(),
            still: wiring.reach(Passing::AsBuilt, is_away),
            failed: wiring.reach(Passing::Failed, is_away),
            staying: wiring.staying(),
        };
        let in_order = |order: Vec<&Source>| order.iter().map(|s| s.code.to_string()).collect();
        Ok(Found {
            take_away: in_order(away_order(book.live_sources())),
            bring_back: in_order(restore_order(book.live_sources())),
            sets: told.sets(),
            bays: told.bays(),
        })
    }
}

fn book(text: &str) -> Result<Book, Fault> {
    let toml = NamedText { name: "rig", text };
    let csv = NamedText {
        name: "points",
        text: "code,device,name\n",
    };
    let act = ActId::new(uuid::Uuid::nil());
    rigfile::read(&toml, &csv, act).map_err(|faults| {
        let told: Vec<String> = faults.iter().map(ToString::to_string).collect();
        at("rig")(told.join("; "))
    })
}

/// A rig with what reaches what in it.
struct Told<'a> {
    book: &'a Book,
    feeding: Reach<'a>,
    still: Reach<'a>,
    failed: Reach<'a>,
    staying: Reach<'a>,
}

impl Told<'_> {
    fn codes(&self, sources: &[SourceId]) -> Vec<String> {
        let found = sources.iter().filter_map(|id| self.book.source(*id));
        found.map(|source| source.code.to_string()).collect()
    }

    fn sets(&self) -> Vec<SetOut> {
        let devices = self.book.devices.iter().filter(|device| !device.retired);
        let sets = devices.flat_map(|device| device.sets.iter().map(move |set| (device, set)));
        sets.map(|(device, set)| self.set(device, set)).collect()
    }

    fn set(&self, device: &Device, set: &ConductorSet) -> SetOut {
        let of = |reach: &Reach<'_>| self.codes(reach.set(device.id, &set.name));
        SetOut {
            set: format!("{}/{}", device.code, set.name),
            fed_by: of(&self.feeding),
            still: of(&self.still),
            still_if_failed: of(&self.failed),
            stays: of(&self.staying),
            pairs: device.checks_for(&set.name).iter().map(pair).collect(),
        }
    }

    fn bays(&self) -> Vec<BayOut> {
        let bays = self.book.bays_in_order().into_iter();
        bays.map(|bay| BayOut {
            bay: bay.code.to_string(),
            fed_by: self.codes(&self.feeding.bay(bay.id)),
            still: self.codes(&self.still.bay(bay.id)),
        })
        .collect()
    }
}

fn pair(check: &Check) -> String {
    let (from, to) = (check.from.code(), check.to.code());
    let supply = check.supply.code();
    format!("{} {from} - {} {to} {supply}", check.set, check.other_set)
}
