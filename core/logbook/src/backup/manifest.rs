//! The manifest: what a backup holds.

use super::{ArchiveFault, FORMAT};
use crate::ledger::{Digest, Head};
use crate::store;
use serde::{Deserialize, Serialize};
use serde_json::Value;

/// What a backup holds, as its `manifest.json` says.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Manifest {
    /// The version of the format.
    pub format: u32,
    /// The version of the store that it was made from.
    pub store: u32,
    /// The version of the program that made it.
    pub program: String,
    /// When it was made, with the offset of the place (RFC 3339).
    pub made: String,
    /// The number of entries, which is the number of the last one.
    pub entries: u64,
    /// The digest of the last entry, in hexadecimal.
    pub head: String,
    /// All members but this one, in their order.
    pub members: Vec<Listed>,
    /// The digests of photos that entries name and that were not there, or damaged.
    pub missing: Vec<String>,
}

/// One member.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Listed {
    /// Its name.
    pub name: String,
    /// Its bytes.
    pub size: u64,
    /// Their SHA-256, in hexadecimal.
    pub sha256: String,
}

impl Manifest {
    /// The last entry.
    #[must_use]
    pub fn head(&self) -> Option<Head> {
        Digest::read(&self.head).map(|digest| Head {
            seq: self.entries,
            digest,
        })
    }

    /// As canonical JSON.
    pub(super) fn write(&self) -> std::io::Result<String> {
        serde_json_canonicalizer::to_string(self).map_err(std::io::Error::other)
    }

    /// Reads it; a newer version is told as such, whatever else it says.
    pub(super) fn read(text: &[u8]) -> Result<Self, ArchiveFault> {
        let unread = |error: serde_json::Error| ArchiveFault::Manifest(error.to_string());
        let value: Value = serde_json::from_slice(text).map_err(unread)?;
        let number = |name: &str| value.get(name).and_then(Value::as_u64).unwrap_or(0);
        for (name, known) in [("format", FORMAT), ("store", store::VERSION)] {
            let found = number(name);
            if found > u64::from(known) {
                return Err(ArchiveFault::TooNew { found, known });
            }
        }
        serde_json::from_value(value).map_err(unread)
    }
}
