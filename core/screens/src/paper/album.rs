//! The photos of a report, as large as is asked for.

use super::Wanted;
use baywalk_logbook::Logbook;
use baywalk_logbook::photo::{MASTER_EDGE, smaller};
use baywalk_paper::photo::Photos;
use std::collections::BTreeMap;
use std::path::PathBuf;

/// The least long edge that still shows something.
const LEAST_EDGE: u32 = 160;

/// Photos by their digest: files that are read when they are needed, or smaller ones at hand.
pub(crate) struct Album {
    files: BTreeMap<String, PathBuf>,
    small: BTreeMap<String, Vec<u8>>,
    reads: bool,
}

impl Album {
    /// The photos of these digests, as large as is asked for. One whose file is not there is left
    /// out, and so are the last ones where even the smallest would be too many.
    pub(crate) fn of<'a>(
        log: &Logbook,
        digests: impl Iterator<Item = &'a String>,
        wanted: &Wanted,
    ) -> Self {
        let known = digests.filter_map(|digest| Some((digest.clone(), log.photo(digest)?)));
        let files: BTreeMap<String, PathBuf> = known.collect();
        let most = wanted.photo_bytes();
        let all: u64 = files.values().map(size).sum();
        let small = match most {
            Some(most) if all > most && most > 0 => shrunk(&files, all, most),
            _ => BTreeMap::new(),
        };
        Self {
            reads: small.is_empty() && most != Some(0),
            files,
            small,
        }
    }
}

impl Photos for Album {
    fn jpeg(&self, digest: &str) -> Option<Vec<u8>> {
        if let Some(small) = self.small.get(digest) {
            return Some(small.clone());
        }
        let file = self.files.get(digest).filter(|_| self.reads)?;
        std::fs::read(file).ok()
    }
}

fn size(file: &PathBuf) -> u64 {
    std::fs::metadata(file).map_or(0, |known| known.len())
}

/// Smaller photos that together have no more bytes than may be.
fn shrunk(files: &BTreeMap<String, PathBuf>, all: u64, most: u64) -> BTreeMap<String, Vec<u8>> {
    let mut edge = MASTER_EDGE;
    let mut sum = all;
    loop {
        edge = next_edge(edge, sum, most);
        let small = at_edge(files, edge);
        sum = small.values().map(|bytes| bytes.len() as u64).sum();
        if sum <= most {
            return small;
        }
        if edge <= LEAST_EDGE {
            return first_of(small, most);
        }
    }
}

/// A smaller edge: bytes go about with the area. A tenth below what that gives, so that one or two
/// rounds do.
fn next_edge(edge: u32, sum: u64, most: u64) -> u32 {
    let share = most.saturating_mul(81) / sum.max(1);
    let area = u64::from(edge).pow(2).saturating_mul(share) / 100;
    let next = u32::try_from(area.isqrt()).unwrap_or(edge);
    next.clamp(LEAST_EDGE, edge.saturating_sub(1).max(LEAST_EDGE))
}

fn at_edge(files: &BTreeMap<String, PathBuf>, edge: u32) -> BTreeMap<String, Vec<u8>> {
    let made = files.iter().filter_map(|(digest, file)| {
        let bytes = std::fs::read(file).ok()?;
        Some((digest.clone(), smaller(bytes, edge).ok()?))
    });
    made.collect()
}

fn first_of(small: BTreeMap<String, Vec<u8>>, most: u64) -> BTreeMap<String, Vec<u8>> {
    let mut left = most;
    let mut kept = BTreeMap::new();
    for (digest, bytes) in small {
        let size = bytes.len() as u64;
        if size <= left {
            left -= size;
            kept.insert(digest, bytes);
        }
    }
    kept
}
