//! What is due, as the list of rigs keeps it.

use super::shape::record;
use super::timing::{Asked, Reach};
use super::{Quantity, Text, Word};
use baywalk_domain::due;
use baywalk_domain::units::{DistanceUnit, HourUnit};
use chrono::NaiveDate;

record! {
    /// A day with its range.
    Forecast = due::Forecast {
        on: Text<NaiveDate>,
        from: Text<NaiveDate>,
        to: Option<Text<NaiveDate>>,
    }
}

record! {
    /// What one limit comes to.
    Bound = due::Bound {
        reason: Word<due::DueReason>,
        day: Option<Forecast>,
        at: Option<Quantity<DistanceUnit>>,
        hours: Option<Quantity<HourUnit>>,
    }
}

record! {
    /// What was put off.
    PutOff = due::PutOff {
        on: Text<NaiveDate>,
        asked: Asked,
        until: Text<NaiveDate>,
        why: String,
    }
}

record! {
    /// Something that is due.
    Due = due::Due {
        asked: Asked,
        reach: Reach,
        on: Text<NaiveDate>,
        reason: Word<due::DueReason>,
        since: Option<Text<NaiveDate>>,
        bounds: Vec<Bound>,
        put_off: Option<PutOff>,
    }
}
