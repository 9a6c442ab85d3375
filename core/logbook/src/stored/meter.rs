//! A meter.

use super::Word;
use super::shape::record;
use baywalk_domain::isolation::{self, MeterCategory, MeterKind};

record! {
    /// What a proof is read with.
    Meter = isolation::Meter {
        kind: Word<MeterKind>,
        name: String,
        category: Word<MeterCategory>,
    }
}
