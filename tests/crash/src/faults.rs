//! One call to the system failed, at every place in turn, in every way.

use crate::system::{Fault, Plan, unwatch, watch};
use crate::words::is_sentence;
use crate::work::{Camera, Done, STORE, Work, open, stands};
use baywalk_logbook::store::StoreFault;
use baywalk_logbook::{ActFault, Logbook};
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::Path;

/// What the runs came to.
#[derive(Debug, Clone, Default)]
pub struct Tally {
    /// Calls, or allocations, of the work when none is failed.
    pub places: u64,
    /// Runs.
    pub runs: u64,
    /// Errors that came out of the logbook.
    pub errors: u64,
    /// Runs that panicked.
    pub panics: u64,
    /// Runs that lost an acknowledged act, or kept one otherwise than it was.
    pub lost: u64,
    /// Runs after which the logbook did not work again.
    pub stuck: u64,
    /// What was wrong with the first of them.
    pub first: Option<String>,
}

impl Tally {
    /// Whether nothing was lost and all went on.
    #[must_use]
    pub const fn is_sound(&self) -> bool {
        self.panics == 0 && self.lost == 0 && self.stuck == 0
    }

    /// Counts one run.
    pub fn add(&mut self, run: Result<Result<u64, Wrong>, String>, at: &str) {
        self.runs += 1;
        let said = match run {
            Ok(Ok(errors)) => {
                self.errors += errors;
                return;
            }
            Ok(Err(Wrong::Lost(said))) => {
                self.lost += 1;
                said
            }
            Ok(Err(Wrong::Stuck(said))) => {
                self.stuck += 1;
                said
            }
            Err(said) => {
                self.panics += 1;
                said
            }
        };
        self.first.get_or_insert_with(|| format!("{at}: {said}"));
    }
}

/// What may not be after a fault.
#[derive(Debug)]
pub enum Wrong {
    /// An acknowledged act is gone or otherwise.
    Lost(String),
    /// It does not work again though the fault is gone.
    Stuck(String),
}

/// How often the work calls the system.
#[must_use]
pub fn calls_of(work: &Work, done: &Done) -> u64 {
    let root = tempfile::tempdir().unwrap();
    watch(root.path(), false, None);
    let errors = under_fault(work, done, root.path(), || {});
    assert!(matches!(errors, Ok(0)), "{errors:?}");
    unwatch().counts.calls
}

/// Fails each call in turn, in each way.
#[must_use]
pub fn every_call(work: &Work, done: &Done) -> Tally {
    let calls = calls_of(work, done);
    let workers = std::thread::available_parallelism().map_or(1, |n| n.get() as u64);
    let share = |worker: u64| {
        let mut tally = Tally::default();
        for at in (1..=calls).filter(|at| at % workers == worker) {
            for fault in Fault::ALL {
                let root = tempfile::tempdir_in(crate::states::fast()).unwrap();
                watch(root.path(), false, Some(Plan { at, fault }));
                let run = caught(|| {
                    under_fault(work, done, root.path(), || {
                        unwatch();
                    })
                });
                unwatch();
                tally.add(run, &format!("call {at}, {fault:?}"));
            }
        }
        tally
    };
    std::thread::scope(|scope| {
        let share = &share;
        let threads: Vec<_> = (0..workers)
            .map(|n| scope.spawn(move || share(n)))
            .collect();
        let mut all = Tally {
            places: calls,
            ..Tally::default()
        };
        for tally in threads.into_iter().map(|thread| thread.join().unwrap()) {
            all.runs += tally.runs;
            all.errors += tally.errors;
            all.panics += tally.panics;
            all.lost += tally.lost;
            all.stuck += tally.stuck;
            all.first = all.first.or(tally.first);
        }
        all
    })
}

/// Runs something and catches its panic.
///
/// # Errors
/// What the panic said.
pub fn caught<T>(run: impl FnOnce() -> T) -> Result<T, String> {
    catch_unwind(AssertUnwindSafe(run)).map_err(|panic| {
        let text = panic.downcast_ref::<String>().cloned();
        text.or_else(|| panic.downcast_ref::<&str>().map(|text| (*text).to_owned()))
            .unwrap_or_default()
    })
}

/// Does the work while a fault may come, going on after each error; then the fault goes away, and
/// all that was acknowledged must be there and the rest must go.
///
/// # Errors
/// [`Wrong`] with what may not be.
pub fn under_fault(
    work: &Work,
    done: &Done,
    root: &Path,
    gone: impl FnOnce(),
) -> Result<u64, Wrong> {
    let (store, camera) = (root.join(STORE), Camera::new());
    let (mut errors, mut acknowledged) = (0, 0);
    let mut logbook = None;
    for _ in 0..4 {
        match open(&store) {
            Ok(opened) => {
                logbook = Some(opened);
                break;
            }
            Err(fault) => errors += told(&fault)?,
        }
    }
    if let Some(logbook) = &mut logbook {
        for act in &work.acts {
            match one(logbook, &camera, act) {
                Ok(()) => acknowledged += 1,
                Err(fault) => {
                    errors += told(&fault)?;
                    // A person taps again; when it fails again, the phone is put away.
                    match one(logbook, &camera, act) {
                        Ok(()) => acknowledged += 1,
                        Err(fault) => {
                            errors += told(&fault)?;
                            break;
                        }
                    }
                }
            }
        }
    }
    gone();
    if let Some(logbook) = &mut logbook {
        goes_on(logbook, (work, done), &camera, acknowledged)?;
    }
    drop(logbook);
    let mut anew = open(&store).map_err(|fault| Wrong::Stuck(format!("not opened: {fault}")))?;
    goes_on(&mut anew, (work, done), &camera, acknowledged)?;
    Ok(errors)
}

type ActOf = (
    baywalk_domain::walk::Call,
    baywalk_domain::moment::Moment,
    Option<Vec<u8>>,
);

fn one(logbook: &mut Logbook, camera: &Camera, act: &ActOf) -> Result<(), StoreFault> {
    let (call, at, photo) = act;
    if let Some(bytes) = photo {
        camera.hand_over(logbook, bytes)?;
    }
    match logbook.call(call, at) {
        Ok(_) => Ok(()),
        Err(ActFault::Storage(fault)) => Err(fault),
        Err(fault) => panic!("{fault}"),
    }
}

/// Sees that an error is a whole sentence in both languages.
fn told(fault: &StoreFault) -> Result<u64, Wrong> {
    match is_sentence(fault) {
        Ok(()) => Ok(1),
        Err(said) => Err(Wrong::Stuck(format!("no sentence: {said}"))),
    }
}

/// All that was acknowledged is there, the rest goes, and all of it is as it should be.
fn goes_on(
    logbook: &mut Logbook,
    (work, done): (&Work, &Done),
    camera: &Camera,
    acknowledged: usize,
) -> Result<(), Wrong> {
    for act in &work.acts {
        // What is left in doubt is told at the next act, and opened anew at the one after it.
        one(logbook, camera, act)
            .or_else(|_| one(logbook, camera, act))
            .map_err(|fault| Wrong::Stuck(fault.to_string()))?;
    }
    let verified = logbook.verify();
    let verified = verified.map_err(|fault| Wrong::Lost(fault.to_string()))?;
    if let Some(misfit) = verified.broken {
        return Err(Wrong::Lost(misfit.to_string()));
    }
    let entries = usize::try_from(verified.entries).unwrap();
    if entries < acknowledged || Some(&stands(logbook)) != done.stands.last() {
        return Err(Wrong::Lost(format!("{entries} entries stand otherwise")));
    }
    Ok(())
}
