//! A disk that follows what is done, and what it holds after a power cut.

use super::file::{Change, File};
use super::names::{Names, Order, Turn};
use super::outcome::{Outcome, Place};
use crate::system::{FileId, Op};
use fastrand::Rng;
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

/// A disk.
#[derive(Debug)]
pub struct Disk {
    order: Order,
    files: BTreeMap<FileId, File>,
    names: Names,
}

/// What is left on a disk.
#[derive(Debug, Default, PartialEq, Eq, Hash)]
pub struct Left {
    /// Its folders.
    pub folders: Vec<PathBuf>,
    /// Its files.
    pub files: Vec<(PathBuf, Vec<u8>)>,
}

impl Disk {
    /// An empty disk.
    #[must_use]
    pub fn new(order: Order) -> Self {
        Self {
            order,
            files: BTreeMap::new(),
            names: Names::default(),
        }
    }

    /// Takes what was done next; gives how many acts are acknowledged, where it says so.
    pub fn take(&mut self, op: &Op) -> Option<usize> {
        match op {
            Op::Create { path, file } => {
                let (path, file) = (path.clone(), *file);
                self.files.insert(file, File::default());
                self.names.pending.push(Turn::Link { path, file });
            }
            Op::Write { file, at, bytes } => {
                let (at, bytes) = (*at, bytes.clone());
                self.change(*file, Change::Write { at, bytes });
            }
            Op::Length { file, length } => self.change(*file, Change::Length(*length)),
            Op::Sync { file } => {
                if let Some(file) = self.files.get_mut(file) {
                    file.sync();
                }
                if self.order == Order::Ordered {
                    self.names.sync(None);
                }
            }
            Op::SyncFolder { path } => {
                let all = self.order == Order::Ordered;
                self.names.sync((!all).then_some(path.as_path()));
            }
            Op::Unlink { path } => self.names.pending.push(Turn::Unlink { path: path.clone() }),
            Op::Folder { path } => self.names.pending.push(Turn::Folder { path: path.clone() }),
            Op::Rename { from, to } => {
                let (from, to) = (from.clone(), to.clone());
                self.names.pending.push(Turn::Rename { from, to });
            }
            Op::Mark(acknowledged) => return Some(*acknowledged),
        }
        None
    }

    fn change(&mut self, file: FileId, change: Change) {
        self.files.entry(file).or_default().pending.push(change);
    }

    /// The outcomes that are tried here.
    #[must_use]
    pub fn outcomes(&self) -> Vec<Outcome> {
        let bytes: usize = self.files.values().map(|file| file.pending.len()).sum();
        let names = self.names.pending.len();
        if names > 0 {
            Outcome::of(bytes.max(4))
        } else {
            Outcome::of(bytes)
        }
    }

    /// What a power cut leaves, by one outcome.
    pub fn cut(&self, outcome: Outcome, rng: &mut Rng) -> Left {
        let of = self.names.pending.len();
        let upto = (self.order == Order::Ordered).then(|| rng.usize(..=of));
        let tree = self.names.left(|place| outcome.name(place, of, upto, rng));
        let favoured = self.favoured(rng);
        let mut left = Left {
            folders: tree.folders.iter().cloned().collect(),
            files: Vec::new(),
        };
        let mut number = 0;
        let mut bytes = BTreeMap::new();
        for (file, content) in &self.files {
            let of = content.pending.len();
            let whole: Vec<bool> = (0..of).map(|_| rng.bool()).collect();
            let place = |place| Place {
                file: file.0,
                place,
                of,
                number: number + place,
            };
            let content =
                content.left(|at, _| outcome.sector(place(at), (favoured, whole[at]), rng));
            number += of;
            bytes.insert(*file, content);
        }
        for (path, file) in tree.files {
            let parent = path.parent().unwrap_or(Path::new(""));
            let reached = parent.as_os_str().is_empty() || tree.folders.contains(parent);
            if let Some(bytes) = bytes.get(&file).filter(|_| reached) {
                left.files.push((path, bytes.clone()));
            }
        }
        left
    }

    /// A file that has something pending.
    fn favoured(&self, rng: &mut Rng) -> usize {
        let pending: Vec<usize> = self
            .files
            .iter()
            .filter(|(_, file)| !file.pending.is_empty())
            .map(|(id, _)| id.0)
            .collect();
        rng.choice(pending).unwrap_or(0)
    }
}
