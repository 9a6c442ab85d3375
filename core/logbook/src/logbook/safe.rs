//! Keeping safe: backup, lines, where the logbook comes from, what no backup has yet.

use super::Logbook;
use crate::backup::{self, Job, RestoreFault};
use crate::ledger::{self, Digest, Head, Numbered};
use crate::lines::{self, Lines, LinesFault};
use crate::projection::behind;
use crate::store::{Damage, Reader, StoreFault};
use baywalk_domain::ids::{ActId, RigId};
use baywalk_domain::walk::{Act, Call, Entry, Flags, Shown};
use chrono::NaiveDate;
use std::io::{BufRead, Write};
use uuid::Uuid;

/// The rig of entries that are of the logbook as a whole: the nil UUID (RFC 9562, 5.9).
const WHOLE: RigId = RigId::new(Uuid::nil());

/// The key under which the last backup is kept.
const LAST: &str = "last_backup";

/// What no backup has yet.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SinceBackup {
    /// The entries.
    pub entries: u64,
    /// The walks that were ended.
    pub walks: u64,
    /// The day of the last backup; `None` where there was none.
    pub last: Option<NaiveDate>,
}

impl Logbook {
    /// A backup of the logbook as it stands now, to be written beside it.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be read.
    pub fn backup(&self) -> Result<Job, StoreFault> {
        Ok(Job::new(self.reader()?, self.clock.now()))
    }

    /// Notes that a backup was made up to an entry.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be written.
    pub fn note_backup(&mut self, head: Head) -> Result<(), StoreFault> {
        let day = self.clock.now().date();
        let note = format!("{} {} {day}", head.seq, head.digest);
        self.store.set_scratch(LAST, Some(&note))
    }

    /// What no backup has yet.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be read.
    pub fn since_backup(&self) -> Result<SinceBackup, StoreFault> {
        let note = self.store.scratch(LAST)?;
        let last = note.as_deref().and_then(noted);
        let seq = last.as_ref().map_or(0, |(head, _)| head.seq);
        let newest = self.progress.head.seq;
        let (entries, walks) = behind(self.store.conn(), seq, newest)?;
        Ok(SinceBackup {
            entries,
            walks,
            last: last.map(|(_, day)| day),
        })
    }

    /// Writes all entries as JSON Lines.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be read or the lines can't be written.
    pub fn export(&self, out: impl Write) -> Result<Head, StoreFault> {
        lines::export(self.reader()?.conn(), out)
    }

    /// Takes exported entries into a logbook that has none yet, byte for byte; an open walk needs a
    /// new proof.
    ///
    /// # Errors
    /// [`RestoreFault`] where a line does not fit or the logbook has entries; nothing is changed
    /// then.
    pub fn import(&mut self, from: impl BufRead) -> Result<Head, RestoreFault> {
        self.trust()?;
        backup::import(self, from)
    }

    /// What the logbook tells of where it comes from, oldest first.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be read.
    pub fn origins(&self) -> Result<Vec<Numbered>, StoreFault> {
        ledger::origins(self.store.conn())
    }

    /// The free bytes where the logbook stands.
    ///
    /// # Errors
    /// [`StoreFault`] where the system does not tell.
    pub fn room(&self) -> Result<u64, StoreFault> {
        self.store.room()
    }

    pub(crate) fn reader(&self) -> Result<Reader, StoreFault> {
        self.store.reader()
    }

    /// Takes lines into an empty ledger and computes the tables.
    pub(crate) fn take_lines<E>(&mut self, lines: Lines<impl BufRead>) -> Result<Head, E>
    where
        E: From<StoreFault> + From<LinesFault>,
    {
        let head = lines::import::<E>(self.store.conn_mut(), lines)?;
        self.rebuild()?;
        Ok(head)
    }

    /// The digests of the photos that entries name, each once.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be read.
    pub fn photos_named(&self) -> Result<Vec<String>, StoreFault> {
        ledger::photos(self.store.conn())
    }

    /// Puts what was recovered into an empty ledger: entries as they were, what is told of the
    /// recovery, and entries that are sealed anew; then an open walk's proofs lapse.
    pub(crate) fn take_recovered(
        &mut self,
        whole: &[String],
        told: &Act,
        rest: &[Entry],
    ) -> Result<(), StoreFault> {
        let telling = Entry {
            id: ActId::new(self.clock.new_id()),
            rig: WHOLE,
            walk: None,
            at: self.clock.now(),
            flags: Flags::default(),
            act: told.clone(),
            shown: Shown::default(),
        };
        let tx = self.store.conn_mut().transaction()?;
        let mut head = Head::START;
        for body in whole {
            let seq = head.seq.saturating_add(1);
            let damaged = |fault| StoreFault::Damaged(Damage::Entry { seq, fault });
            let (version, numbered) = ledger::versioned(body).map_err(damaged)?;
            head = ledger::put(&tx, head, (version, &numbered.entry), body)?;
        }
        for entry in std::iter::once(&telling).chain(rest) {
            head = ledger::append(&tx, head, entry)?;
        }
        tx.commit()?;
        self.rebuild()?;
        self.tell_open_walks(told)
    }

    /// Records where the logbook comes from, for all of it and for each open walk.
    pub(crate) fn tell_origin(&mut self, act: &Act) -> Result<(), StoreFault> {
        self.tell(WHOLE, act)?;
        self.tell_open_walks(act)
    }

    /// Records where the logbook comes from, for each open walk, so that its proofs lapse.
    pub(crate) fn tell_open_walks(&mut self, act: &Act) -> Result<(), StoreFault> {
        for rig in self.rigs()? {
            if self.open_walk(rig)?.is_some() {
                self.tell(rig, act)?;
            }
        }
        Ok(())
    }

    fn tell(&mut self, rig: RigId, act: &Act) -> Result<(), StoreFault> {
        let id = ActId::new(self.clock.new_id());
        let act = act.clone();
        let told = self.record(&Call { id, rig, act }, &self.clock.now());
        match told {
            Ok(_) => Ok(()),
            Err(super::ActFault::Storage(fault)) => Err(fault),
            Err(other) => Err(StoreFault::Unexpected(other.to_string())),
        }
    }

    /// Closes the logbook; gives its clock back.
    pub(crate) fn close(self) -> Box<dyn super::Clock> {
        self.clock
    }
}

/// The last backup, as it was noted.
fn noted(note: &str) -> Option<(Head, NaiveDate)> {
    let mut words = note.split(' ');
    let seq = words.next()?.parse().ok()?;
    let digest = Digest::read(words.next()?)?;
    let day = words.next()?.parse().ok()?;
    Some((Head { seq, digest }, day))
}
