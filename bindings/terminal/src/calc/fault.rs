//! Why a calculation was not done.

/// Why a calculation was not done, in whole sentences for developers.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub(crate) enum Fault {
    /// There is no such calculation.
    #[error("There is no calculation {found:?}. Expected one of {expected:?}.")]
    Unknown {
        /// What was asked for.
        found: String,
        /// The names that there are.
        expected: Vec<&'static str>,
    },
    /// The input is no JSON object of the calculation's shape.
    #[error(
        "The input is no JSON object of this calculation: {0}. Its schema tells which fields it takes."
    )]
    Json(String),
    /// A field holds what can't be.
    #[error("The field {field} can't be taken: {why}.")]
    Field {
        /// The field, with dots into nested objects.
        field: String,
        /// Why.
        why: String,
    },
    /// The calculation refuses.
    #[error("The calculation is refused: {0}.")]
    Refused(String),
}

/// Turns an error about a field into a fault that names the field.
pub(super) fn at<E: std::fmt::Display>(field: &str) -> impl FnOnce(E) -> Fault {
    move |error| Fault::Field {
        field: field.to_owned(),
        why: error.to_string(),
    }
}
