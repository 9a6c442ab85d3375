//! What stands beside the ledger: settings, where a screen stood.

use super::Logbook;
use crate::store::StoreFault;
use baywalk_domain::torque::Practice;

/// The key under which the share of the check is kept.
const CHECK_PERCENT: &str = "check_percent";

impl Logbook {
    /// The share of the target at which terminals are checked.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be read.
    pub fn practice(&self) -> Result<Practice, StoreFault> {
        let kept = self.store.scratch(CHECK_PERCENT)?;
        let kept = kept.and_then(|text| text.parse().ok());
        let practice = kept.and_then(|percent| Practice::new(percent).ok());
        Ok(practice.unwrap_or_default())
    }

    /// Sets the share of the target at which terminals are checked.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be written.
    pub fn set_practice(&mut self, practice: Practice) -> Result<(), StoreFault> {
        let percent = practice.check_percent().to_string();
        self.store.set_scratch(CHECK_PERCENT, Some(&percent))
    }

    /// What was kept under a key beside the ledger, such as where a screen stood.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be read.
    pub fn scratch(&self, key: &str) -> Result<Option<String>, StoreFault> {
        self.store.scratch(key)
    }

    /// Keeps a value under a key beside the ledger, or forgets it. It is no entry and no backup
    /// has it.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be written.
    pub fn set_scratch(&mut self, key: &str, value: Option<&str>) -> Result<(), StoreFault> {
        self.store.set_scratch(key, value)
    }
}
