//! The names that members of a backup may have.

use crate::ledger::Digest;
use crate::photo::{MOST_BYTES as MOST_PHOTO_BYTES, digest_of};

/// The member with the ledger.
pub(super) const LEDGER: &str = "ledger.jsonl";
/// The member with the sizes and digests of all others.
pub(super) const MANIFEST: &str = "manifest.json";
/// The folder of photos.
const PHOTOS: &str = "photos/";

/// The most bytes of a manifest.
const MOST_MANIFEST: u64 = 64 * 1024 * 1024;
/// The most bytes of a ledger.
const MOST_LEDGER: u64 = 8 * 1024 * 1024 * 1024;

/// What a member is, by its name.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Kind {
    /// The ledger.
    Ledger,
    /// The manifest.
    Manifest,
    /// A photo with this digest.
    Photo(Digest),
}

/// What a member is; `None` where no backup has a member of that name.
pub(super) fn kind(name: &str) -> Option<Kind> {
    match name {
        LEDGER => Some(Kind::Ledger),
        MANIFEST => Some(Kind::Manifest),
        _ => name
            .strip_prefix(PHOTOS)
            .and_then(digest_of)
            .map(Kind::Photo),
    }
}

/// The name of the member of a photo, by the name of its file.
pub(super) fn of_photo(file: &str) -> String {
    format!("{PHOTOS}{file}")
}

/// The name of the file of a photo, by the name of its member.
pub(super) fn file_of(name: &str) -> &str {
    name.strip_prefix(PHOTOS).unwrap_or(name)
}

impl Kind {
    /// The most bytes that it may have.
    pub(super) const fn most(self) -> u64 {
        match self {
            Self::Ledger => MOST_LEDGER,
            Self::Manifest => MOST_MANIFEST,
            Self::Photo(_) => MOST_PHOTO_BYTES,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_other_name_is_known() {
        let digest = "0f".repeat(32);
        assert!(matches!(
            kind(&format!("photos/{digest}.jpg")),
            Some(Kind::Photo(_))
        ));
        for name in [
            format!("photos/{}.jpg", digest.to_uppercase()),
            format!("photos/../{digest}.jpg"),
            format!("/photos/{digest}.jpg"),
            format!("photos\\{digest}.jpg"),
            format!("photos/{digest}.jpg/"),
            format!("photos/{digest}.exe"),
            "Ledger.jsonl".to_owned(),
            "baywalk.db".to_owned(),
            String::new(),
        ] {
            assert_eq!(kind(&name), None, "{name}");
        }
    }
}
