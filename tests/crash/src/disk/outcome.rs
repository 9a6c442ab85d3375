//! What a power cut may make of what was not synced.

use super::file::Sector;
use fastrand::Rng;

/// What becomes of the changes that were not synced.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Outcome {
    /// All are lost.
    Lost,
    /// All are kept, as when only the process ends.
    Kept,
    /// All but the newest are kept.
    ButNewest,
    /// Only the newest is kept.
    OnlyNewest,
    /// Those of one file are kept, all others lost.
    OneFile,
    /// Each is kept or lost, whatever was written before or after it.
    Some,
    /// Each sector is kept or lost.
    Torn,
    /// Each sector is kept or lost or holds noise.
    Noise,
    /// One choice of those that are possible where few changes are pending: bit by bit.
    Choice(u32),
}

/// Where a change stands: its file, its place among the pending ones of the file, and how many of
/// the file are pending.
#[derive(Debug, Clone, Copy)]
pub(super) struct Place {
    pub(super) file: usize,
    pub(super) place: usize,
    pub(super) of: usize,
    pub(super) number: usize,
}

impl Outcome {
    /// The outcomes tried at a boundary with so many pending changes.
    pub(super) fn of(pending: usize) -> Vec<Self> {
        match pending {
            0 => vec![Self::Kept],
            // Every way to keep or lose whole changes, and what sectors may hold beside.
            1..=3 => (0..1_u32 << pending)
                .map(Self::Choice)
                .chain([Self::Torn, Self::Noise])
                .collect(),
            _ => vec![
                Self::Lost,
                Self::Kept,
                Self::ButNewest,
                Self::OnlyNewest,
                Self::OneFile,
                Self::Some,
                Self::Torn,
                Self::Noise,
            ],
        }
    }

    /// What is left of a sector; `whole` is the draw for the whole change.
    pub(super) fn sector(self, at: Place, draw: (usize, bool), rng: &mut Rng) -> Sector {
        let (file, whole) = draw;
        let newest = at.place + 1 == at.of;
        let kept = match self {
            Self::Lost => false,
            Self::Kept => true,
            Self::ButNewest => !newest,
            Self::OnlyNewest => newest,
            Self::OneFile => at.file == file,
            Self::Some => whole,
            Self::Choice(bits) => bits >> at.number & 1 == 1,
            Self::Torn => rng.bool(),
            Self::Noise => match rng.u8(..3) {
                0 => return Sector::Noise(rng.u8(..)),
                draw => draw == 1,
            },
        };
        if kept { Sector::Kept } else { Sector::Lost }
    }

    /// Whether a change of names came through; what is ordered comes through up to a place.
    pub(super) fn name(self, place: usize, of: usize, upto: Option<usize>, rng: &mut Rng) -> bool {
        match self {
            Self::Lost => false,
            Self::Kept => true,
            _ => upto.map_or_else(
                || match self {
                    Self::ButNewest => place + 1 < of,
                    Self::OnlyNewest => place + 1 == of,
                    _ => rng.bool(),
                },
                |upto| place < upto,
            ),
        }
    }
}
