//! Torque tools: whether their calibration holds.

use crate::Words;
use baywalk_domain::torque::Calibration;

impl Words {
    /// Whether a tool's calibration holds, and what to do where it does not.
    #[must_use]
    pub fn calibration(&self, calibration: Calibration) -> String {
        match calibration {
            Calibration::Unknown => self.say("advice-calibration-unknown"),
            Calibration::Holds { due, cycles_left } => self.fill(
                "advice-calibration-holds",
                &[
                    ("date", self.date(due).into()),
                    ("left", cycles_left.into()),
                ],
            ),
            Calibration::Due {
                by_cycles: true, ..
            } => self.say("advice-calibration-due-clicks"),
            Calibration::Due { since, .. } => self.fill(
                "advice-calibration-due",
                &[("date", self.date(since).into())],
            ),
        }
    }
}
