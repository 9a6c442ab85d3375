//! The clocks and the randomness of the machine.

use super::Clock;
use baywalk_domain::moment::{Boot, Moment};
use chrono::Local;
use std::time::Instant;
use uuid::Uuid;

/// The machine's own clocks and randomness.
///
/// Where the system tells the name of its start and the seconds since, these are used; elsewhere
/// the start of this process stands for it, so that proofs lapse when the app is started anew.
#[derive(Debug)]
pub struct SystemClock {
    process: Uuid,
    started: Instant,
    /// The name of the system's start; no process outlives it.
    boot_id: Option<String>,
}

impl SystemClock {
    /// Takes the clocks of this machine.
    #[must_use]
    pub fn new() -> Self {
        Self {
            process: Uuid::now_v7(),
            started: Instant::now(),
            boot_id: boot_id(),
        }
    }

    fn boot(&self) -> Boot {
        let of_system = self.boot_id.as_ref().zip(uptime());
        of_system.map_or_else(
            || Boot::new(&self.process.to_string(), self.started.elapsed().as_secs()),
            |(id, seconds)| Boot::new(id, seconds),
        )
    }
}

impl Default for SystemClock {
    fn default() -> Self {
        Self::new()
    }
}

impl Clock for SystemClock {
    fn now(&self) -> Moment {
        Moment {
            wall: Local::now().fixed_offset(),
            boot: self.boot(),
        }
    }

    fn new_id(&self) -> Uuid {
        Uuid::now_v7()
    }
}

/// The name of the system's start, where it gives one.
fn boot_id() -> Option<String> {
    let text = std::fs::read_to_string("/proc/sys/kernel/random/boot_id").ok()?;
    Some(text.trim().to_owned()).filter(|id| !id.is_empty())
}

/// Whole seconds since the system's start, sleep counted, where it tells them.
fn uptime() -> Option<u64> {
    let text = std::fs::read_to_string("/proc/uptime").ok()?;
    text.split(['.', ' ']).next()?.parse().ok()
}
