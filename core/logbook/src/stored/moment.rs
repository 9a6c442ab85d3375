//! A moment by two clocks.

use super::shape::{record, turns};
use super::{Shape, ShapeFault, Text};
use baywalk_domain::moment;
use chrono::{DateTime, FixedOffset};
use serde::{Deserialize, Serialize};

/// The largest whole number that JSON readers agree on (RFC 7493).
pub(super) const MOST: u64 = (1 << 53) - 1;

/// The name of a start of the machine and whole seconds since.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Boot {
    id: String,
    seconds: u64,
}

impl Shape for Boot {
    type Domain = moment::Boot;
    fn of(domain: &moment::Boot) -> Self {
        Self {
            id: domain.id().to_owned(),
            seconds: Shape::of(&domain.seconds()),
        }
    }
    fn domain(self) -> Result<moment::Boot, ShapeFault> {
        Ok(moment::Boot::new(&self.id, self.seconds.domain()?))
    }
}

turns!(Boot = moment::Boot);

record! {
    /// The wall clock with its offset, and the clock since the machine started.
    Moment = moment::Moment {
        wall: Text<DateTime<FixedOffset>>,
        boot: Boot,
    }
}
