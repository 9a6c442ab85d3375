//! A place that is opened or reached.

use super::Code;
use crate::coded::coded;
use crate::ids::{BayId, SourceId};

coded! {
    /// Where a bay is reached from, seen in the direction of travel.
    Side as "side" {
        /// Left.
        Left = "left",
        /// Right.
        Right = "right",
        /// Front.
        Front = "front",
        /// Back.
        Back = "back",
        /// Inside the living space.
        Inside = "inside",
        /// On the roof.
        Roof = "roof",
        /// Underneath.
        Under = "under",
    }
}

/// Where something stands along the rig, in thousandths of its length from the nose.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Station(u16);

impl Station {
    /// Takes thousandths of the length, 0 at the nose and 1,000 at the tail; `None` beyond.
    ///
    /// # Example
    /// ```
    /// use baywalk_domain::rig::Station;
    /// assert_eq!(Station::new(850).map(Station::thousandths), Some(850));
    /// assert_eq!(Station::new(1001), None);
    /// ```
    #[must_use]
    pub const fn new(thousandths: u16) -> Option<Self> {
        if thousandths <= 1000 {
            Some(Self(thousandths))
        } else {
            None
        }
    }

    /// Thousandths of the length.
    #[must_use]
    pub const fn thousandths(self) -> u16 {
        self.0
    }
}

/// A bay of a rig.
#[derive(Debug, Clone, PartialEq)]
pub struct Bay {
    /// Its name for the machine.
    pub id: BayId,
    /// Its name for people.
    pub code: Code,
    /// What it is, such as "transfer switch bay".
    pub name: String,
    /// How it is found and reached, in the owner's words.
    pub place: String,
    /// Where it stands along the rig.
    pub station: Station,
    /// Where it is reached from.
    pub side: Side,
    /// Minutes to open it.
    pub open_minutes: u16,
    /// Minutes to close it.
    pub close_minutes: u16,
    /// The sources that can make a conductor in it live by ways that the wiring of its sets does not
    /// tell.
    pub fed_by: Vec<SourceId>,
    /// Something that must stay untouched here, in the owner's words; empty where nothing is.
    pub keep_out: String,
    /// Whether it is no longer part of the rig; its past stays.
    pub retired: bool,
}
