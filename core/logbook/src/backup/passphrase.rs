//! The passphrase of a backup.

use age::secrecy::SecretString;

/// The work that opening takes, as a power of two: fixed, so that any phone can open what any other
/// made. It takes 64 MiB of memory (scrypt with r = 8 takes 1 KiB for each of 2^16).
pub(super) const WORK: u8 = 16;

/// The most work that is accepted from a file: 256 MiB.
pub(super) const MOST_WORK: u8 = 18;

/// A passphrase, which is never printed and is wiped from memory.
#[derive(Debug, Clone)]
pub struct Passphrase(SecretString);

impl Passphrase {
    /// Takes a passphrase; `None` where it is empty.
    ///
    /// # Example
    /// ```
    /// use baywalk_logbook::backup::Passphrase;
    /// assert!(Passphrase::new("four tired owls counting").is_some());
    /// assert!(Passphrase::new("").is_none());
    /// ```
    #[must_use]
    pub fn new(text: &str) -> Option<Self> {
        (!text.is_empty()).then(|| Self(SecretString::from(text.to_owned())))
    }

    pub(super) fn to_write(&self) -> age::scrypt::Recipient {
        let mut recipient = age::scrypt::Recipient::new(self.0.clone());
        recipient.set_work_factor(WORK);
        recipient
    }

    pub(super) fn to_read(&self) -> age::scrypt::Identity {
        let mut identity = age::scrypt::Identity::new(self.0.clone());
        identity.set_max_work_factor(MOST_WORK);
        identity
    }
}
