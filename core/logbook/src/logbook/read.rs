//! What screens read.

use super::Logbook;
use crate::ledger::{self, Depth, Head, Numbered, Verified};
use crate::projection::{
    OpenWalk, PointPast, RigGlance, RigOutline, WalkHead, book_at, fingerprint, glance, glances,
    outline, point_past, rebuild, timing_acts, walk_extent, walks,
};
use crate::store::{Damage, StoreFault};
use baywalk_domain::due::{Known, OdometerNote};
use baywalk_domain::finding::Finding;
use baywalk_domain::ids::{ActId, PointId, RigId, WalkId};
use baywalk_domain::rig::Book;
use baywalk_domain::walk::{Act, WalkState};
use chrono::NaiveDate;
use std::collections::BTreeMap;
use std::sync::Arc;

type Read<T> = Result<T, StoreFault>;

/// From how many entries on a ledger is looked into in parts, and how many they are at most.
const LONG: u64 = 2_000;
const MOST_PARTS: usize = 4;

/// Readers fail with [`StoreFault`] where the store can't be read.
impl Logbook {
    /// All rigs, in the order of their names.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be read.
    pub fn rigs(&self) -> Read<Vec<RigId>> {
        let rigs = self.glances()?;
        Ok(rigs.into_iter().map(|glance| glance.rig.id).collect())
    }

    /// All rigs at a glance, in the order of their names.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be read.
    pub fn glances(&self) -> Read<Vec<RigGlance>> {
        glances(self.store.conn())
    }

    /// A rig at a glance.
    ///
    /// # Errors
    /// [`StoreFault`] where there is no such rig or the store can't be read.
    pub fn glance(&self, rig: RigId) -> Read<RigGlance> {
        glance(self.store.conn(), rig)?.ok_or(StoreFault::NotFound("rig"))
    }

    /// What the screen of a rig shows of its book.
    ///
    /// # Errors
    /// [`StoreFault`] where there is no such rig or the store can't be read.
    pub fn outline(&self, rig: RigId) -> Read<RigOutline> {
        outline(self.store.conn(), rig)?.ok_or(StoreFault::NotFound("rig"))
    }

    /// The book of a rig.
    ///
    /// # Errors
    /// [`StoreFault`] where there is no such rig or the store can't be read.
    pub fn book(&self, rig: RigId) -> Read<Book> {
        self.shared_book(rig).map(Arc::unwrap_or_clone)
    }

    /// The book of a rig, shared: nothing is copied, however large it is.
    ///
    /// # Errors
    /// [`StoreFault`] where there is no such rig or the store can't be read.
    pub fn shared_book(&self, rig: RigId) -> Read<Arc<Book>> {
        let book = self.fold(rig)?.book.clone();
        book.ok_or(StoreFault::NotFound("rig"))
    }

    /// The open walk of a rig.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be read.
    pub fn open_walk(&self, rig: RigId) -> Read<Option<WalkState>> {
        Ok(self.shared_walk(rig)?.map(Arc::unwrap_or_clone))
    }

    /// The open walk of a rig, shared: nothing is copied, however much it holds. Let go before the
    /// next act, or that act copies it.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be read.
    pub fn shared_walk(&self, rig: RigId) -> Read<Option<Arc<WalkState>>> {
        let fold = self.fold(rig)?;
        Ok(fold.walk.as_ref().map(|walk| Arc::clone(&walk.state)))
    }

    /// A walk, open or ended.
    ///
    /// # Errors
    /// [`StoreFault`] where there is no such walk or the store can't be read.
    pub fn walk(&self, walk: WalkId) -> Read<WalkState> {
        self.walk_and_book(walk).map(|(walk, _)| walk)
    }

    /// A walk, with the book as it stood at its end or stands where it is open.
    ///
    /// # Errors
    /// [`StoreFault`] where there is no such walk or the store can't be read.
    pub fn walk_and_book(&self, walk: WalkId) -> Read<(WalkState, Book)> {
        let conn = self.store.conn();
        let missing = StoreFault::NotFound("walk");
        let extent = walk_extent(conn, walk)?.ok_or_else(|| missing.clone())?;
        let entries = ledger::of_walk(conn, walk, (extent.begun, extent.last))?;
        let book = book_at(conn, extent.rig, extent.begun)?;
        let folded = book.and_then(|book| OpenWalk::fold(Arc::new(book), entries));
        let alone = |(walk, book): (OpenWalk, Arc<Book>)| {
            (Arc::unwrap_or_clone(walk.state), Arc::unwrap_or_clone(book))
        };
        folded.map(alone).ok_or(missing)
    }

    /// All entries of a walk, in order, struck ones too.
    ///
    /// # Errors
    /// [`StoreFault`] where there is no such walk or the store can't be read.
    pub fn entries(&self, walk: WalkId) -> Read<Vec<Numbered>> {
        let conn = self.store.conn();
        let extent = walk_extent(conn, walk)?.ok_or(StoreFault::NotFound("walk"))?;
        ledger::of_walk(conn, walk, (extent.begun, extent.last))
    }

    /// The walks of a rig, oldest first; the open one is the last.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be read.
    pub fn walks(&self, rig: RigId) -> Read<Vec<WalkHead>> {
        walks(self.store.conn(), rig)
    }

    /// The findings of a rig, oldest first, open and closed.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be read.
    pub fn findings(&self, rig: RigId) -> Read<Vec<Finding>> {
        Ok(self.facts(rig)?.findings.clone())
    }

    /// The odometer notes of a rig, oldest first.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be read.
    pub fn odometer(&self, rig: RigId) -> Read<Vec<OdometerNote>> {
        Ok(self.facts(rig)?.known.odometer.clone())
    }

    /// All that is known of a rig when it is asked what is due.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be read.
    pub fn known(&self, rig: RigId) -> Read<Known> {
        Ok(self.facts(rig)?.known.clone())
    }

    /// What was noted and ruled between walks, oldest first, each with its day and name.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be read.
    pub fn timing(&self, rig: RigId) -> Read<Vec<(NaiveDate, ActId, Act)>> {
        timing_acts(self.store.conn(), rig)
    }

    /// In how many walks running, up to the last one that ended, each point had moved or was loose;
    /// points that had not are left out. Only a joint that held in another walk than a second look
    /// ends the row; what was done about it does not.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be read.
    pub fn moved_running(&self, rig: RigId) -> Read<BTreeMap<PointId, u8>> {
        Ok(self.facts(rig)?.moved_running.clone())
    }

    /// The points that wait for a second look: set or remade in the last ended walk that did so to
    /// any, and not seen by a later walk.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be read.
    pub fn unsettled(&self, rig: RigId) -> Read<Vec<PointId>> {
        Ok(self.facts(rig)?.known.unsettled.clone())
    }

    /// The day of the last walk that went through the whole rig to the end.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be read.
    pub fn last_walk(&self, rig: RigId) -> Read<Option<NaiveDate>> {
        Ok(self.facts(rig)?.known.last_walk)
    }

    /// The past of a point, oldest walk first; the open walk's record is the last.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be read.
    pub fn point_past(&self, point: PointId) -> Read<Vec<PointPast>> {
        point_past(self.store.conn(), point)
    }

    /// The rig of the act with a name, where it was recorded.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be read.
    pub fn rig_of(&self, act: ActId) -> Read<Option<RigId>> {
        let found = ledger::by_id(self.store.conn(), act)?;
        Ok(found.map(|numbered| numbered.entry.rig))
    }

    /// The newest entry's number and digest, to be printed where a cut tail should show.
    #[must_use]
    pub const fn digest(&self) -> Head {
        self.progress.head
    }

    /// Verifies the chain alone: every stored entry is hashed again, behind the one before it. That
    /// the file is whole and that each entry can be read is for [`verify`](Self::verify) to tell.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be read.
    pub fn verify_chain(&self) -> Read<Verified> {
        self.look_into(Depth::Chain)
    }

    /// Verifies the file, the chain as [`verify_chain`](Self::verify_chain) does, and that every
    /// entry can be read and says what its columns say.
    ///
    /// # Errors
    /// [`StoreFault`] where the file itself is damaged or can't be read.
    pub fn verify(&self) -> Read<Verified> {
        let conn = self.store.conn();
        let said: String = conn.query_row("PRAGMA quick_check(1)", [], |row| row.get(0))?;
        if said != "ok" {
            return Err(Damage::Database(said).into());
        }
        self.look_into(Depth::Entries)
    }

    fn look_into(&self, depth: Depth) -> Read<Verified> {
        let known = self.progress.head.seq;
        let cores = std::thread::available_parallelism().map_or(1, usize::from);
        let parts = if known < LONG {
            1
        } else {
            cores.min(MOST_PARTS)
        };
        let beside = (1..parts).map(|_| self.store.reader());
        let beside = beside.collect::<Read<Vec<_>>>()?;
        ledger::verify(self.store.conn(), beside, depth, known)
    }

    /// Drops all computed tables and computes them again from the ledger.
    ///
    /// # Errors
    /// [`StoreFault`] where an entry can't be read or the tables can't be written; they are as they
    /// were then.
    pub fn rebuild(&mut self) -> Read<()> {
        self.trust()?;
        rebuild(self.store.conn_mut())?;
        self.forget()
    }

    /// One digest over all computed tables: two logbooks that read alike have the same.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be read.
    pub fn fingerprint(&self) -> Read<crate::ledger::Digest> {
        fingerprint(self.store.conn())
    }
}
