//! Acts.

use super::shape::choice;
use super::{
    About, AsFound, AsLeft, Asked, Away, BookChange, Check, Counted, Ending, FollowUp, Mark, Meter,
    Quantity, Reading, ReadyAnswer, Recovery, Route, RuleChange, Scope, Seen, Text, Usage, Word,
};
use baywalk_domain::ids::{ActId, BayId, DeviceId, FindingId, PointId, SourceId, ToolId};
use baywalk_domain::rig::SupplyKind;
use baywalk_domain::units::{DistanceUnit, TorqueUnit, VoltageUnit};
use baywalk_domain::walk::{self, Damage, ReadyItem};
use chrono::NaiveDate;

choice! {
    /// What a person does: the kind of act, then its data, as `{"open":{"bay":"…"}}` or `"pause"`.
    ///
    /// # Example
    /// ```
    /// use baywalk_domain::walk;
    /// use baywalk_logbook::stored::{Act, Shape};
    /// let act: Act = serde_json::from_str(r#"{"odometer":{"value":"41250","unit":"mi"}}"#)?;
    /// let act = act.domain()?;
    /// assert_eq!(act.kind(), "odometer");
    /// let wrong: Act = serde_json::from_str(r#"{"odometer":{"value":"41250","unit":"leagues"}}"#)?;
    /// assert!(wrong.domain().is_err());
    /// assert!(serde_json::from_str::<Act>(r#"{"open":{"bay":"x","lid":1}}"#).is_err());
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    Act = walk::Act {
        Book(book: BookChange),
        Odometer(odometer: Quantity<DistanceUnit>),
        Usage(usage: Usage),
        Rule(rule: RuleChange),
        PutOff { asked: Asked, until: Text<NaiveDate>, why: String },
        Start { person: String, scope: Scope },
        Ready { item: Word<ReadyItem>, answer: ReadyAnswer },
        Isolate { source: Text<SourceId>, away: Away },
        Follow(follow: Route),
        LeavePlan,
        Open { bay: Text<BayId> },
        KnownLive {
            bay: Text<BayId>,
            supply: Word<SupplyKind>,
            place: String,
            meter: Meter,
            volts: Quantity<VoltageUnit>,
        },
        Read { device: Text<DeviceId>, check: Check, volts: Quantity<VoltageUnit> },
        Except { device: Text<DeviceId>, set: String, reason: String },
        SetTool { tool: Text<ToolId>, at: Quantity<TorqueUnit> },
        Found { point: Text<PointId>, found: AsFound },
        Correct { point: Text<PointId>, found: AsFound, why: String },
        Look { point: Text<PointId>, seen: Seen },
        Damage { point: Text<PointId>, damage: Word<Damage>, note: String },
        Left { point: Text<PointId>, left: AsLeft },
        Photo { about: About, digest: String, caption: String },
        Close { bay: Text<BayId>, counted: Counted },
        PowerUp,
        Restore { source: Text<SourceId> },
        LeaveAway { source: Text<SourceId>, why: String },
        Measure(measure: Reading),
        Pause,
        Resume,
        End(end: Ending),
        Decide { finding: Text<FindingId>, follow_up: FollowUp },
        Strike { act: Text<ActId> },
        FromBackup { backup: Mark, replaced: Option<Mark> },
        Recovered(recovered: Recovery),
    }
}
