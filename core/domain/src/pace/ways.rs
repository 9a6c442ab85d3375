//! How long it takes to walk from bay to bay.

use super::table::usual;
use crate::rig::{Bay, Book, DeviceKind, RigKind, Side};

/// A place of a rig: how far from the nose, and where it is reached from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Place {
    /// Thousandths of the length from the nose.
    pub station: u16,
    /// Where it is reached from.
    pub side: Side,
}

impl Place {
    /// Where a bay is reached.
    #[must_use]
    pub const fn of(bay: &Bay) -> Self {
        Self {
            station: bay.station.thousandths(),
            side: bay.side,
        }
    }
}

/// Where power is taken away, and so where a round begins and ends: at the shore inlet, else at the
/// first disconnect, else at the nose.
#[must_use]
pub fn start(book: &Book) -> Place {
    let bay_of = |kind| {
        let in_use = book.devices.iter().filter(|device| !device.retired);
        let device = in_use
            .filter(|device| device.kind == kind)
            .find_map(|device| book.bay(device.bay));
        device.filter(|bay| !bay.retired)
    };
    let bay = bay_of(DeviceKind::Inlet).or_else(|| bay_of(DeviceKind::Disconnect));
    bay.map_or(
        Place {
            station: 0,
            side: Side::Front,
        },
        Place::of,
    )
}

/// Whole seconds to walk from one place of a rig to another.
///
/// Nothing tells how long a rig is, where its door is or how fast its owner walks: lengths, the door
/// in the middle of the right side, the ladder at the tail and the seconds of each are those of the
/// table (ours). From side to side the way leads round the nearer end. A way is rounded up, so that
/// no detour is ever shorter than the straight way.
///
/// # Example
/// ```
/// use baywalk_domain::pace::{Place, seconds_between};
/// use baywalk_domain::rig::{RigKind, Side};
/// let left = Place { station: 100, side: Side::Left };
/// let right = Place { station: 100, side: Side::Right };
/// // One metre to the nose, two across, one back; two seconds a metre.
/// assert_eq!(seconds_between(RigKind::Motorhome, left, right), 8);
/// ```
#[must_use]
pub fn seconds_between(kind: RigKind, from: Place, to: Place) -> u32 {
    let ways = Ways {
        length: 1_000 * usual(crate::coded::Coded::code(kind)),
        width: 1_000 * usual("width"),
    };
    if from == to {
        return 0;
    }
    let same = matches!(
        (from.side, to.side),
        (Side::Inside, Side::Inside) | (Side::Roof, Side::Roof)
    );
    let (millimetres, extra) = if same {
        (ways.at(from).abs_diff(ways.at(to)), 0)
    } else {
        let (way_out, out) = ways.out(from);
        let (way_in, into) = ways.out(to);
        let outside = ways.outside(ways.foot(from), ways.foot(to));
        (way_out + outside + way_in, out + into)
    };
    (millimetres * usual("metre")).div_ceil(1_000) + extra
}

/// The measures of a rig in millimetres.
struct Ways {
    length: u32,
    width: u32,
}

/// A place on the ground beside a rig: how far from the nose, and how far from its middle line to
/// the right or to the left, in millimetres.
#[derive(Clone, Copy)]
enum Foot {
    Left(u32),
    Right(u32),
    Middle(u32),
}

impl Ways {
    fn at(&self, place: Place) -> u32 {
        self.length / 1_000 * u32::from(place.station)
    }

    /// Where the feet are on the ground before a place is entered.
    fn foot(&self, place: Place) -> Foot {
        match place.side {
            Side::Left => Foot::Left(self.at(place)),
            Side::Right | Side::Under => Foot::Right(self.at(place)),
            Side::Front => Foot::Middle(0),
            Side::Back | Side::Roof => Foot::Middle(self.length),
            Side::Inside => Foot::Right(self.length / 2),
        }
    }

    /// Millimetres and seconds from the ground to a place.
    fn out(&self, place: Place) -> (u32, u32) {
        match place.side {
            Side::Inside => ((self.length / 2).abs_diff(self.at(place)), usual("door")),
            Side::Roof => (self.length.abs_diff(self.at(place)), usual("ladder")),
            Side::Under => (0, usual("crouch")),
            Side::Left | Side::Right | Side::Front | Side::Back => (0, 0),
        }
    }

    fn outside(&self, from: Foot, to: Foot) -> u32 {
        let ends = |at: u32| (at, self.length.saturating_sub(at));
        match (from, to) {
            (Foot::Left(a), Foot::Left(b)) | (Foot::Right(a), Foot::Right(b)) => a.abs_diff(b),
            (Foot::Middle(a), Foot::Middle(b)) if a == b => 0,
            (Foot::Middle(a), Foot::Middle(b)) => a.abs_diff(b) + self.width,
            (Foot::Middle(a), Foot::Left(b) | Foot::Right(b))
            | (Foot::Left(b) | Foot::Right(b), Foot::Middle(a)) => a.abs_diff(b) + self.width / 2,
            (Foot::Left(a), Foot::Right(b)) | (Foot::Right(a), Foot::Left(b)) => {
                let ((nose_a, tail_a), (nose_b, tail_b)) = (ends(a), ends(b));
                (nose_a + nose_b).min(tail_a + tail_b) + self.width
            }
        }
    }
}
