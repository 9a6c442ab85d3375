//! Acts: decided by the rules, written as one entry with all that follows from it, or not at all.

use super::{ActFault, Logbook, Outcome};
use crate::ledger::{self, Numbered};
use crate::projection::{changes, project};
use crate::store::StoreFault;
use baywalk_domain::ids::{ActId, RigId};
use baywalk_domain::moment::Moment;
use baywalk_domain::walk::{Act, Call, Context, Entry, decide};
use rusqlite::TransactionBehavior;
use std::sync::Arc;

impl Logbook {
    /// Records what a person does now. A clock that fell back is flagged, never refused.
    ///
    /// # Errors
    /// [`ActFault`] with why it is not taken; nothing is changed then.
    pub fn act(&mut self, rig: RigId, act: Act) -> Result<Outcome, ActFault> {
        let id = ActId::new(self.clock.new_id());
        self.act_as(id, rig, act)
    }

    /// Records what a person does now, under a name that was given before, as to a card that is
    /// shown; see [`outcome`](Self::outcome) for an act that may have been recorded already.
    ///
    /// # Errors
    /// [`ActFault`] as for [`act`](Self::act).
    pub fn act_as(&mut self, id: ActId, rig: RigId, act: Act) -> Result<Outcome, ActFault> {
        let now = self.clock.now();
        self.record(&Call { id, rig, act }, &now)
    }

    /// Records an act of a script or an import, at its own moment and under its own name.
    ///
    /// An act that was recorded before gives what came of it then, and records nothing.
    ///
    /// # Errors
    /// [`ActFault`] as for [`act`](Self::act), and where the moment is earlier than the newest
    /// entry or another act has the name.
    pub fn call(&mut self, call: &Call, at: &Moment) -> Result<Outcome, ActFault> {
        self.trust()?;
        if let Some(first) = self.doubting(Self::recorded, call)? {
            return Ok(first);
        }
        match &self.progress.newest {
            Some(newest) if at.wall < newest.wall => Err(ActFault::Earlier {
                found: Box::new(at.clone()),
                newest: Box::new(newest.clone()),
            }),
            _ => self.record(call, at),
        }
    }

    /// What came of a call that was recorded before.
    fn recorded(&self, call: &Call) -> Result<Option<Outcome>, ActFault> {
        let Some(first) = self.outcome(call.id)? else {
            return Ok(None);
        };
        if (first.entry.rig, &first.entry.act) != (call.rig, &call.act) {
            return Err(ActFault::NameTaken { seq: first.seq });
        }
        Ok(Some(first))
    }

    /// What came of an act that was recorded under a name, where one was.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be read.
    pub fn outcome(&self, act: ActId) -> Result<Option<Outcome>, StoreFault> {
        let conn = self.store.conn();
        let Some(Numbered { seq, entry }) = ledger::by_id(conn, act)? else {
            return Ok(None);
        };
        let struck = match &entry.act {
            Act::Strike { act } => ledger::by_id(conn, *act)?,
            _ => None,
        };
        Ok(Some(Outcome {
            seq,
            changes: changes(&entry, struck.as_ref().map(|struck| &struck.entry)),
            entry,
            repeated: true,
        }))
    }

    pub(super) fn record(&mut self, call: &Call, at: &Moment) -> Result<Outcome, ActFault> {
        self.trust()?;
        let entry = self.doubting(|book, call| book.decide(call, at), call)?;
        self.write(entry).map_err(|fault| {
            self.doubt |= fault.asks_reopen();
            ActFault::Storage(fault)
        })
    }

    /// What an act would become, were it recorded now: the entry as it would be decided, with all that
    /// would be shown of it. Nothing is written.
    ///
    /// # Errors
    /// [`ActFault`] with why it would not be taken.
    pub fn foresee(&self, rig: RigId, act: Act) -> Result<Entry, ActFault> {
        let id = ActId::new(self.clock.new_id());
        self.decide(&Call { id, rig, act }, &self.clock.now())
    }

    /// Reads for an act; a reading that fails leaves the connection in doubt as a writing does: it
    /// may hold a lock that it could not give back.
    fn doubting<T>(
        &mut self,
        read: impl FnOnce(&Self, &Call) -> Result<T, ActFault>,
        call: &Call,
    ) -> Result<T, ActFault> {
        let done = read(self, call);
        if let Err(ActFault::Storage(fault)) = &done {
            self.doubt |= fault.asks_reopen();
        }
        done
    }

    fn decide(&self, call: &Call, at: &Moment) -> Result<Entry, ActFault> {
        let fold = self.fold(call.rig)?;
        let facts = self.facts(call.rig)?;
        let practice = self.practice()?;
        let context = Context {
            book: fold.book.as_deref(),
            walk: fold.walk.as_ref().map(|walk| &*walk.state),
            moved_running: &facts.moved_running,
            findings: &facts.findings,
            known: &facts.known,
            newest: self.progress.newest.as_ref(),
            practice: &practice,
        };
        Ok(decide(&context, call, at)?)
    }

    /// Writes an entry and all that follows from it, in one transaction with one sync. What is in
    /// memory moves with it, and is dropped where the writing fails.
    fn write(&mut self, entry: Entry) -> Result<Outcome, StoreFault> {
        let rig = entry.rig;
        let kept = self.folds.get_mut().remove(&rig);
        let mut fold = kept.map(Arc::unwrap_or_clone).unwrap_or_default();
        let conn = self.store.conn_mut();
        let tx = conn.transaction_with_behavior(TransactionBehavior::Immediate)?;
        let head = ledger::append(&tx, self.progress.head, &entry)?;
        let numbered = Numbered {
            seq: head.seq,
            entry,
        };
        let changes = project(&tx, &mut fold, &numbered)?;
        let progress = self.progress.then(head, &numbered.entry.at);
        progress.put(&tx)?;
        tx.commit()?;
        self.progress = progress;
        self.folds.get_mut().insert(rig, Arc::new(fold));
        self.take_into_facts(&numbered.entry);
        Ok(Outcome {
            seq: numbered.seq,
            entry: numbered.entry,
            changes,
            repeated: false,
        })
    }

    /// Takes a written entry into the facts that are in memory, or drops them where they are to be
    /// read anew.
    fn take_into_facts(&mut self, entry: &Entry) {
        let facts = self.facts.get_mut();
        if let Some(of_rig) = facts.get_mut(&entry.rig)
            && !Arc::make_mut(of_rig).take(entry)
        {
            facts.remove(&entry.rig);
        }
    }
}
