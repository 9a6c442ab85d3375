//! The same work as careless set-ups would have done it. A run that finds no loss in these finds
//! nothing at all, and is void.

use crate::system::{FileId, Op};
use std::path::Path;

/// A set-up that loses acts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Control {
    /// `synchronous = NORMAL`: the log is synced before a checkpoint and when it begins anew, not
    /// at each commit.
    Normal,
    /// `synchronous = OFF`: nothing is synced.
    Off,
    /// Folders are not synced.
    NoFolders,
}

impl Control {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Normal, Self::Off, Self::NoFolders];

    /// What such a set-up would have done.
    #[must_use]
    pub fn of(self, ops: &[Op]) -> Vec<Op> {
        let (log, database) = (file(ops, "db-wal"), file(ops, ".db"));
        let places = ops.iter().enumerate();
        places
            .filter(|(place, op)| match (self, op) {
                (Self::Off, Op::Sync { .. } | Op::SyncFolder { .. })
                | (Self::NoFolders, Op::SyncFolder { .. }) => false,
                (Self::Normal, Op::Sync { file }) if log.contains(file) => {
                    begins_log(ops, *place) || before_checkpoint(ops, *place, &database)
                }
                _ => true,
            })
            .map(|(_, op)| op.clone())
            .collect()
    }
}

/// The files that had a name with such an ending.
fn file(ops: &[Op], ending: &str) -> Vec<FileId> {
    let named = ops.iter().filter_map(|op| match op {
        Op::Create { path, file } if ends(path, ending) => Some(*file),
        _ => None,
    });
    named.collect()
}

fn ends(path: &Path, ending: &str) -> bool {
    path.to_string_lossy().ends_with(ending)
}

/// Whether a sync is that of a log's own head.
fn begins_log(ops: &[Op], place: usize) -> bool {
    let before = place.checked_sub(1).and_then(|before| ops.get(before));
    matches!(before, Some(Op::Write { at: 0, bytes, .. }) if bytes.len() == 32)
}

/// Whether the next write after a sync goes to the database itself.
fn before_checkpoint(ops: &[Op], place: usize, database: &[FileId]) -> bool {
    let next = ops[place + 1..].iter().find_map(|op| match op {
        Op::Write { file, .. } | Op::Length { file, .. } | Op::Sync { file } => Some(*file),
        _ => None,
    });
    next.is_some_and(|file| database.contains(&file))
}
