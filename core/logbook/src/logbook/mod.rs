//! The logbook: what screens call. Synchronous, one writer.

mod act;
mod clock;
mod fault;
mod keep;
mod load;
mod outcome;
mod photos;
mod read;
mod rigs;
mod safe;
mod system_clock;

pub use clock::Clock;
pub use fault::{ActFault, ImportFault};
pub use outcome::Outcome;
pub use safe::SinceBackup;
pub use system_clock::SystemClock;

use crate::projection::{Facts, Progress, RigFold};
use crate::store::{Store, StoreFault};
use baywalk_domain::ids::RigId;
use baywalk_domain::moment::Moment;
use std::cell::RefCell;
use std::collections::BTreeMap;
use std::path::Path;
use std::sync::Arc;
use uuid::Uuid;

/// A store of rigs and walks, open for this process alone.
///
/// # Example
/// ```
/// use baywalk_domain::rig::{Book, BookChange};
/// use baywalk_domain::walk::Act;
/// use baywalk_logbook::{Logbook, SystemClock, rigfile};
/// # let folder = tempfile::tempdir()?;
/// # let folder = folder.path();
/// let mut logbook = Logbook::open(folder, Box::new(SystemClock::new()))?;
/// let layout = rigfile::layouts().first().ok_or("no layout")?;
/// let book = layout.book("0190f0c4-0000-7000-8000-000000000001".parse()?).map_err(|_| "unsound")?;
/// let rig = book.rig.id;
/// let outcome = logbook.act(rig, Act::Book(BookChange::Whole(Box::new(book))))?;
/// assert_eq!(outcome.seq, 1);
/// assert_eq!(logbook.rigs()?.len(), 1);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Debug)]
pub struct Logbook {
    store: Store,
    clock: Box<dyn Clock>,
    /// How far the computed tables have come; its head is the ledger's.
    progress: Progress,
    /// Whether an error left the connection in doubt, so that it is opened anew before it is used.
    doubt: bool,
    /// Rigs in memory; each equals the fold of its entries.
    folds: RefCell<BTreeMap<RigId, Arc<RigFold>>>,
    /// What earlier walks tell, in memory until an act moves it.
    facts: RefCell<BTreeMap<RigId, Arc<Facts>>>,
}

impl Logbook {
    /// Opens the store in a folder, or makes one there.
    ///
    /// # Errors
    /// [`StoreFault`] where another process holds it, where it is newer, damaged or another
    /// program's (nothing is touched then), or where it can't be read or written.
    pub fn open(folder: &Path, clock: Box<dyn Clock>) -> Result<Self, StoreFault> {
        let mut store = Store::open(folder, &clock.now())?;
        let progress = load::catch_up(&mut store)?;
        Ok(Self {
            store,
            clock,
            progress,
            doubt: false,
            folds: RefCell::default(),
            facts: RefCell::default(),
        })
    }

    /// The moment now, by the logbook's clock.
    #[must_use]
    pub fn now(&self) -> Moment {
        self.clock.now()
    }

    /// A new name, for what an act is going to add.
    #[must_use]
    pub fn new_id(&self) -> Uuid {
        self.clock.new_id()
    }
}
