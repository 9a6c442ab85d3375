//! The whole of what is known of a rig.

use super::{Bay, BayPhoto, Code, Device, Point, Source, Tool};
use crate::coded::coded;
use crate::ids::{BayId, DeviceId, PointId, RigId, SourceId, ToolId};
use crate::units::{DistanceUnit, Stated};

coded! {
    /// What a rig is.
    RigKind as "rig-kind" {
        /// Drives itself.
        Motorhome = "motorhome",
        /// Is towed.
        Trailer = "trailer",
    }
}

coded! {
    /// The AC service a rig is made for.
    ServiceKind as "service" {
        /// No AC service.
        None = "none",
        /// 30 A at 120 V.
        Amp30 = "30A-120V",
        /// 50 A at 120/240 V.
        Amp50 = "50A-120/240V",
    }
}

/// The fixed rule for the next walk: so many months, or so far, whichever comes first.
#[derive(Debug, Clone, PartialEq)]
pub struct YearlyRule {
    /// Months from one walk to the next, 1 to 12: custom is a year, and only less is stricter.
    pub months: u8,
    /// The distance from one walk to the next, where one is set.
    pub distance: Option<Stated<DistanceUnit>>,
}

impl YearlyRule {
    /// The unit in which distances of the rig are told: the rule's own, miles where it has none.
    #[must_use]
    pub fn unit(&self) -> DistanceUnit {
        self.distance
            .as_ref()
            .map_or(DistanceUnit::Miles, Stated::unit)
    }
}

/// A rig, without what is in it.
#[derive(Debug, Clone, PartialEq)]
pub struct Rig {
    /// Its name for the machine.
    pub id: RigId,
    /// What its owner calls it.
    pub name: String,
    /// Motorhome or trailer.
    pub kind: RigKind,
    /// Its AC service.
    pub service: ServiceKind,
    /// When to walk again.
    pub rule: YearlyRule,
    /// A note of the owner.
    pub note: String,
}

/// A rig with all that is in it, in the order in which it was noted.
///
/// Retired records stay: their past is read by their name, and their code is not given again.
#[derive(Debug, Clone, PartialEq)]
pub struct Book {
    /// The rig.
    pub rig: Rig,
    /// Its sources.
    pub sources: Vec<Source>,
    /// Its bays.
    pub bays: Vec<Bay>,
    /// Its devices.
    pub devices: Vec<Device>,
    /// Its points.
    pub points: Vec<Point>,
    /// The tools used on it.
    pub tools: Vec<Tool>,
    /// The photos that show its bays, one a bay at most.
    pub bay_photos: Vec<BayPhoto>,
}

macro_rules! by_id {
    ($($(#[$doc:meta])* $name:ident in $list:ident: $id:ty => $record:ty),+ $(,)?) => {$(
        $(#[$doc])*
        #[must_use]
        pub fn $name(&self, id: $id) -> Option<&$record> {
            self.$list.iter().find(|record| record.id == id)
        }
    )+};
}

impl Book {
    /// A book with nothing in it but the rig.
    #[must_use]
    pub const fn new(rig: Rig) -> Self {
        Self {
            rig,
            sources: Vec::new(),
            bays: Vec::new(),
            devices: Vec::new(),
            points: Vec::new(),
            tools: Vec::new(),
            bay_photos: Vec::new(),
        }
    }

    by_id! {
        /// The source with a name.
        source in sources: SourceId => Source,
        /// The bay with a name.
        bay in bays: BayId => Bay,
        /// The device with a name.
        device in devices: DeviceId => Device,
        /// The point with a name.
        point in points: PointId => Point,
        /// The tool with a name.
        tool in tools: ToolId => Tool,
    }

    /// The photo that shows a bay.
    #[must_use]
    pub fn bay_photo(&self, bay: BayId) -> Option<&BayPhoto> {
        self.bay_photos.iter().find(|photo| photo.bay == bay)
    }

    /// Sources that may be there: had, or not sure.
    pub fn live_sources(&self) -> impl Iterator<Item = &Source> {
        self.sources
            .iter()
            .filter(|source| !source.retired && source.presence != super::Presence::HaveNot)
    }

    /// Bays in use, nose to tail, then by code.
    #[must_use]
    pub fn bays_in_order(&self) -> Vec<&Bay> {
        let mut bays: Vec<&Bay> = self.bays.iter().filter(|bay| !bay.retired).collect();
        bays.sort_by(|a, b| a.station.cmp(&b.station).then_with(|| a.code.cmp(&b.code)));
        bays
    }

    /// Devices in use in a bay.
    pub fn devices_of(&self, bay: BayId) -> impl Iterator<Item = &Device> {
        self.devices
            .iter()
            .filter(move |device| device.bay == bay && !device.retired)
    }

    /// Points in use in a bay, by code.
    #[must_use]
    pub fn points_of(&self, bay: BayId) -> Vec<&Point> {
        let devices = self.devices.iter().filter(|device| device.bay == bay);
        let devices: Vec<DeviceId> = devices.map(|device| device.id).collect();
        let mut points: Vec<&Point> = self
            .points
            .iter()
            .filter(|point| devices.contains(&point.device) && !point.retired)
            .collect();
        points.sort_by(|a, b| a.code.cmp(&b.code));
        points
    }

    /// The bay a point is in.
    #[must_use]
    pub fn bay_of(&self, point: &Point) -> Option<BayId> {
        self.device(point.device).map(|device| device.bay)
    }

    /// All codes ever given in this book.
    pub fn codes(&self) -> impl Iterator<Item = &Code> {
        let sources = self.sources.iter().map(|record| &record.code);
        let bays = self.bays.iter().map(|record| &record.code);
        let devices = self.devices.iter().map(|record| &record.code);
        let points = self.points.iter().map(|record| &record.code);
        let tools = self.tools.iter().map(|record| &record.code);
        sources
            .chain(bays)
            .chain(devices)
            .chain(points)
            .chain(tools)
    }
}
