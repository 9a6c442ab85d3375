//! A quantity as it was stated.

use super::{Shape, ShapeFault};
use baywalk_domain::units::{Stated, StatedFault, Unit};
use serde::{Deserialize, Serialize};
use std::marker::PhantomData;

/// A number as it was typed and the code of its unit: `{"unit":"lbf.in","value":"45"}`.
///
/// # Example
/// ```
/// use baywalk_domain::units::TorqueUnit;
/// use baywalk_logbook::stored::{Quantity, Shape};
/// let typed: Quantity<TorqueUnit> = serde_json::from_str(r#"{"value":"4,50","unit":"N.m"}"#)?;
/// assert_eq!(typed.domain()?.pair(), "4,50 N.m");
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, bound = "")]
pub struct Quantity<U> {
    value: String,
    unit: String,
    #[serde(skip)]
    of: PhantomData<U>,
}

impl<U: Unit> Shape for Quantity<U> {
    type Domain = Stated<U>;
    fn of(domain: &Stated<U>) -> Self {
        Self {
            value: domain.text().to_owned(),
            unit: domain.unit().code().to_owned(),
            of: PhantomData,
        }
    }
    fn domain(self) -> Result<Stated<U>, ShapeFault> {
        let unit = U::from_code(&self.unit).map_err(StatedFault::from)?;
        Ok(Stated::parse(&self.value, unit)?)
    }
}

#[cfg(feature = "schema")]
impl<U: Unit> schemars::JsonSchema for Quantity<U> {
    fn schema_name() -> std::borrow::Cow<'static, str> {
        format!("quantity-{}", U::NAME).into()
    }

    fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
        let units: Vec<&str> = U::ALL.iter().map(|unit| unit.code()).collect();
        schemars::json_schema!({
            "type": "object",
            "properties": {
                "value": { "type": "string", "description": "the number as typed" },
                "unit": { "type": "string", "enum": units },
            },
            "required": ["value", "unit"],
            "additionalProperties": false,
        })
    }
}
