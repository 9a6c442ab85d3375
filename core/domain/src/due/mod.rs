//! When to look again: by the yearly rule, the owner's rules, what happened, and what the rig's own
//! past tells.

mod bound;
mod condition;
mod course;
mod known;
mod learned;
mod list;
mod notice;
mod pace;
mod past;
mod reason;
mod rule;
mod settle;
mod usage;
mod year_day;

pub use bound::Bound;
pub use condition::{Condition, condition};
pub use course::Course;
pub use known::{Courses, Known};
pub use learned::{CHANCE, KindTold, Learned, MONTH, learned};
pub use list::{Due, due};
pub use notice::{HOUR, MOST_NOTICES, Notice, instant, notices};
pub use pace::{Forecast, OUTING_HOURS, OUTING_KM, Pace};
pub use past::{KindCurve, Lived, curves, lives};
pub use reason::DueReason;
pub use rule::{
    Anchor, Asked, Limit, MOST_CHANCE, MOST_MONTHS, MOST_PUT_OFF, PutOff, Reach, Rule, RuleChange,
    RuleFault, YEAR,
};
pub use settle::{SETTLE_DAYS, SETTLE_MILES, Settle, settle};
pub use usage::{Event, EventKind, OdometerNote, ROUGH_MILES, Restart, Usage};
pub use year_day::YearDay;
