//! Shapes that several calculations share.

use super::{Fault, at};
use baywalk_domain::coded::Coded;
use baywalk_domain::units::{Stated, TorqueUnit, Unit};
use chrono::NaiveDate;
use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::borrow::Cow;

/// A member of a closed list, written as its code; the schema names every code.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Word<C>(pub(super) C);

impl<C: Coded> Serialize for Word<C> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.0.code())
    }
}

impl<'de, C: Coded> Deserialize<'de> for Word<C> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let code = Cow::<str>::deserialize(deserializer)?;
        C::from_code(&code)
            .map(Self)
            .map_err(serde::de::Error::custom)
    }
}

impl<C: Coded> JsonSchema for Word<C> {
    fn schema_name() -> Cow<'static, str> {
        C::NAME.into()
    }

    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        let codes: Vec<&str> = C::ALL.iter().map(|member| member.code()).collect();
        json_schema!({ "type": "string", "enum": codes })
    }
}

/// A day, as year, month and day.
pub(super) fn day(field: &str, text: &str) -> Result<NaiveDate, Fault> {
    text.parse().map_err(at(field))
}

/// A number and its unit, such as 41230 mi.
pub(super) fn stated<U: Unit>(field: &str, text: &str) -> Result<Stated<U>, Fault> {
    Stated::parse_pair(text).map_err(at(field))
}

/// A torque as it was stated, and in newton metres.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct TorqueOut {
    /// The number as typed or printed.
    text: String,
    /// The unit it was stated in.
    unit: Word<TorqueUnit>,
    /// The number in that unit.
    value: f64,
    /// The torque in N·m.
    newton_metres: f64,
}

impl From<&Stated<TorqueUnit>> for TorqueOut {
    fn from(stated: &Stated<TorqueUnit>) -> Self {
        Self {
            text: stated.text().to_owned(),
            unit: Word(stated.unit()),
            value: stated.value(),
            newton_metres: stated.quantity().newton_metres(),
        }
    }
}

/// The spread of a torque, in N·m.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct BandOut {
    /// The lowest.
    lowest_newton_metres: f64,
    /// The highest.
    highest_newton_metres: f64,
}

impl From<baywalk_domain::torque::Band> for BandOut {
    fn from(band: baywalk_domain::torque::Band) -> Self {
        Self {
            lowest_newton_metres: band.lowest.newton_metres(),
            highest_newton_metres: band.highest.newton_metres(),
        }
    }
}

/// Where a published table comes from.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct HeadOut {
    standard: &'static str,
    table: &'static str,
    edition: &'static str,
    known: Word<baywalk_domain::published::Known>,
    certainty: Word<baywalk_domain::published::Certainty>,
    unit: &'static str,
    note: &'static str,
}

impl From<&baywalk_domain::published::Head> for HeadOut {
    fn from(head: &baywalk_domain::published::Head) -> Self {
        Self {
            standard: head.standard,
            table: head.table,
            edition: head.edition,
            known: Word(head.known),
            certainty: Word(head.certainty),
            unit: head.unit,
            note: head.note,
        }
    }
}
