//! A bay's own photo and its pins.

use super::shape::{record, turns};
use super::{Shape, ShapeCause, ShapeFault, Text};
use baywalk_domain::ids::{BayId, PointId};
use baywalk_domain::rig;
use serde::{Deserialize, Serialize};

/// The place of a point on a photo, in thousandths of its width and height.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Pin {
    point: Text<PointId>,
    across: u16,
    down: u16,
}

impl Shape for Pin {
    type Domain = rig::Pin;
    fn of(domain: &rig::Pin) -> Self {
        Self {
            point: Text::of(&domain.point()),
            across: domain.across(),
            down: domain.down(),
        }
    }
    fn domain(self) -> Result<rig::Pin, ShapeFault> {
        let cause = ShapeCause::Number {
            found: self.across.max(self.down).into(),
            most: 1000,
        };
        let pin = rig::Pin::new(self.point.domain()?, self.across, self.down);
        pin.ok_or_else(|| cause.into())
    }
}

turns!(Pin = rig::Pin);

record! {
    /// The photo that shows a bay, and where its points are on it.
    BayPhoto = rig::BayPhoto {
        bay: Text<BayId>,
        photo: String,
        pins: Vec<Pin>,
    }
}
