//! Times, sorted.

use std::time::Duration;

/// Times in microseconds.
#[derive(Debug, Default)]
pub(crate) struct Times(Vec<f64>);

impl Times {
    pub(crate) fn add(&mut self, time: Duration) {
        self.0.push(time.as_secs_f64() * 1e6);
    }

    /// The time that so many per cent stay below, in microseconds.
    pub(crate) fn per_cent(&self, share: usize) -> f64 {
        let mut sorted = self.0.clone();
        sorted.sort_by(f64::total_cmp);
        let place = (sorted.len() * share / 100).min(sorted.len().saturating_sub(1));
        sorted.get(place).copied().unwrap_or_default()
    }

    pub(crate) fn median(&self) -> f64 {
        self.per_cent(50)
    }
}
