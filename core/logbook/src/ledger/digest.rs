//! The chain.

use baywalk_domain::walk::Mark;
use sha2::{Digest as _, Sha256};

/// A SHA-256 digest; shown as 64 hexadecimal digits.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Digest([u8; 32]);

/// The newest entry's number and digest; number 0 stands before the first entry.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Head {
    /// The number.
    pub seq: u64,
    /// The digest.
    pub digest: Digest,
}

impl Digest {
    /// What stands before the first entry.
    pub const START: Self = Self([0; 32]);

    /// The digest of an entry's stored bytes behind this one.
    ///
    /// # Example
    /// ```
    /// use baywalk_logbook::ledger::Digest;
    /// // SHA-256 of 32 zero bytes and "abc", by `sha256sum`.
    /// let first = Digest::START.then(b"abc").to_string();
    /// assert!(first.starts_with("365aa7d8f7f9402c"));
    /// ```
    #[must_use]
    pub fn then(self, entry: &[u8]) -> Self {
        let mut hash = Sha256::new();
        hash.update(self.0);
        hash.update(entry);
        Self(hash.finalize().into())
    }

    /// The digest of some bytes by themselves.
    #[must_use]
    pub fn of(bytes: &[u8]) -> Self {
        Self(Sha256::digest(bytes).into())
    }

    /// Takes 32 bytes; `None` where there are more or fewer.
    #[must_use]
    pub fn from_bytes(bytes: &[u8]) -> Option<Self> {
        bytes.try_into().ok().map(Self)
    }

    /// Reads 64 hexadecimal digits in lower case; `None` where it is anything else.
    ///
    /// # Example
    /// ```
    /// use baywalk_logbook::ledger::Digest;
    /// let digest = Digest::of(b"abc");
    /// assert_eq!(Digest::read(&digest.to_string()), Some(digest));
    /// assert_eq!(Digest::read("0F"), None);
    /// ```
    #[must_use]
    pub fn read(text: &str) -> Option<Self> {
        let nibble = |digit: &u8| match digit {
            b'0'..=b'9' => Some(digit - b'0'),
            b'a'..=b'f' => Some(digit - b'a' + 10),
            _ => None,
        };
        let bytes: Option<Vec<u8>> = text
            .as_bytes()
            .chunks(2)
            .map(|pair| match pair {
                [high, low] => Some(nibble(high)? * 16 + nibble(low)?),
                _ => None,
            })
            .collect();
        Self::from_bytes(&bytes?)
    }

    /// The 32 bytes.
    #[must_use]
    pub const fn bytes(&self) -> &[u8; 32] {
        &self.0
    }
}

impl std::fmt::Display for Digest {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        self.0.iter().try_for_each(|byte| write!(f, "{byte:02x}"))
    }
}

impl Head {
    /// Before the first entry.
    pub const START: Self = Self {
        seq: 0,
        digest: Digest::START,
    };

    /// The same place, as an entry names it.
    #[must_use]
    pub fn mark(self) -> Mark {
        Mark {
            seq: self.seq,
            digest: self.digest.to_string(),
        }
    }

    /// The head after one more entry.
    #[must_use]
    pub fn then(self, entry: &[u8]) -> Self {
        Self {
            seq: self.seq.saturating_add(1),
            digest: self.digest.then(entry),
        }
    }
}
