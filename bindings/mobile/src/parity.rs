//! A clock for comparing shells: it stands until it is told to go on, and its names come from it.
//! Only tests have it; nothing that ships is built with the feature.

use crate::{Baywalk, Fault};
use baywalk_domain::moment::{Boot, Moment};
use baywalk_logbook::Clock;
use baywalk_screens::Core;
use chrono::{DateTime, TimeDelta};
use std::sync::Arc;
use std::sync::atomic::{AtomicU64, Ordering};
use uuid::Uuid;

/// A clock that stands until it is told to go on.
#[derive(Debug, Default, uniffi::Object)]
pub struct SteadyClock {
    seconds: AtomicU64,
    given: AtomicU64,
}

#[uniffi::export]
impl SteadyClock {
    /// A clock at its beginning.
    ///
    /// # Errors
    /// None today; a shell treats one as any other.
    #[uniffi::constructor]
    pub fn begin() -> Result<Arc<Self>, Fault> {
        Ok(Arc::new(Self::default()))
    }

    /// Goes on by some seconds; names given from here on hang on this moment alone, however often
    /// names were asked for before.
    ///
    /// # Errors
    /// None today; a shell treats one as any other.
    pub fn pass(&self, seconds: u32) -> Result<(), Fault> {
        self.seconds.fetch_add(seconds.into(), Ordering::SeqCst);
        self.given.store(0, Ordering::SeqCst);
        Ok(())
    }
}

#[uniffi::export]
impl Baywalk {
    /// Opens the logbook of a folder as `open` does, by a steady clock.
    ///
    /// # Errors
    /// [`Fault`] as `open`.
    #[uniffi::constructor]
    pub fn open_steady(
        folder: String,
        locales: Vec<String>,
        clock: Arc<SteadyClock>,
    ) -> Result<Arc<Self>, Fault> {
        Self::opened(folder, &locales, |folder, words| {
            Core::open_by(folder, words, Box::new(Steady(clock)))
        })
    }
}

/// The logbook's hold of the clock.
#[derive(Debug)]
struct Steady(Arc<SteadyClock>);

/// Where the clock begins: a morning in April 2027, seven hours behind UTC.
const BEGINNING: &str = "2027-04-03T08:30:00-07:00";

impl Clock for Steady {
    fn now(&self) -> Moment {
        let seconds = self.0.seconds.load(Ordering::SeqCst);
        let began = DateTime::parse_from_rfc3339(BEGINNING).unwrap_or_default();
        let passed =
            TimeDelta::try_seconds(seconds.try_into().unwrap_or(i64::MAX)).unwrap_or_default();
        Moment {
            wall: began + passed,
            boot: Boot::new("steady", seconds),
        }
    }

    fn new_id(&self) -> Uuid {
        let given = self.0.given.fetch_add(1, Ordering::SeqCst);
        Uuid::from_u64_pair(self.0.seconds.load(Ordering::SeqCst), given)
    }
}
