//! What is done to a store besides acts: a backup, a restore, a recovery, the opening of an older
//! store. Each is recorded on top of what is lasting, and cut short at every boundary.

use crate::faults;
use crate::states::{Run, State, Tally, Wrong, fast, judge_all};
use crate::system::{Fault, Op, Plan, mark, unwatch, watch};
use crate::words::is_whole;
use crate::work::{STORE, Work, open};
use baywalk_logbook::backup::{self, Go, check};
use baywalk_logbook::ledger::Digest;
use baywalk_logbook::recover::{self, recover};
use baywalk_logbook::store::{DATABASE, PHOTOS};
use baywalk_logbook::{Logbook, SystemClock};
use baywalk_screens::{self as screens, Core};
use baywalk_words::Words;
use std::collections::BTreeSet;
use std::fs::OpenOptions;
use std::os::unix::fs::FileExt;
use std::path::{Path, PathBuf};

/// The backup in the watched folder.
const BACKUP: &str = "backup.zip";

/// What is done.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Deed {
    /// A backup is written, read back and noted.
    BackUp,
    /// A backup takes the place of another logbook.
    Restore,
    /// A damaged logbook is recovered, what is missing filled up from a backup.
    Recover,
    /// A store of the first version is opened.
    Migrate,
}

/// A deed that was done while it was watched.
#[derive(Debug)]
pub struct Deeded {
    deed: Deed,
    ops: Vec<Op>,
    settled: usize,
    /// Where the chain may end before, and where it does after.
    before: BTreeSet<[u8; 32]>,
    after: [u8; 32],
    photos: usize,
}

impl Deed {
    /// Every deed.
    pub const ALL: [Self; 4] = [Self::BackUp, Self::Restore, Self::Recover, Self::Migrate];

    /// Does it in a folder of its own while all calls are watched.
    #[must_use]
    pub fn record(self) -> Deeded {
        let root = tempfile::tempdir().unwrap();
        let before = self.prepare(root.path());
        let settled = watch(root.path(), true, None);
        mark(0);
        self.perform(root.path());
        mark(1);
        let ops = unwatch().ops;
        let logbook = open(&root.path().join(STORE)).unwrap();
        Deeded {
            deed: self,
            ops,
            settled,
            before,
            after: *logbook.digest().digest.bytes(),
            photos: photos(&root.path().join(STORE)),
        }
    }

    /// Makes what is there before; gives where its chains end.
    fn prepare(self, root: &Path) -> BTreeSet<[u8; 32]> {
        let store = root.join(STORE);
        match self {
            Self::Migrate => {
                let old = Path::new(env!("CARGO_MANIFEST_DIR"))
                    .join("../../core/logbook/samples/stores/1");
                copy(&old, &store);
                // Its chain ends where a copy of it that was opened does: migration adds no entry.
                let aside = tempfile::tempdir().unwrap();
                copy(&old, &aside.path().join(STORE));
                BTreeSet::from([ends(&open(&aside.path().join(STORE)).unwrap())])
            }
            Self::BackUp => BTreeSet::from([made(&store, 60)]),
            Self::Restore => {
                let backed = made(&root.join("other"), 40);
                back_up(&root.join("other"), &root.join(BACKUP));
                std::fs::remove_dir_all(root.join("other")).unwrap();
                BTreeSet::from([made(&store, 60), backed])
            }
            Self::Recover => {
                let whole = made(&store, 60);
                back_up(&store, &root.join(BACKUP));
                spoil(&store.join(DATABASE));
                BTreeSet::from([whole])
            }
        }
    }

    fn perform(self, root: &Path) {
        self.attempt(root).unwrap();
    }

    /// Does it; gives what a person is told where it can't be done.
    fn attempt(self, root: &Path) -> Result<(), String> {
        let (store, backup) = (root.join(STORE), root.join(BACKUP));
        let words = Words::for_locales(&["en"]);
        let on = &mut |_: backup::Progress| Go::On;
        let done = match self {
            Self::BackUp => Core::open(&store, words).and_then(|mut core| {
                screens::backup::write(&mut core, &backup, None, on).map(|_| ())
            }),
            Self::Migrate => Core::open(&store, words).map(|_| ()),
            Self::Restore => {
                let wish = backup::Wish {
                    folder: &store,
                    from: &backup,
                    passphrase: None,
                    replace: true,
                };
                screens::restore::restore(&words, &wish, on).map(|_| ())
            }
            Self::Recover => {
                let wish = recovery(&store, &backup);
                screens::recover::recover(&words, &wish, on).map(|_| ())
            }
        };
        done.map_err(|problem| problem.sentence)
    }

    /// Fails calls of the system in turn while it is done, each so-manieth of them, in each way.
    /// What was there must stand, or what was asked for; and it can be done once the fault is gone.
    #[must_use]
    pub fn every_fault(self, each: usize) -> faults::Tally {
        let done = self.record();
        let before = tempfile::tempdir_in(fast()).unwrap();
        let _ends = self.prepare(before.path());
        let calls = {
            let root = tempfile::tempdir_in(fast()).unwrap();
            copy(before.path(), root.path());
            let _settled = watch(root.path(), false, None);
            self.perform(root.path());
            unwatch().counts.calls
        };
        let mut tally = faults::Tally {
            places: calls,
            ..faults::Tally::default()
        };
        for at in (1..=calls).step_by(each) {
            for fault in Fault::ALL {
                let root = tempfile::tempdir_in(fast()).unwrap();
                copy(before.path(), root.path());
                let run = faults::caught(|| done.under_fault(root.path(), Plan { at, fault }));
                let _seen = unwatch();
                tally.add(run, &format!("{self:?}, call {at}, {fault:?}"));
            }
        }
        tally
    }
}

impl Deeded {
    /// Opens every state that a power cut during the deed may leave.
    #[must_use]
    pub fn every_state(&self, run: Run) -> Tally {
        let from = self.settled;
        judge_all(&|state| self.judge(state), &self.ops, Run { from, ..run })
    }

    fn under_fault(&self, root: &Path, plan: Plan) -> Result<u64, faults::Wrong> {
        let _settled = watch(root, false, Some(plan));
        let first = self.deed.attempt(root);
        let _seen = unwatch();
        let state = |acknowledged| State {
            folder: root,
            acknowledged,
            goes_on: false,
        };
        let lost = |wrong: Wrong| faults::Wrong::Lost(format!("{wrong:?}"));
        let Err(said) = first else {
            self.judge(state(1)).map_err(lost)?;
            return Ok(0);
        };
        if !is_whole(&said) {
            return Err(faults::Wrong::Stuck(format!("no sentence: {said}")));
        }
        self.judge(state(0)).map_err(lost)?;
        if self.deed == Deed::BackUp {
            let _whole_already = std::fs::remove_file(root.join(BACKUP));
        }
        // A recovery may have come to its end: then there is nothing more to recover.
        if self.deed != Deed::Recover {
            self.deed.attempt(root).map_err(faults::Wrong::Stuck)?;
        }
        self.judge(state(usize::from(self.deed != Deed::Recover)))
            .map_err(lost)?;
        Ok(1)
    }

    fn judge(&self, state: State<'_>) -> Result<(), Wrong> {
        let store = state.folder.join(STORE);
        let backup = state.folder.join(BACKUP);
        let corrupt = |said: String| Wrong::Corrupt(format!("{:?}: {said}", self.deed));
        // What stands under the backup's name is a whole backup, never a part of one.
        if backup.exists() {
            let checked = check(&backup, None, &mut |_| Go::On);
            checked.map_err(|fault| corrupt(fault.to_string()))?;
        } else if self.deed != Deed::Migrate
            && (state.acknowledged > 0 || self.deed != Deed::BackUp)
        {
            return Err(Wrong::Lost(0));
        }
        let mut logbook = self.opened(&store, &backup, state).map_err(corrupt)?;
        let end = ends(&logbook);
        let known = self.before.contains(&end) || end == self.after;
        // A recovery or restore tells of itself, by a clock of its own: those entries are others.
        let tells = matches!(self.deed, Deed::Recover | Deed::Restore);
        let told = tells && runs_through(&logbook, &self.before);
        if !known && !told {
            let found = logbook.digest().digest;
            return Err(corrupt(format!("the chain ends with {found}")));
        }
        if state.acknowledged > 0 && tells && self.before.contains(&end) {
            return Err(Wrong::Lost(0));
        }
        sound(&mut logbook, state.goes_on).map_err(corrupt)?;
        let there = photos(&store);
        if there < self.photos.min(1) || (state.acknowledged > 0 && there < self.photos) {
            return Err(Wrong::Photo(format!("{there} of {}", self.photos)));
        }
        Ok(())
    }
}

impl Deeded {
    /// The logbook, recovered where the recovery was cut short: it stays damaged until it is done.
    fn opened(&self, store: &Path, backup: &Path, state: State<'_>) -> Result<Logbook, String> {
        let opened = open(store).map_err(|fault| fault.to_string());
        let sound = opened.and_then(|mut logbook| sound(&mut logbook, false).map(|()| logbook));
        if sound.is_ok() || self.deed != Deed::Recover || state.acknowledged > 0 {
            return sound;
        }
        let clock = Box::new(SystemClock::new());
        let again = recover(&recovery(store, backup), clock, &mut |_| Go::On);
        again
            .map(|again| again.logbook)
            .map_err(|fault| fault.to_string())
    }
}

/// Whether file, chain and tables are sound; now and then tables are computed anew and compared.
fn sound(logbook: &mut Logbook, goes_on: bool) -> Result<(), String> {
    let verified = logbook.verify().map_err(|fault| fault.to_string())?;
    if let Some(misfit) = verified.broken {
        return Err(misfit.to_string());
    }
    if goes_on {
        let kept = logbook.fingerprint().map_err(|fault| fault.to_string())?;
        logbook.rebuild().map_err(|fault| fault.to_string())?;
        let anew = logbook.fingerprint().map_err(|fault| fault.to_string())?;
        if kept != anew {
            return Err("the tables computed anew are others".to_owned());
        }
    }
    Ok(())
}

/// A store with so many acts and a photo; gives where its chain ends.
fn made(store: &Path, acts: usize) -> [u8; 32] {
    let work = Work::opening(acts);
    let camera = crate::work::Camera::new();
    let mut logbook = open(store).unwrap();
    for (call, at, photo) in &work.acts {
        if let Some(bytes) = photo {
            let _ = camera.hand_over(&mut logbook, bytes).unwrap();
        }
        logbook.call(call, at).unwrap();
    }
    ends(&logbook)
}

fn ends(logbook: &Logbook) -> [u8; 32] {
    *logbook.digest().digest.bytes()
}

/// Whether the chain ran through one of these ends.
fn runs_through(logbook: &Logbook, ends: &BTreeSet<[u8; 32]>) -> bool {
    let mut lines = Vec::new();
    let _ = logbook.export(&mut lines).unwrap();
    let text = String::from_utf8(lines).unwrap();
    let hex = |end: &[u8; 32]| Digest::from_bytes(end).unwrap().to_string();
    ends.iter()
        .any(|end| text.contains(&format!("\"{}\"", hex(end))))
}

fn back_up(store: &Path, to: &Path) {
    let mut logbook = open(store).unwrap();
    let job = logbook.backup().unwrap();
    let made = job.write(to, None, &mut |_| Go::On).unwrap();
    logbook.note_backup(made.head).unwrap();
}

const fn recovery<'a>(store: &'a Path, backup: &'a Path) -> recover::Wish<'a> {
    recover::Wish {
        folder: store,
        backup: Some(backup),
        passphrase: None,
    }
}

/// Writes noise over the middle of a database.
fn spoil(database: &Path) {
    let file = OpenOptions::new().write(true).open(database).unwrap();
    let middle = file.metadata().unwrap().len() / 8192 * 4096;
    file.write_all_at(&[0xA5; 8192], middle).unwrap();
}

fn photos(store: &Path) -> usize {
    let entries = std::fs::read_dir(store.join(PHOTOS))
        .into_iter()
        .flatten()
        .flatten();
    entries
        .filter(|entry| entry.path().extension().is_some_and(|end| end == "jpg"))
        .count()
}

fn copy(from: &Path, to: &Path) {
    std::fs::create_dir_all(to).unwrap();
    let entries: Vec<PathBuf> = std::fs::read_dir(from)
        .unwrap()
        .flatten()
        .map(|entry| entry.path())
        .collect();
    for path in entries {
        let under = to.join(path.file_name().unwrap());
        if path.is_dir() {
            copy(&path, &under);
        } else {
            std::fs::copy(&path, &under).unwrap();
        }
    }
}
