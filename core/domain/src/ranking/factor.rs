//! One factor of a rank: what was found, and how much it counts.

use super::weights::{band, weight};
use super::{
    AgeBand, BehindBand, ConductorCase, CurrentBand, DistanceBand, FactorKind, History,
    HistoryCase, Nearby, WeightBasis,
};
use crate::coded::Coded;
use crate::isolation::Behind;
use crate::rig::{
    Bay, Conductor, ConductorSet, Device, DeviceKind, FasteningKind, LookKind, Point, PointKind,
    Priority, Role, SetSystem, Side,
};
use crate::walk::Grade;

/// What a factor found at a point.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Finding {
    /// What holds the conductor.
    Fastening(FasteningKind),
    /// What the look is for.
    Look(LookKind),
    /// How long ago it was set or checked.
    Age(AgeBand),
    /// How far the rig went since.
    Distance(DistanceBand),
    /// What was found there before.
    History(HistoryCase),
    /// The current, and whether it was noted or is only typical of such a device.
    Current(CurrentBand, bool),
    /// Which conductor.
    Conductor(ConductorCase),
    /// How much of the rig is behind it.
    Behind(BehindBand),
    /// What could burn beside it.
    Nearby(Nearby),
    /// What the owner said.
    Priority(Priority),
}

/// One factor of a rank.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Factor {
    /// What was found.
    pub found: Finding,
    /// How many hundredths it counts.
    pub hundredths: u32,
    /// Where that comes from.
    pub basis: WeightBasis,
}

impl Factor {
    /// Which factor it is.
    #[must_use]
    pub const fn kind(&self) -> FactorKind {
        match self.found {
            Finding::Fastening(_) | Finding::Look(_) => FactorKind::Kind,
            Finding::Age(_) => FactorKind::Age,
            Finding::Distance(_) => FactorKind::Distance,
            Finding::History(_) => FactorKind::History,
            Finding::Current(..) => FactorKind::Current,
            Finding::Conductor(_) => FactorKind::Conductor,
            Finding::Behind(_) => FactorKind::Behind,
            Finding::Nearby(_) => FactorKind::Nearby,
            Finding::Priority(_) => FactorKind::Priority,
        }
    }

    fn of(found: Finding) -> Self {
        let (factor, case) = match found {
            Finding::Fastening(kind) => ("kind", kind.code()),
            Finding::Look(kind) => ("look", kind.code()),
            Finding::Age(band) => ("age", band.code()),
            Finding::Distance(band) => ("distance", band.code()),
            Finding::History(case) => ("history", case.code()),
            Finding::Current(band, _) => ("current", band.code()),
            Finding::Conductor(case) => ("conductor", case.code()),
            Finding::Behind(band) => ("behind", band.code()),
            Finding::Nearby(case) => ("nearby", case.code()),
            Finding::Priority(priority) => ("priority", priority.code()),
        };
        let weight = weight(factor, case);
        Self {
            found,
            hundredths: weight.hundredths,
            basis: weight.basis,
        }
    }
}

/// All factors of a point, with what hangs behind its set where that is noted.
pub(super) fn factors(
    (point, device, bay): (&Point, &Device, &Bay),
    behind: Option<Behind<'_>>,
    history: &History,
) -> Vec<Factor> {
    let kind = match &point.kind {
        PointKind::Terminal(terminal) => Finding::Fastening(terminal.fastening.kind),
        PointKind::Look(look) => Finding::Look(*look),
    };
    let mut found = vec![
        kind,
        Finding::Age(age(history)),
        Finding::Distance(distance(history)),
    ];
    if point.terminal().is_some() {
        found.push(Finding::History(past(&history.grades)));
    }
    let (current, noted) = current(point, device);
    found.push(Finding::Current(current, noted));
    found.push(Finding::Conductor(conductor(point, device)));
    found.push(Finding::Behind(much(behind)));
    found.push(Finding::Nearby(nearby(device, bay)));
    found.extend(point.priority.map(Finding::Priority));
    found.into_iter().map(Factor::of).collect()
}

fn age(history: &History) -> AgeBand {
    let days = history.since.map(|since| f64::from(since.days));
    days.and_then(|days| band("age", days, &[AgeBand::Never]))
        .unwrap_or(AgeBand::Never)
}

fn distance(history: &History) -> DistanceBand {
    let miles = history.since.and_then(|since| since.miles);
    miles
        .and_then(|miles| band("distance", miles, &[DistanceBand::Unknown]))
        .unwrap_or(DistanceBand::Unknown)
}

fn past(grades: &[Grade]) -> HistoryCase {
    let tells = |grade: &&Grade| !matches!(grade, Grade::LookedAt | Grade::NotJudged);
    let mut told = grades.iter().filter(tells);
    match (told.next(), told.next()) {
        (None, _) => HistoryCase::None,
        (Some(Grade::Loose | Grade::Apart), _) => HistoryCase::CameLoose,
        (Some(Grade::Moved), Some(Grade::Moved | Grade::Loose)) => HistoryCase::MovedAgain,
        (Some(Grade::Moved), _) => HistoryCase::Moved,
        (Some(_), Some(Grade::Held)) => HistoryCase::HeldOften,
        (Some(_), _) => HistoryCase::Held,
    }
}

/// The current that is noted, else the one that is typical of the device; the feed of a panel
/// carries what the service does.
fn current(point: &Point, device: &Device) -> (CurrentBand, bool) {
    let noted = point
        .terminal()
        .and_then(|terminal| terminal.current.as_ref());
    let typical = || weight("typical", device.kind.code()).up_to.unwrap_or(0.0);
    let feed = || {
        let set = point
            .terminal()
            .and_then(|terminal| device.set(terminal.set.as_ref()?));
        let split = set.is_some_and(|set| set.system == SetSystem::SplitPhase);
        let feeds =
            set.is_some_and(|set| set.from.iter().any(|feed| feed.is_elsewhere(&device.code)));
        split && feeds && device.kind == DeviceKind::AcPanel
    };
    let amperes = match noted {
        Some(stated) => stated.quantity().amperes(),
        None if feed() => weight("typical", DeviceKind::TransferSwitch.code())
            .up_to
            .unwrap_or(0.0),
        None => typical(),
    };
    let band = band("current", amperes, &[]).unwrap_or(CurrentBand::Branch);
    (band, noted.is_some())
}

fn conductor(point: &Point, device: &Device) -> ConductorCase {
    let Some(terminal) = point.terminal() else {
        return ConductorCase::None;
    };
    let set = terminal.set.as_ref().and_then(|set| device.set(set));
    // Behind the breakers of a panel a neutral serves its branch alone.
    let branch = |set: &ConductorSet| {
        let within = !set.from.iter().any(|feed| feed.is_elsewhere(&device.code));
        device.kind == DeviceKind::AcPanel && within && !set.from.is_empty()
    };
    let system = set.map(|set| match set.system {
        SetSystem::SplitPhase if branch(set) => SetSystem::SinglePhase,
        system => system,
    });
    match (terminal.role, terminal.conductor, system) {
        (Role::Ground, _, _) | (_, Some(Conductor::G | Conductor::Chassis), _) => {
            ConductorCase::EquipmentGround
        }
        (Role::Control, _, _) => ConductorCase::Control,
        (_, Some(Conductor::N), Some(SetSystem::SplitPhase)) => ConductorCase::OpenNeutral,
        (_, Some(Conductor::N), _) => ConductorCase::Neutral,
        (_, Some(Conductor::L | Conductor::L1 | Conductor::L2), _) => ConductorCase::Line,
        (_, _, Some(SetSystem::SplitPhase | SetSystem::SinglePhase)) => ConductorCase::Line,
        _ => ConductorCase::Direct,
    }
}

fn much(behind: Option<Behind<'_>>) -> BehindBand {
    let hundredths = behind.map_or(0.0, |behind| 100.0 * behind.share);
    let much = band("behind", hundredths, &[BehindBand::All]).unwrap_or(BehindBand::Little);
    match much {
        BehindBand::Much | BehindBand::Most if behind.is_some_and(|of| of.every_source) => {
            BehindBand::All
        }
        much => much,
    }
}

fn nearby(device: &Device, bay: &Bay) -> Nearby {
    match (device.kind, bay.side) {
        (_, Side::Inside) => Nearby::Living,
        (DeviceKind::BatteryBank | DeviceKind::Battery, _) => Nearby::Gas,
        (DeviceKind::Generator, _) => Nearby::Fuel,
        _ => Nearby::Open,
    }
}
