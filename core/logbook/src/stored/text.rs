//! Values that have one text each: names, codes, days, sizes.

use super::{Shape, ShapeCause, ShapeFault};
use baywalk_domain::ids::{
    ActId, BayId, DeviceId, FindingId, PointId, RigId, RuleId, SourceId, ToolId, WalkId,
};
use baywalk_domain::rig::{Code, Feed, Opening, Thread, WireSize};
use baywalk_domain::units::StatedLength;
use chrono::{DateTime, FixedOffset, NaiveDate};
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::marker::PhantomData;

/// A value that is written as one text and read from it again.
pub trait Texted: Sized {
    /// What the text is called.
    const NAME: &'static str;
    /// What it looks like, as a regular expression; anything where it is empty.
    const PATTERN: &'static str = "";
    /// Writes it.
    fn write(&self) -> String;
    /// Reads it.
    ///
    /// # Errors
    /// [`ShapeCause`] where the text is none.
    fn read(text: &str) -> Result<Self, ShapeCause>;
}

/// A value as its text.
#[derive(Debug, Clone, PartialEq)]
pub struct Text<T> {
    text: String,
    of: PhantomData<T>,
}

impl<T: Texted> Shape for Text<T> {
    type Domain = T;
    fn of(domain: &T) -> Self {
        Self {
            text: domain.write(),
            of: PhantomData,
        }
    }
    fn domain(self) -> Result<T, ShapeFault> {
        Ok(T::read(&self.text)?)
    }
}

impl<T> Serialize for Text<T> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.text.serialize(serializer)
    }
}

impl<'de, T> Deserialize<'de> for Text<T> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        String::deserialize(deserializer).map(|text| Self {
            text,
            of: PhantomData,
        })
    }
}

#[cfg(feature = "schema")]
impl<T: Texted> schemars::JsonSchema for Text<T> {
    fn schema_name() -> std::borrow::Cow<'static, str> {
        T::NAME.into()
    }

    fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
        schemars::json_schema!({
            "type": "string",
            "description": T::NAME,
            "pattern": T::PATTERN,
        })
    }
}

fn form(found: &str, expected: &'static str) -> ShapeCause {
    ShapeCause::Form {
        found: found.to_owned(),
        expected,
    }
}

/// RFC 9562, section 4, in lower case.
const UUID: &str = "^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$";

macro_rules! ids {
    ($($id:ident as $name:literal),+ $(,)?) => {$(
        impl Texted for $id {
            const NAME: &'static str = $name;
            const PATTERN: &'static str = UUID;
            fn write(&self) -> String {
                self.to_string()
            }
            fn read(text: &str) -> Result<Self, ShapeCause> {
                text.parse().map_err(|_| form(text, "UUID"))
            }
        }
    )+};
}

ids! {
    ActId as "act-id",
    RigId as "rig-id",
    SourceId as "source-id",
    BayId as "bay-id",
    DeviceId as "device-id",
    PointId as "point-id",
    ToolId as "tool-id",
    WalkId as "walk-id",
    FindingId as "finding-id",
    RuleId as "rule-id",
}

impl Texted for Code {
    const NAME: &'static str = "code";
    fn write(&self) -> String {
        self.as_str().to_owned()
    }
    fn read(text: &str) -> Result<Self, ShapeCause> {
        Ok(Self::parse(text)?)
    }
}

impl Texted for Feed {
    const NAME: &'static str = "feed";
    fn write(&self) -> String {
        self.text()
    }
    fn read(text: &str) -> Result<Self, ShapeCause> {
        Self::parse(text).map_err(|_| form(text, "source such as S1 or set such as FTS/shore in"))
    }
}

impl Texted for Opening {
    const NAME: &'static str = "opening";
    fn write(&self) -> String {
        self.text()
    }
    fn read(text: &str) -> Result<Self, ShapeCause> {
        Self::parse(text).map_err(|_| form(text, "device such as EDS or set such as EPV/array one"))
    }
}

impl Texted for Thread {
    const NAME: &'static str = "thread";
    fn write(&self) -> String {
        self.text().to_owned()
    }
    fn read(text: &str) -> Result<Self, ShapeCause> {
        Ok(Self::parse(text)?)
    }
}

impl Texted for WireSize {
    const NAME: &'static str = "conductor-size";
    fn write(&self) -> String {
        self.code()
    }
    fn read(text: &str) -> Result<Self, ShapeCause> {
        Ok(Self::parse(text)?)
    }
}

impl Texted for StatedLength {
    const NAME: &'static str = "length";
    fn write(&self) -> String {
        self.text().to_owned()
    }
    fn read(text: &str) -> Result<Self, ShapeCause> {
        Ok(Self::parse(text)?)
    }
}

impl Texted for NaiveDate {
    const NAME: &'static str = "day";
    const PATTERN: &'static str = "^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$";
    fn write(&self) -> String {
        self.to_string()
    }
    fn read(text: &str) -> Result<Self, ShapeCause> {
        text.parse()
            .map_err(|_| form(text, "day such as 2027-03-20"))
    }
}

impl Texted for DateTime<FixedOffset> {
    const NAME: &'static str = "wall-time";
    const PATTERN: &'static str = "^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}(\\.[0-9]+)?([+-][0-9]{2}:[0-9]{2}|Z)$";
    fn write(&self) -> String {
        self.to_rfc3339()
    }
    fn read(text: &str) -> Result<Self, ShapeCause> {
        Self::parse_from_rfc3339(text)
            .map_err(|_| form(text, "time such as 2027-03-20T09:31:00-07:00"))
    }
}
