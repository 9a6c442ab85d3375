//! Why an act is not taken. Each refusal can be worded as what, why, and what to do.

use super::{BayStage, Phase, ReadyItem};
use crate::due::RuleFault;
use crate::finding::FindingKind;
use crate::ids::{ActId, BayId, DeviceId, PointId, SourceId, ToolId};
use crate::isolation::{Lapse, MeterCategory};
use crate::rig::{BookFault, Check, SupplyKind};
use crate::supply::ReadingStep;
use crate::torque::Action;

/// What a terminal still needs before it may be touched.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Needs {
    /// Its bay is not open.
    OpenBay(BayId),
    /// A source was found that is not away yet.
    Source(SourceId),
    /// Its device has no set of conductors noted, so nothing can be proved.
    Sets(DeviceId),
    /// Pairs are not read yet.
    Pairs {
        /// The device.
        device: DeviceId,
        /// How many pairs are left.
        left: usize,
        /// The first of them.
        next: Check,
    },
    /// The meter has not been shown to work again after.
    LiveAgain(SupplyKind),
    /// A conductor was found live.
    FoundLive(DeviceId),
    /// Proofs no longer count.
    Lapsed(Lapse),
}

/// Why an act is not taken.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum Refusal {
    /// There is no such rig.
    #[error("no such rig")]
    NoRig,
    /// No walk is open.
    #[error("no walk is open for this rig")]
    NoWalk,
    /// A walk is open already.
    #[error("a walk is open already")]
    WalkOpen,
    /// The walk is stopped for now.
    #[error("the walk is stopped for now")]
    Paused,
    /// The walk is not stopped.
    #[error("the walk is not stopped")]
    NotPaused,
    /// No plan is followed, or the plan has no minutes.
    #[error("no plan is followed, or it has no minutes")]
    NoRoute,
    /// The act does not belong where the walk stands.
    #[error("the act belongs to {expected:?}; the walk stands at {found:?}")]
    Phase {
        /// Where the walk stands.
        found: Phase,
        /// Where the act belongs.
        expected: Phase,
    },
    /// The list before is not answered.
    #[error("not answered yet: {0:?}")]
    NotReady(ReadyItem),
    /// The walk can't go on without an item of the list before.
    #[error("can't go on without {0:?}")]
    MustHave(ReadyItem),
    /// The rig has no sources noted.
    #[error("no sources are noted")]
    NoSources,
    /// A source is not away yet.
    #[error("a source is not away yet")]
    SourceNotAway(SourceId),
    /// Something else has to go first.
    #[error("another source goes first")]
    SourceFirst(SourceId),
    /// The source is away already, or back already.
    #[error("nothing to do at this source")]
    SourceDone(SourceId),
    /// An AC source stays live in the bay: it stays closed.
    #[error("an AC source stays live in this bay")]
    AliveByChoice {
        /// The bay.
        bay: BayId,
        /// The source.
        feeding: SourceId,
    },
    /// A record is not in the book, or retired.
    #[error("no such {0} in the book")]
    NotInBook(&'static str),
    /// The bay does not stand as needed.
    #[error("the bay is {found:?}; expected {expected:?}")]
    Bay {
        /// The bay.
        bay: BayId,
        /// How it stands.
        found: BayStage,
        /// How it should.
        expected: BayStage,
    },
    /// A proximity tester proves nothing.
    #[error("a proximity tester proves nothing")]
    Proximity,
    /// The meter is not named, so that nobody can see that before and after are read with one.
    #[error("the meter is not named")]
    NameMeter,
    /// The meter has no category by which it may prove AC conductors.
    #[error("a meter of category {0:?} proves no AC conductor dead")]
    MeterCategory(MeterCategory),
    /// There is no contact meter at hand.
    #[error("no contact meter is at hand")]
    NoMeter,
    /// The reading does not show that the source is live.
    #[error("the reading does not show a live source")]
    NotKnownLive(SupplyKind),
    /// No proof is running for this kind of reading.
    #[error("no proof is running")]
    NoProof(SupplyKind),
    /// The device has no such pair.
    #[error("the device has no such pair")]
    NoSuchPair,
    /// The set can't be excepted.
    #[error("no exception here: {0:?}")]
    NoException(NoException),
    /// The terminal may not be touched yet.
    #[error("not to be touched yet: {needs:?}")]
    Locked {
        /// The point.
        point: PointId,
        /// What it needs.
        needs: Needs,
    },
    /// The point is a look, or a terminal, and the act is for the other.
    #[error("the act is not for this kind of point")]
    WrongKind(PointId),
    /// The point was noted already.
    #[error("noted already")]
    NotedAlready(PointId),
    /// Nothing was noted at the point yet.
    #[error("nothing noted yet")]
    NothingNoted(PointId),
    /// The grade can't be told by the advice that stands.
    #[error("can't be judged so: the advice is {advice:?}")]
    NotBy {
        /// The point.
        point: PointId,
        /// The advice.
        advice: Action,
    },
    /// The tool is not in the book, or does not reach.
    #[error("no such tool")]
    NoTool,
    /// The tool is not said to be set so.
    #[error("the tool is not said to be set to that")]
    ToolNotSet(ToolId),
    /// What held is left alone.
    #[error("what held is left alone")]
    LeaveWhatHeld(PointId),
    /// It is to be remade, not set.
    #[error("to be remade, not set")]
    RemakeNotSet {
        /// The point.
        point: PointId,
        /// Why.
        because: FindingKind,
    },
    /// A loose joint or a conductor that is out can't be left so.
    #[error("can't be left so")]
    CantLeaveSo(PointId),
    /// Something in the bay waits for a word on how it was left.
    #[error("a point waits for how it was left")]
    WaitsForLeft(PointId),
    /// Not everything was counted.
    #[error("not everything is counted")]
    NotCounted(BayId),
    /// A bay is open.
    #[error("a bay is open")]
    BayOpen(BayId),
    /// A reading is still to be taken.
    #[error("a reading is still to be taken")]
    ReadingFirst(ReadingStep),
    /// A reading stands that is not safe.
    #[error("a reading stands that is not safe")]
    ReadingStops(ReadingStep),
    /// The reading is not one this rig asks for.
    #[error("not a reading of this rig")]
    NoSuchReading(ReadingStep),
    /// A voltage was given for a test, or a test for a voltage.
    #[error("a voltage was given for a test, or a test for a voltage")]
    WrongMeasure(ReadingStep),
    /// A reason or a name must be typed.
    #[error("a reason or name must be typed")]
    SayWhy,
    /// There is no such finding, or it is closed.
    #[error("no such open finding")]
    NoFinding,
    /// The odometer is below an earlier note.
    #[error("the odometer is below an earlier note")]
    OdometerBack,
    /// No odometer note stands that could be wrong.
    #[error("no odometer note stands that could be wrong")]
    NothingToMend,
    /// A day to put off to is not ahead, or too far.
    #[error("a day to put off to is not ahead, or too far")]
    PutOffTooFar,
    /// The rule can't be so.
    #[error("the rule can't be: {0:?}")]
    Rule(RuleFault),
    /// Only the newest act that stands can be struck.
    #[error("only the newest act can be struck")]
    NotNewest {
        /// The newest act that stands.
        newest: ActId,
    },
    /// Nothing stands to be struck.
    #[error("nothing to strike")]
    NothingToStrike,
    /// The book can't be so.
    #[error(transparent)]
    Book(#[from] BookFault),
}

crate::coded::coded! {
    /// Why a set can't be gone on at while it is live.
    NoException as "no-exception" {
        /// It is an AC set.
        Ac = "ac",
        /// A switch stands upstream.
        Switch = "switch",
        /// Its highest voltage is 50 V or more.
        TooHigh = "too_high",
        /// Its highest voltage is not noted.
        NotNoted = "not_noted",
    }
}
