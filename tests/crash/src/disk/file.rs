//! The bytes of one file: those that last, and changes that a power cut may undo.

use std::sync::Arc;

/// The size of a sector: a power cut leaves each one as it was or as it was to be, or as noise.
pub(super) const SECTOR: usize = 512;

#[derive(Debug, Clone)]
pub(super) enum Change {
    Write { at: usize, bytes: Arc<[u8]> },
    Length(usize),
}

#[derive(Debug, Clone, Default)]
pub(super) struct File {
    lasting: Vec<u8>,
    pub(super) pending: Vec<Change>,
}

impl File {
    /// What is pending lasts from now on.
    pub(super) fn sync(&mut self) {
        for change in std::mem::take(&mut self.pending) {
            apply(&mut self.lasting, &change, |_| Sector::Kept);
        }
    }

    /// The bytes, where `keep` says of each sector of each pending change what is left of it.
    pub(super) fn left(&self, mut keep: impl FnMut(usize, usize) -> Sector) -> Vec<u8> {
        let mut bytes = self.lasting.clone();
        for (place, change) in self.pending.iter().enumerate() {
            apply(&mut bytes, change, |sector| keep(place, sector));
        }
        bytes
    }
}

/// What a power cut leaves of a sector that was being written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Sector {
    Lost,
    Kept,
    Noise(u8),
}

fn apply(bytes: &mut Vec<u8>, change: &Change, mut keep: impl FnMut(usize) -> Sector) {
    match change {
        Change::Length(length) => {
            if keep(0) != Sector::Lost {
                bytes.resize(*length, 0);
            }
        }
        Change::Write { at, bytes: new } => {
            let end = at + new.len();
            for sector in at / SECTOR..end.div_ceil(SECTOR) {
                let (from, to) = ((sector * SECTOR).max(*at), ((sector + 1) * SECTOR).min(end));
                let left = keep(sector);
                if left == Sector::Lost {
                    continue;
                }
                if bytes.len() < to {
                    bytes.resize(to, 0);
                }
                match left {
                    Sector::Noise(noise) => noisy(&mut bytes[from..to], noise),
                    _ => bytes[from..to].copy_from_slice(&new[from - at..to - at]),
                }
            }
        }
    }
}

fn noisy(bytes: &mut [u8], start: u8) {
    let mut noise = start | 1;
    for byte in bytes {
        noise = noise.wrapping_mul(29).wrapping_add(113);
        *byte = noise;
    }
}
