//! What the calling thread watches.

use super::fault::{Asks, Verdict};
use super::{FileId, Op, Plan};
use std::cell::RefCell;
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// How often each kind of call was made.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Counts {
    /// Calls of any kind.
    pub calls: u64,
    /// Reads.
    pub reads: u64,
    /// Bytes read.
    pub bytes_read: u64,
    /// Writes.
    pub writes: u64,
    /// Syncs of files.
    pub syncs: u64,
    /// Syncs of folders.
    pub folder_syncs: u64,
}

/// What was seen.
#[derive(Debug, Default)]
pub struct Seen {
    /// What was done, in order; empty unless it was to be kept.
    pub ops: Vec<Op>,
    /// How often.
    pub counts: Counts,
    /// Whether a call was failed.
    pub failed: bool,
}

#[derive(Debug)]
pub(super) struct Watch {
    root: PathBuf,
    keeps: bool,
    names: BTreeMap<PathBuf, FileId>,
    files: usize,
    open: BTreeMap<i32, Opened>,
    plan: Option<Plan>,
    cut: bool,
    seen: Seen,
}

#[derive(Debug, Clone)]
enum Opened {
    File(FileId),
    Folder(PathBuf),
}

thread_local! {
    static WATCH: RefCell<Option<Watch>> = const { RefCell::new(None) };
}

/// Watches a folder from this thread. What is there already is taken as lasting: where changes are
/// kept, they begin with it; gives how many changes that are.
pub fn watch(root: &Path, keeps: bool, plan: Option<Plan>) -> usize {
    let mut watch = Watch {
        root: root.to_owned(),
        keeps,
        names: BTreeMap::new(),
        files: 0,
        open: BTreeMap::new(),
        plan,
        cut: false,
        seen: Seen::default(),
    };
    if keeps {
        watch.settled(Path::new(""));
    }
    let settled = watch.seen.ops.len();
    WATCH.with_borrow_mut(|slot| *slot = Some(watch));
    settled
}

/// Stops watching; gives what was seen since.
pub fn unwatch() -> Seen {
    WATCH
        .with_borrow_mut(Option::take)
        .map(|watch| watch.seen)
        .unwrap_or_default()
}

/// Notes that so many acts are acknowledged.
pub fn mark(acknowledged: usize) {
    with(|watch| watch.op(Op::Mark(acknowledged)));
}

/// Does something with the watch of this thread, where it has one.
pub(super) fn with<T>(act: impl FnOnce(&mut Watch) -> T) -> Option<T> {
    let seen = WATCH.try_with(|slot| {
        let mut slot = slot.try_borrow_mut().ok()?;
        slot.as_mut().map(act)
    });
    seen.ok().flatten()
}

impl Watch {
    /// Takes what is in a folder as lasting.
    fn settled(&mut self, below: &Path) {
        for entry in std::fs::read_dir(self.root.join(below))
            .into_iter()
            .flatten()
            .flatten()
        {
            let path = below.join(entry.file_name());
            if entry.path().is_dir() {
                self.op(Op::Folder { path: path.clone() });
                self.settled(&path);
                continue;
            }
            self.files += 1;
            let (file, at) = (FileId(self.files - 1), 0);
            self.names.insert(path.clone(), file);
            self.op(Op::Create { path, file });
            let bytes: Arc<[u8]> = std::fs::read(entry.path()).unwrap_or_default().into();
            self.op(Op::Write { file, at, bytes });
            self.op(Op::Sync { file });
        }
        let path = below.to_owned();
        self.op(Op::SyncFolder { path });
    }

    /// The name below the root; `None` where a path lies elsewhere.
    pub(super) fn below(&self, path: &Path) -> Option<PathBuf> {
        path.strip_prefix(&self.root).ok().map(Path::to_owned)
    }

    pub(super) fn has(&self, fd: i32) -> bool {
        self.open.contains_key(&fd)
    }

    /// Counts a call, and says what becomes of it.
    pub(super) fn ask(&mut self, asks: Asks) -> Verdict {
        self.seen.counts.calls += 1;
        let verdict = self.plan.map_or(Verdict::Go, |plan| {
            plan.verdict(self.seen.counts.calls, asks, &mut self.cut)
        });
        self.seen.failed |= verdict != Verdict::Go;
        verdict
    }

    fn op(&mut self, op: Op) {
        if self.keeps {
            self.seen.ops.push(op);
        }
    }

    pub(super) fn opened(&mut self, fd: i32, path: PathBuf, (folder, cut): (bool, bool)) {
        if folder {
            self.open.insert(fd, Opened::Folder(path));
            return;
        }
        let known = self.names.get(&path).copied();
        let file = known.unwrap_or_else(|| {
            self.files += 1;
            let file = FileId(self.files - 1);
            self.names.insert(path.clone(), file);
            self.op(Op::Create { path, file });
            file
        });
        if known.is_some() && cut {
            self.op(Op::Length { file, length: 0 });
        }
        self.open.insert(fd, Opened::File(file));
    }

    pub(super) fn closed(&mut self, fd: i32) {
        self.open.remove(&fd);
    }

    pub(super) fn read(&mut self, bytes: usize) {
        self.seen.counts.reads += 1;
        self.seen.counts.bytes_read += u64::try_from(bytes).unwrap_or(0);
    }

    pub(super) fn wrote(&mut self, fd: i32, at: usize, bytes: &[u8]) {
        self.seen.counts.writes += 1;
        if let Some(Opened::File(file)) = self.open.get(&fd).cloned()
            && self.keeps
        {
            let bytes: Arc<[u8]> = bytes.into();
            self.op(Op::Write { file, at, bytes });
        }
    }

    pub(super) fn sized(&mut self, fd: i32, length: usize) {
        if let Some(Opened::File(file)) = self.open.get(&fd).cloned() {
            self.op(Op::Length { file, length });
        }
    }

    pub(super) fn synced(&mut self, fd: i32) {
        match self.open.get(&fd).cloned() {
            Some(Opened::File(file)) => {
                self.seen.counts.syncs += 1;
                self.op(Op::Sync { file });
            }
            Some(Opened::Folder(path)) => {
                self.seen.counts.folder_syncs += 1;
                self.op(Op::SyncFolder { path });
            }
            None => {}
        }
    }

    pub(super) fn unlinked(&mut self, path: PathBuf) {
        self.names.remove(&path);
        self.op(Op::Unlink { path });
    }

    pub(super) fn renamed(&mut self, from: PathBuf, to: PathBuf) {
        let moved: Vec<(PathBuf, FileId)> = self
            .names
            .iter()
            .filter(|(name, _)| name.starts_with(&from))
            .map(|(name, file)| (name.clone(), *file))
            .collect();
        for (name, file) in moved {
            self.names.remove(&name);
            let rest = name.strip_prefix(&from).unwrap_or(Path::new(""));
            let new = if rest.as_os_str().is_empty() {
                to.clone()
            } else {
                to.join(rest)
            };
            self.names.insert(new, file);
        }
        self.op(Op::Rename { from, to });
    }

    pub(super) fn made(&mut self, path: PathBuf) {
        self.op(Op::Folder { path });
    }
}
