//! The names in folders: those that last, and changes that a power cut may undo.

use crate::system::FileId;
use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

/// In which order changes of names reach the disk.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Order {
    /// In the order they were made; a sync of any file makes all names before it last, as file
    /// systems with a journal do it.
    Ordered,
    /// In any order; only the sync of their folder makes them last.
    Any,
}

#[derive(Debug, Clone)]
pub(super) enum Turn {
    Link { path: PathBuf, file: FileId },
    Unlink { path: PathBuf },
    Rename { from: PathBuf, to: PathBuf },
    Folder { path: PathBuf },
}

#[derive(Debug, Clone, Default)]
pub(super) struct Tree {
    pub(super) files: BTreeMap<PathBuf, FileId>,
    pub(super) folders: BTreeSet<PathBuf>,
}

#[derive(Debug, Clone, Default)]
pub(super) struct Names {
    lasting: Tree,
    pub(super) pending: Vec<Turn>,
}

impl Names {
    /// Makes all names last, or those of one folder.
    pub(super) fn sync(&mut self, folder: Option<&Path>) {
        let pending = std::mem::take(&mut self.pending);
        for turn in pending {
            if folder.is_none_or(|folder| turn.is_in(folder)) {
                turn.apply(&mut self.lasting);
            } else {
                self.pending.push(turn);
            }
        }
    }

    /// The names, where `keep` says which of the pending changes came through.
    pub(super) fn left(&self, mut keep: impl FnMut(usize) -> bool) -> Tree {
        let mut tree = self.lasting.clone();
        for (place, turn) in self.pending.iter().enumerate() {
            if keep(place) {
                turn.apply(&mut tree);
            }
        }
        tree
    }
}

impl Turn {
    fn is_in(&self, folder: &Path) -> bool {
        let path = match self {
            Self::Link { path, .. } | Self::Unlink { path } | Self::Folder { path } => path,
            Self::Rename { to, .. } => to,
        };
        path.parent() == Some(folder)
    }

    fn apply(&self, tree: &mut Tree) {
        match self {
            Self::Link { path, file } => {
                tree.files.insert(path.clone(), *file);
            }
            Self::Unlink { path } => {
                tree.files.remove(path);
            }
            Self::Folder { path } => {
                tree.folders.insert(path.clone());
            }
            Self::Rename { from, to } => rename(tree, from, to),
        }
    }
}

fn rename(tree: &mut Tree, from: &Path, to: &Path) {
    let new = |name: &Path| match name.strip_prefix(from) {
        Ok(rest) if rest.as_os_str().is_empty() => to.to_owned(),
        Ok(rest) => to.join(rest),
        Err(_) => name.to_owned(),
    };
    if tree.files.contains_key(from) || tree.folders.contains(from) {
        tree.files.remove(to);
    }
    let files = std::mem::take(&mut tree.files);
    tree.files = files.into_iter().map(|(name, f)| (new(&name), f)).collect();
    let folders = std::mem::take(&mut tree.folders);
    tree.folders = folders.into_iter().map(|name| new(&name)).collect();
}
