//! What is so in a walk: the fold of its entries that are not struck.

use super::{
    AdviceShown, AsFound, AsLeft, Away, Damage, Ending, Following, Grade, ReadyAnswer, ReadyItem,
    Scope, Seen, Setting,
};
use crate::coded::coded;
use crate::finding::{About, Raised};
use crate::ids::{ActId, BayId, DeviceId, PointId, SourceId, WalkId};
use crate::isolation::Proof;
use crate::moment::Moment;
use crate::rig::SourceKind;
use crate::service::ServiceSeen;
use crate::supply::{Judged, Reading, ReadingStep};
use std::collections::BTreeMap;

coded! {
    /// Where a walk stands.
    Phase as "phase" {
        /// Before power is taken away.
        Before = "before",
        /// Taking power away.
        TakingAway = "taking_away",
        /// At the bays.
        AtBays = "at_bays",
        /// Bringing power back.
        PoweringUp = "powering_up",
        /// Ended.
        Ended = "ended",
    }
}

coded! {
    /// Where a bay stands.
    BayStage as "bay-stage" {
        /// Not opened yet.
        Shut = "shut",
        /// Open.
        Open = "open",
        /// Closed again, everything counted.
        Closed = "closed",
    }
}

/// A set that stays live, and why it was gone on at.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Exception {
    /// The device.
    pub device: DeviceId,
    /// The set.
    pub set: String,
    /// The reason.
    pub reason: String,
}

/// The work in one bay.
#[derive(Debug, Clone, PartialEq)]
pub struct BayWork {
    /// Where it stands.
    pub stage: BayStage,
    /// The proofs, in order.
    pub proofs: Vec<Proof>,
    /// The knowing exceptions.
    pub exceptions: Vec<Exception>,
}

impl Default for BayWork {
    fn default() -> Self {
        Self {
            stage: BayStage::Shut,
            proofs: Vec::new(),
            exceptions: Vec::new(),
        }
    }
}

/// What was found at a terminal, with the advice as it stood.
#[derive(Debug, Clone, PartialEq)]
pub struct FoundRecord {
    /// What was found.
    pub found: AsFound,
    /// The advice that was shown.
    pub advice: Option<AdviceShown>,
    /// When.
    pub at: Moment,
    /// Whether it is a correction of an earlier note.
    pub corrected: bool,
}

/// All that was noted at a point in one walk.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct PointRecord {
    /// As found.
    pub found: Option<FoundRecord>,
    /// As left.
    pub left: Option<AsLeft>,
    /// What was seen, where it is a look.
    pub seen: Option<Seen>,
    /// Damage, with words.
    pub damage: Vec<(Damage, String)>,
}

impl PointRecord {
    /// Whether the point has been gone through.
    #[must_use]
    pub fn is_done(&self) -> bool {
        self.seen.is_some() || (self.found.is_some() && !self.waits_for_left())
    }

    /// What was found, where the point was reached; a look that was seen counts as looked at.
    #[must_use]
    pub fn grade(&self) -> Option<Grade> {
        match (&self.found, &self.seen) {
            (Some(found), _) => Some(found.found.grade()),
            (None, Some(Seen::NotLooked(_))) => Some(Grade::NotJudged),
            (None, Some(_)) => Some(Grade::LookedAt),
            (None, None) => None,
        }
    }

    /// Whether what was found asks for a word on how it was left.
    #[must_use]
    pub fn waits_for_left(&self) -> bool {
        self.left.is_none()
            && self
                .found
                .as_ref()
                .is_some_and(|record| record.found.needs_left())
    }

    /// Whether the joint was disturbed: set, remade or undone.
    #[must_use]
    pub fn is_disturbed(&self) -> bool {
        matches!(self.left, Some(AsLeft::Set { .. } | AsLeft::Remade { .. }))
    }
}

/// What is so in a walk.
#[derive(Debug, Clone, PartialEq)]
pub struct WalkState {
    /// Its name.
    pub id: WalkId,
    /// Who walks.
    pub person: String,
    /// How much of the rig.
    pub scope: Scope,
    /// When it was started.
    pub started: Moment,
    /// When its newest act was.
    pub last: Moment,
    /// Where it stands.
    pub phase: Phase,
    /// Whether it is stopped for now.
    pub paused: bool,
    /// The list before.
    pub ready: BTreeMap<ReadyItem, ReadyAnswer>,
    /// The sources as they were taken away.
    pub away: BTreeMap<SourceId, Away>,
    /// When each source was taken away last.
    pub away_at: BTreeMap<SourceId, Moment>,
    /// The bays that were worked in.
    pub bays: BTreeMap<BayId, BayWork>,
    /// The plan that is or was followed.
    pub plan: Option<Following>,
    /// The tool in the hand and what it was last said to be set to.
    pub setting: Option<Setting>,
    /// The points that were noted.
    pub points: BTreeMap<PointId, PointRecord>,
    /// The sources that are back.
    pub restored: Vec<SourceId>,
    /// The sources that were left away, and why.
    pub left_away: BTreeMap<SourceId, String>,
    /// The readings, newest last, each with its verdict.
    pub readings: Vec<(Reading, Option<Judged>)>,
    /// How many of the readings belong to an earlier powering up.
    pub readings_before: usize,
    /// How many of the readings were taken before a source of a kind was last taken away or left
    /// away: those that speak of it no longer count.
    pub voided: BTreeMap<SourceKind, usize>,
    /// What the circuit of the service said after the newest reading of it.
    pub service: Option<(ReadingStep, ServiceSeen)>,
    /// The photos: what they show, digest, caption.
    pub photos: Vec<(About, String, String)>,
    /// The findings raised.
    pub findings: Vec<Raised>,
    /// How it ended.
    pub ending: Option<Ending>,
    /// The acts that stand, oldest first; the last one is what Undo strikes.
    pub standing: Vec<ActId>,
}

impl WalkState {
    /// A walk that was started and nothing else.
    #[must_use]
    pub fn new(id: WalkId, person: &str, scope: &Scope, at: &Moment) -> Self {
        Self {
            id,
            person: person.to_owned(),
            scope: scope.clone(),
            started: at.clone(),
            last: at.clone(),
            phase: Phase::Before,
            paused: false,
            ready: BTreeMap::new(),
            away: BTreeMap::new(),
            away_at: BTreeMap::new(),
            bays: BTreeMap::new(),
            plan: None,
            setting: None,
            points: BTreeMap::new(),
            restored: Vec::new(),
            left_away: BTreeMap::new(),
            readings: Vec::new(),
            readings_before: 0,
            voided: BTreeMap::new(),
            service: None,
            photos: Vec::new(),
            findings: Vec::new(),
            ending: None,
            standing: Vec::new(),
        }
    }

    /// The record of a point, empty where nothing was noted.
    #[must_use]
    pub fn point(&self, point: PointId) -> Option<&PointRecord> {
        self.points.get(&point)
    }

    /// The stage of a bay.
    #[must_use]
    pub fn stage(&self, bay: BayId) -> BayStage {
        self.bays
            .get(&bay)
            .map_or(BayStage::Shut, |work| work.stage)
    }

    /// The bays that are open.
    pub fn open_bays(&self) -> impl Iterator<Item = BayId> {
        self.bays
            .iter()
            .filter(|(_, work)| work.stage == BayStage::Open)
            .map(|(bay, _)| *bay)
    }
}
