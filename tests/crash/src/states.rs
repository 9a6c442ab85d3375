//! Every boundary of recorded work, every way a power cut may leave the disk there, each opened
//! through the logbook's own door.

use crate::disk::{Disk, Left, Order, Outcome};
use crate::system::Op;
use crate::work::{Done, STORE, Stands, Work, open, stands};
use baywalk_logbook::ledger::Digest;
use sha2::{Digest as _, Sha256};
use std::collections::HashSet;
use std::hash::{BuildHasher, RandomState};
use std::path::Path;

/// What the states of a run came to.
#[derive(Debug, Clone, Default)]
pub struct Tally {
    /// Boundaries: a power cut after each change of the files.
    pub boundaries: usize,
    /// States that were opened, each another one than the state before.
    pub states: usize,
    /// Those that could not be opened, or whose chain, file or tables were not sound.
    pub corrupt: usize,
    /// Those that had fewer acts than were acknowledged.
    pub lost: usize,
    /// The most acts that one of them had lost.
    pub most_lost: usize,
    /// Those with a photo entered that was not there with its hash.
    pub photos_lost: usize,
    /// Those whose tables were computed anew and compared, and that took the next act.
    pub gone_on: usize,
    /// What was wrong with the first of them.
    pub first: Option<String>,
}

impl Tally {
    /// Whether nothing was corrupt and nothing lost.
    #[must_use]
    pub const fn is_sound(&self) -> bool {
        self.corrupt == 0 && self.lost == 0 && self.photos_lost == 0
    }

    fn add(&mut self, other: Self) {
        self.boundaries += other.boundaries;
        self.states += other.states;
        self.corrupt += other.corrupt;
        self.lost += other.lost;
        self.most_lost = self.most_lost.max(other.most_lost);
        self.photos_lost += other.photos_lost;
        self.gone_on += other.gone_on;
        self.first = self.first.take().or(other.first);
    }
}

/// How a run goes about it.
#[derive(Debug, Clone, Copy)]
pub struct Run {
    /// In which order names reach the disk.
    pub order: Order,
    /// Only each so-manieth boundary is taken.
    pub each: usize,
    /// The first change that is taken; those before it are lasting.
    pub from: usize,
    /// What is drawn.
    pub seed: u64,
}

/// Opens every state of some recorded work, on all cores.
#[must_use]
pub fn every_state(work: &Work, done: &Done, ops: &[Op], run: Run) -> Tally {
    let stands = Acts { work, done };
    judge_all(&|state| stands.judge(state), ops, run)
}

/// A state that a power cut left.
#[derive(Debug, Clone, Copy)]
pub struct State<'a> {
    /// The folder that holds it.
    pub folder: &'a Path,
    /// How many acts were acknowledged.
    pub acknowledged: usize,
    /// Whether to go on from it, which takes longer.
    pub goes_on: bool,
}

/// What is wrong with a state.
#[derive(Debug)]
pub enum Wrong {
    /// It can't be opened, or is not sound.
    Corrupt(String),
    /// It has only so many of the acknowledged acts.
    Lost(usize),
    /// A photo is entered and not there.
    Photo(String),
}

/// Says whether something is wrong with a state.
pub type Judge<'a> = dyn Fn(State<'_>) -> Result<(), Wrong> + Sync + 'a;

/// Judges every state that some changes may leave, on all cores.
#[must_use]
pub fn judge_all(judge: &Judge<'_>, ops: &[Op], run: Run) -> Tally {
    let workers = std::thread::available_parallelism().map_or(1, usize::from);
    std::thread::scope(|scope| {
        let threads: Vec<_> = (0..workers)
            .map(|worker| scope.spawn(move || share(judge, ops, run, (worker, workers))))
            .collect();
        let mut tally = Tally::default();
        for thread in threads {
            tally.add(thread.join().unwrap());
        }
        tally
    })
}

/// One worker's share of the boundaries.
fn share(judge: &Judge<'_>, ops: &[Op], run: Run, part: (usize, usize)) -> Tally {
    let mut disk = Disk::new(run.order);
    let (mut tally, mut acknowledged) = (Tally::default(), 0);
    let mut seen = HashSet::new();
    let hasher = RandomState::new();
    for (place, op) in ops.iter().enumerate() {
        acknowledged = disk.take(op).unwrap_or(acknowledged);
        if place < run.from || place % run.each != 0 || place / run.each % part.1 != part.0 {
            continue;
        }
        tally.boundaries += 1;
        seen.clear();
        for (number, outcome) in disk.outcomes().into_iter().enumerate() {
            let draw = run.seed ^ (u64::try_from(place).unwrap() << 8) ^ number as u64;
            let left = disk.cut(outcome, &mut fastrand::Rng::with_seed(draw));
            if seen.insert(hasher.hash_one(&left)) {
                tally.judge(judge, (&left, acknowledged), (place, outcome));
            }
        }
    }
    tally
}

impl Tally {
    fn judge(
        &mut self,
        judge: &Judge<'_>,
        (left, acknowledged): (&Left, usize),
        at: (usize, Outcome),
    ) {
        let folder = tempfile::tempdir_in(fast()).unwrap();
        put(left, folder.path(), self.states);
        self.states += 1;
        let goes_on = self.states.is_multiple_of(32);
        self.gone_on += usize::from(goes_on);
        let state = State {
            folder: folder.path(),
            acknowledged,
            goes_on,
        };
        let said = match judge(state) {
            Ok(()) => return,
            Err(Wrong::Lost(there)) => {
                self.lost += 1;
                self.most_lost = self.most_lost.max(acknowledged - there);
                format!("{there} of {acknowledged} acts")
            }
            Err(Wrong::Photo(digest)) => {
                self.photos_lost += 1;
                format!("photo {digest} is missing")
            }
            Err(Wrong::Corrupt(said)) => {
                self.corrupt += 1;
                said
            }
        };
        let (place, outcome) = at;
        self.first
            .get_or_insert_with(|| format!("boundary {place}, {outcome:?}: {said}"));
    }
}

/// What must be true of a state of recorded acts.
struct Acts<'a> {
    work: &'a Work,
    done: &'a Done,
}

impl Acts<'_> {
    fn judge(&self, state: State<'_>) -> Result<(), Wrong> {
        let there = self
            .there(state.folder, state.goes_on)
            .map_err(Wrong::Corrupt)?;
        if there < state.acknowledged {
            return Err(Wrong::Lost(there));
        }
        match self.photo_missing(state.folder, there) {
            Some(digest) => Err(Wrong::Photo(digest.to_string())),
            None => Ok(()),
        }
    }

    /// How many acts are there, all sound; now and then the tables are computed anew and the next
    /// act is done.
    fn there(&self, folder: &Path, goes_on: bool) -> Result<usize, String> {
        let mut logbook = open(&folder.join(STORE)).map_err(|fault| fault.to_string())?;
        let verified = logbook.verify().map_err(|fault| fault.to_string())?;
        if let Some(misfit) = verified.broken {
            return Err(misfit.to_string());
        }
        let there = usize::try_from(verified.entries).unwrap();
        self.same(&stands(&logbook), there)?;
        if goes_on {
            logbook.rebuild().map_err(|fault| fault.to_string())?;
            self.same(&stands(&logbook), there)?;
            if let Some((call, at, _)) = self.work.acts.get(there) {
                logbook.call(call, at).map_err(|fault| fault.to_string())?;
                self.same(&stands(&logbook), there + 1)?;
            }
        }
        Ok(there)
    }

    fn same(&self, found: &Stands, there: usize) -> Result<(), String> {
        match self.done.stands.get(there) {
            Some(expected) if expected == found => Ok(()),
            expected => Err(format!("{there} acts stand as {found:?}, not {expected:?}")),
        }
    }

    fn photo_missing(&self, folder: &Path, there: usize) -> Option<Digest> {
        let entered = self.done.photos.iter().filter(|(after, _)| *after <= there);
        let mut digests = entered.map(|(_, digest)| *digest);
        let photos = folder.join(STORE).join(baywalk_logbook::store::PHOTOS);
        digests.find(|digest| !is_there(&photos, *digest))
    }
}

/// Whether a folder has a file named by a digest, and with it.
fn is_there(photos: &Path, digest: Digest) -> bool {
    let name = digest.to_string();
    let entries = std::fs::read_dir(photos).into_iter().flatten().flatten();
    entries
        .map(|entry| entry.path())
        .filter(|path| path.file_stem().is_some_and(|stem| *stem == *name))
        .filter_map(|path| std::fs::read(path).ok())
        .any(|bytes| <[u8; 32]>::from(Sha256::digest(&bytes)) == *digest.bytes())
}

/// Where files are made fastest.
pub(crate) fn fast() -> &'static Path {
    let memory = Path::new("/dev/shm");
    if memory.is_dir() {
        memory
    } else {
        Path::new("/tmp")
    }
}

/// Puts a state into a folder. The shared memory of the log is not on a disk: it is gone, or, now
/// and then, what stands in its place is noise.
fn put(left: &Left, folder: &Path, number: usize) {
    for path in &left.folders {
        std::fs::create_dir_all(folder.join(path)).unwrap();
    }
    for (path, bytes) in &left.files {
        if path.to_string_lossy().ends_with("-shm") {
            if number.is_multiple_of(8) {
                std::fs::write(folder.join(path), vec![0xA5; 32_768]).unwrap();
            }
            continue;
        }
        std::fs::write(folder.join(path), bytes).unwrap();
    }
}
