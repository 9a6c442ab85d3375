//! How many, as a measure.

/// A number of things as a measure; beyond four thousand million it stays there.
pub(crate) fn measure(count: usize) -> f64 {
    f64::from(u32::try_from(count).unwrap_or(u32::MAX))
}
