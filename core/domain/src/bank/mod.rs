//! A DC bank and the way from it: polarity, voltage, and the drop when a load comes on.

mod judge;
mod nominal;

pub use judge::{BankFinding, BankJudged, BankReading, BankReadingFault, DropClass, judge};
pub use nominal::Nominal;
