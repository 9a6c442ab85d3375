//! Folds entries into the state of a walk. Never refuses, and holds no rules.

use super::{
    Act, Away, BayStage, BayWork, Entry, Exception, FoundRecord, Phase, PointRecord, Setting,
    Shown, WalkState,
};
use crate::ids::{ActId, BayId, PointId};
use crate::isolation::{KnownLive, Lapse, Proof, Read};
use crate::rig::{Book, SourceKind, SupplyKind};
use crate::supply::Reading;

impl WalkState {
    /// Folds the entries of one walk, in order; struck ones are left out. `None` where no start
    /// stands among them. `book` is the rig's as it stood when the walk was started.
    #[must_use]
    pub fn fold(entries: &[Entry], book: &Book) -> Option<Self> {
        Self::fold_with_book(entries, book.clone()).map(|(state, _)| state)
    }

    /// Folds the entries of one walk into its state and the rig's book, which may change on the
    /// way: each act is read by the book as it stood then, so that a device which moves to another
    /// bay later takes no reading with it.
    #[must_use]
    pub fn fold_with_book(entries: &[Entry], mut book: Book) -> Option<(Self, Book)> {
        let struck = struck(entries);
        let (start, rest) = entries.split_first()?;
        let Act::Start { person, scope } = &start.act else {
            return None;
        };
        let mut state = Self::new(start.walk?, person, scope, &start.at);
        state.standing.push(start.id);
        for entry in rest {
            if struck.contains(&entry.id) || matches!(entry.act, Act::Strike { .. }) {
                state.notice(entry);
                continue;
            }
            if let Act::Book(change) = &entry.act {
                book.apply(change);
            }
            state.apply(entry, &book);
        }
        Some((state, book))
    }

    /// Takes one entry into the state.
    pub fn apply(&mut self, entry: &Entry, book: &Book) {
        self.spend(entry);
        self.notice(entry);
        if !entry.act.is_origin() {
            self.standing.push(entry.id);
        }
        self.findings.extend(entry.shown.findings.iter().cloned());
        match &entry.act {
            Act::Ready { item, answer } => {
                self.ready.insert(*item, answer.clone());
            }
            Act::Isolate { .. } | Act::Restore { .. } | Act::LeaveAway { .. } => {
                self.apply_source(entry, book);
            }
            Act::Open { .. } | Act::KnownLive { .. } | Act::Read { .. } | Act::Except { .. } => {
                self.apply_bay(entry, book);
            }
            Act::Close { bay, .. } => self.work(*bay).stage = BayStage::Closed,
            Act::Follow(_) | Act::LeavePlan => self.apply_plan(&entry.act),
            Act::SetTool { tool, at } => {
                self.setting = Some(Setting {
                    tool: *tool,
                    at: at.clone(),
                });
            }
            Act::Found { .. }
            | Act::Correct { .. }
            | Act::Look { .. }
            | Act::Damage { .. }
            | Act::Left { .. } => self.apply_point(entry),
            Act::Photo {
                about,
                digest,
                caption,
            } => {
                self.photos.push((*about, digest.clone(), caption.clone()));
            }
            Act::PowerUp => self.power_up(),
            Act::Measure(reading) => self.apply_reading(reading, &entry.shown),
            Act::Pause => self.paused = true,
            Act::Resume => {
                self.paused = false;
                self.setting = None;
            }
            Act::End(ending) => {
                self.phase = Phase::Ended;
                self.ending = Some(ending.clone());
            }
            Act::Book(_)
            | Act::Odometer(_)
            | Act::Usage(_)
            | Act::Rule(_)
            | Act::PutOff { .. }
            | Act::Start { .. }
            | Act::Decide { .. }
            | Act::Strike { .. }
            | Act::FromBackup { .. }
            | Act::Recovered(_) => {}
        }
    }

    fn power_up(&mut self) {
        self.phase = Phase::PoweringUp;
        self.readings_before = self.readings.len();
        self.service = None;
    }

    /// Takes what the clocks told at an entry, which holds even where the act was struck.
    fn notice(&mut self, entry: &Entry) {
        self.last = entry.at.clone();
        if let Some(lapse) = entry.flags.lapse {
            self.lapse(lapse);
        }
    }

    fn apply_source(&mut self, entry: &Entry, book: &Book) {
        if let Act::Isolate { source, .. } | Act::LeaveAway { source, .. } = &entry.act
            && let Some(source) = book.source(*source)
        {
            self.void_readings(source.kind);
        }
        match &entry.act {
            Act::Isolate { source, away } => {
                if self.phase == Phase::Before {
                    self.phase = Phase::TakingAway;
                }
                self.away.insert(*source, away.clone());
                self.away_at.insert(*source, entry.at.clone());
                self.restored.retain(|back| back != source);
            }
            Act::Restore { source } => self.restored.push(*source),
            Act::LeaveAway { source, why } => {
                self.left_away.insert(*source, why.clone());
            }
            _ => {}
        }
    }

    fn apply_reading(&mut self, reading: &Reading, shown: &Shown) {
        self.readings.push((reading.clone(), shown.judged.clone()));
        if let Some(seen) = &shown.service {
            self.service = Some((reading.step, seen.clone()));
        }
    }

    /// What was read of a kind of source counts no longer once it is away again.
    fn void_readings(&mut self, kind: SourceKind) {
        self.voided.insert(kind, self.readings.len());
        if kind == SourceKind::Shore {
            self.service = None;
        }
    }

    fn apply_bay(&mut self, entry: &Entry, book: &Book) {
        match &entry.act {
            Act::Open { bay } => {
                self.phase = Phase::AtBays;
                let stage = BayStage::Open;
                let work = BayWork {
                    stage,
                    ..BayWork::default()
                };
                self.bays.insert(*bay, work);
            }
            Act::KnownLive {
                bay,
                supply,
                place,
                meter,
                volts,
            } => {
                let known = KnownLive {
                    place: place.clone(),
                    meter: meter.clone(),
                    volts: volts.clone(),
                    at: entry.at.clone(),
                };
                self.work(*bay).known_live(*supply, known);
            }
            Act::Read {
                device,
                check,
                volts,
            } => {
                let read = Read {
                    device: *device,
                    check: check.clone(),
                    volts: volts.clone(),
                    dead: entry.shown.dead.unwrap_or(false),
                };
                if let Some(device) = book.device(*device) {
                    self.work(device.bay).read(read);
                }
            }
            Act::Except {
                device,
                set,
                reason,
            } => {
                let exception = Exception {
                    device: *device,
                    set: set.clone(),
                    reason: reason.clone(),
                };
                if let Some(device) = book.device(*device) {
                    self.work(device.bay).exceptions.push(exception);
                }
            }
            _ => {}
        }
    }

    fn apply_point(&mut self, entry: &Entry) {
        match &entry.act {
            Act::Found { point, found } | Act::Correct { point, found, .. } => {
                let corrected = matches!(entry.act, Act::Correct { .. });
                let record = self.record(*point);
                record.found = Some(FoundRecord {
                    found: found.clone(),
                    advice: entry.shown.advice.clone(),
                    at: entry.at.clone(),
                    corrected,
                });
                if corrected && !found.needs_left() {
                    record.left = None;
                }
            }
            Act::Look { point, seen } => self.record(*point).seen = Some(seen.clone()),
            Act::Damage {
                point,
                damage,
                note,
            } => {
                self.record(*point).damage.push((*damage, note.clone()));
            }
            Act::Left { point, left } => self.record(*point).left = Some(left.clone()),
            _ => {}
        }
    }

    /// Makes all proofs so far count no longer.
    fn lapse(&mut self, lapse: Lapse) {
        for proof in self.bays.values_mut().flat_map(|work| &mut work.proofs) {
            proof.lapsed.get_or_insert(lapse);
        }
        for work in self.bays.values_mut() {
            work.exceptions.clear();
        }
    }

    fn work(&mut self, bay: BayId) -> &mut BayWork {
        self.bays.entry(bay).or_default()
    }

    fn record(&mut self, point: PointId) -> &mut PointRecord {
        self.points.entry(point).or_default()
    }

    /// Whether a source was taken away and not brought back, so that it should feed nothing.
    #[must_use]
    pub fn is_away(&self, source: crate::ids::SourceId) -> bool {
        matches!(self.away.get(&source), Some(Away::Isolated(_)))
            && !self.restored.contains(&source)
    }
}

impl BayWork {
    /// Ends the proof that runs, or begins one; where no pair was read yet, or another meter was
    /// taken, it begins anew.
    fn known_live(&mut self, supply: SupplyKind, known: KnownLive) {
        let other =
            |proof: &&mut Proof| proof.before.meter != known.meter && !proof.reads.is_empty();
        let mut running = self
            .proofs
            .iter_mut()
            .filter(|proof| proof.supply == supply && proof.is_running());
        if let Some(proof) = running.find(other) {
            proof.lapsed = Some(Lapse::OtherMeter);
        }
        let runs = |proof: &&mut Proof| proof.supply == supply && proof.is_running();
        match self.proofs.iter_mut().find(runs) {
            Some(proof) if proof.reads.is_empty() => proof.before = known,
            Some(proof) => proof.after = Some(known),
            None => self.proofs.push(Proof {
                supply,
                before: known,
                reads: Vec::new(),
                after: None,
                lapsed: None,
            }),
        }
    }

    /// Adds a reading to the proof that runs. One that is live leaves nothing standing that was
    /// proved or begun in the bay before it.
    fn read(&mut self, read: Read) {
        if !read.dead {
            for proof in self
                .proofs
                .iter_mut()
                .filter(|proof| proof.supply != read.check.supply)
            {
                proof.lapsed.get_or_insert(Lapse::FoundLive);
            }
            for proof in self.proofs.iter_mut().filter(|proof| !proof.is_running()) {
                proof.lapsed.get_or_insert(Lapse::FoundLive);
            }
        }
        let runs = |proof: &&mut Proof| proof.supply == read.check.supply && proof.is_running();
        if let Some(proof) = self.proofs.iter_mut().rev().find(runs) {
            proof.reads.push(read);
        }
    }
}

/// The acts that later acts struck.
fn struck(entries: &[Entry]) -> std::collections::HashSet<ActId> {
    entries
        .iter()
        .filter_map(|entry| match entry.act {
            Act::Strike { act } => Some(act),
            _ => None,
        })
        .collect()
}
