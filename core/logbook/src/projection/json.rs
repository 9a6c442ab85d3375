//! Shapes in columns.

use crate::store::{Damage, StoreFault};
use crate::stored::{Shape, Texted};
use serde::Serialize;
use serde::de::DeserializeOwned;

/// The shape of a value as JSON text.
pub(super) fn write<S: Shape + Serialize>(domain: &S::Domain) -> Result<String, StoreFault> {
    serde_json_canonicalizer::to_string(&S::of(domain))
        .map_err(|error| StoreFault::Unexpected(error.to_string()))
}

/// The value of JSON text.
pub(super) fn read<S: Shape + DeserializeOwned>(text: &str) -> Result<S::Domain, StoreFault> {
    let shape: S = serde_json::from_str(text).map_err(|error| computed(&error))?;
    shape.domain().map_err(|error| computed(&error))
}

/// A value of one text.
pub(super) fn text<T: Texted>(text: &str) -> Result<T, StoreFault> {
    T::read(text).map_err(|error| computed(&error))
}

/// A computed table holds something unreadable.
pub(super) fn computed(error: &dyn std::fmt::Display) -> StoreFault {
    Damage::Computed(error.to_string()).into()
}
