//! A bay.

use super::shape::{record, turns};
use super::{Shape, ShapeCause, ShapeFault, Text, Word};
use baywalk_domain::ids::{BayId, SourceId};
use baywalk_domain::rig::{self, Code, Side, Station};
use serde::{Deserialize, Serialize};

/// A station along the rig, in thousandths of its length from the nose.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Thousandths(u16);

impl Shape for Thousandths {
    type Domain = Station;
    fn of(domain: &Station) -> Self {
        Self(domain.thousandths())
    }
    fn domain(self) -> Result<Station, ShapeFault> {
        let cause = ShapeCause::Number {
            found: u64::from(self.0),
            most: 1000,
        };
        Station::new(self.0).ok_or_else(|| cause.into())
    }
}

turns!(Thousandths = Station);

record! {
    /// A place that is opened or reached.
    Bay = rig::Bay {
        id: Text<BayId>,
        code: Text<Code>,
        name: String,
        place: String,
        station: Thousandths,
        side: Word<Side>,
        open_minutes: u16,
        close_minutes: u16,
        fed_by: Vec<Text<SourceId>>,
        keep_out: String,
        retired: bool,
    }
}
