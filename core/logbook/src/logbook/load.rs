//! Bringing rigs into memory.

use super::Logbook;
use crate::ledger;
use crate::projection::{
    Facts, OpenWalk, Progress, RigFold, VERSION, WalkBegun, book_at, facts, glance, progress,
    rebuild,
};
use crate::store::{Damage, Store, StoreFault};
use baywalk_domain::ids::RigId;
use std::sync::Arc;

/// Sees that the computed tables stand where the ledger stands, and rebuilds them where not.
pub(super) fn catch_up(store: &mut Store) -> Result<Progress, StoreFault> {
    let head = ledger::head(store.conn())?;
    let found = progress(store.conn())?;
    if let Some(found) = &found
        && found.head.seq > head.seq
    {
        store.leave_as_it_is()?;
        return Err(StoreFault::Damaged(Damage::TailGone {
            found: head.seq,
            expected: found.head.seq,
        }));
    }
    match found {
        Some(found) if found.version == VERSION && found.head == head => Ok(found),
        _ => rebuild(store.conn_mut()),
    }
}

impl Logbook {
    /// A rig as it is now.
    pub(super) fn fold(&self, rig: RigId) -> Result<Arc<RigFold>, StoreFault> {
        if let Some(fold) = self.folds.borrow().get(&rig) {
            return Ok(Arc::clone(fold));
        }
        let fold = Arc::new(self.load(rig)?);
        self.folds.borrow_mut().insert(rig, Arc::clone(&fold));
        Ok(fold)
    }

    /// A rig as its entries tell it, read from the store.
    fn load(&self, rig: RigId) -> Result<RigFold, StoreFault> {
        let conn = self.store.conn();
        let open = glance(conn, rig)?.and_then(|glance| glance.walk);
        let Some(WalkBegun { id: walk, begun }) = open else {
            let book = book_at(conn, rig, u64::MAX)?;
            let book = book.map(Arc::new);
            return Ok(RigFold { book, walk: None });
        };
        let entries = ledger::of_walk(conn, walk, (begun, None))?;
        let folded =
            book_at(conn, rig, begun)?.and_then(|book| OpenWalk::fold(Arc::new(book), entries));
        let (walk, book) = folded.ok_or_else(|| {
            StoreFault::Damaged(Damage::Computed(format!("walk {walk} has no start")))
        })?;
        Ok(RigFold {
            book: Some(book),
            walk: Some(walk),
        })
    }

    /// What earlier walks of a rig tell.
    pub(super) fn facts(&self, rig: RigId) -> Result<Arc<Facts>, StoreFault> {
        if let Some(facts) = self.facts.borrow().get(&rig) {
            return Ok(Arc::clone(facts));
        }
        let fold = self.fold(rig)?;
        let facts = Arc::new(facts(self.store.conn(), rig, &fold)?);
        self.facts.borrow_mut().insert(rig, Arc::clone(&facts));
        Ok(facts)
    }

    /// Forgets all that is in memory, and reads how far the tables have come.
    pub(super) fn forget(&mut self) -> Result<(), StoreFault> {
        self.folds.get_mut().clear();
        self.facts.get_mut().clear();
        self.progress = catch_up(&mut self.store)?;
        Ok(())
    }

    /// Opens the database anew where an error left it in doubt: after a failed sync nothing is
    /// tried again on the same connection.
    pub(super) fn trust(&mut self) -> Result<(), StoreFault> {
        if self.doubt {
            self.store.reopen()?;
            self.forget()?;
            self.doubt = false;
        }
        Ok(())
    }
}
