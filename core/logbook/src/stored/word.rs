//! A member of a closed list, stored by its code.

use super::{Shape, ShapeFault};
use baywalk_domain::coded::Coded;
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::marker::PhantomData;

/// A member of a closed list, as its code.
///
/// # Example
/// ```
/// use baywalk_domain::rig::Side;
/// use baywalk_logbook::stored::{Shape, Word};
/// let word: Word<Side> = serde_json::from_str(r#""left""#)?;
/// assert_eq!(word.domain(), Ok(Side::Left));
/// let wrong: Word<Side> = serde_json::from_str(r#""port""#)?;
/// assert!(wrong.domain().is_err());
/// # Ok::<(), serde_json::Error>(())
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Word<C> {
    code: String,
    list: PhantomData<C>,
}

impl<C: Coded> Shape for Word<C> {
    type Domain = C;
    fn of(domain: &C) -> Self {
        Self {
            code: domain.code().to_owned(),
            list: PhantomData,
        }
    }
    fn domain(self) -> Result<C, ShapeFault> {
        Ok(C::from_code(&self.code)?)
    }
}

impl<C> Serialize for Word<C> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.code.serialize(serializer)
    }
}

impl<'de, C> Deserialize<'de> for Word<C> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        String::deserialize(deserializer).map(|code| Self {
            code,
            list: PhantomData,
        })
    }
}

#[cfg(feature = "schema")]
impl<C: Coded> schemars::JsonSchema for Word<C> {
    fn schema_name() -> std::borrow::Cow<'static, str> {
        C::NAME.into()
    }

    fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
        let codes: Vec<&str> = C::ALL.iter().map(|member| member.code()).collect();
        schemars::json_schema!({ "type": "string", "enum": codes })
    }
}
