//! The order in which sources are taken away and brought back. Common practice, no source.

use crate::rig::{Source, SourceKind};

/// Sources in the order in which they are taken away: loads and AC first, solar open before the
/// battery leaves it, batteries last.
#[must_use]
pub fn away_order<'a>(sources: impl Iterator<Item = &'a Source>) -> Vec<&'a Source> {
    sorted(sources, |kind| match kind {
        SourceKind::Shore => 0,
        SourceKind::Generator => 1,
        SourceKind::Inverter => 2,
        SourceKind::Portable => 3,
        SourceKind::TowLink => 4,
        SourceKind::Solar => 5,
        SourceKind::EngineLink => 6,
        SourceKind::ChassisBattery => 7,
        SourceKind::HouseBattery => 8,
    })
}

/// Sources in the order in which they come back: DC first, a battery before its solar, then shore.
#[must_use]
pub fn restore_order<'a>(sources: impl Iterator<Item = &'a Source>) -> Vec<&'a Source> {
    sorted(sources, |kind| match kind {
        SourceKind::HouseBattery => 0,
        SourceKind::ChassisBattery => 1,
        SourceKind::EngineLink => 2,
        SourceKind::Solar => 3,
        SourceKind::TowLink => 4,
        SourceKind::Shore => 5,
        SourceKind::Inverter => 6,
        SourceKind::Generator => 7,
        SourceKind::Portable => 8,
    })
}

fn sorted<'a>(
    sources: impl Iterator<Item = &'a Source>,
    rank: impl Fn(SourceKind) -> u8,
) -> Vec<&'a Source> {
    let mut list: Vec<&Source> = sources.collect();
    list.sort_by(|a, b| {
        let by_rank = rank(a.kind).cmp(&rank(b.kind));
        by_rank.then_with(|| a.code.cmp(&b.code))
    });
    list
}
