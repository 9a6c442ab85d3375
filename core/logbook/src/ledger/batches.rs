//! Judging rows beside reading them. Each row is judged behind the digest that stands in the row
//! before, which is itself judged; so rows can be judged in any order, and the first that does not
//! fit is the same as if they were judged one by one.

use super::verify::{MisfitWhy, Stored};
use super::{Digest, Head};
use crate::store::StoreFault;
use std::sync::Mutex;
use std::sync::mpsc::{Receiver, sync_channel};

/// How many rows are judged together.
const ROWS: usize = 256;

/// The most threads that judge beside the one that reads.
const MOST_THREADS: usize = 4;

/// Rows that follow on one another, behind a head.
struct Batch {
    place: usize,
    before: Head,
    rows: Vec<Stored>,
}

/// The last entry that fits, and why the one behind it does not.
pub(super) type Found = (Head, Option<MisfitWhy>);

/// Sees whether a row fits behind a head; gives the head behind it.
pub(super) type Judge = fn(Head, &Stored) -> Result<Head, MisfitWhy>;

/// Judges all rows; gives the last that fits and, where there is one, why the next does not.
pub(super) fn judge(
    next: impl FnMut() -> rusqlite::Result<Option<Stored>>,
    judge: Judge,
) -> Result<Found, StoreFault> {
    let all = Judging {
        judge,
        broken: Mutex::default(),
    };
    let last = all.read(next)?;
    let broken = all.broken.into_inner().unwrap_or_default();
    let earliest = broken.into_iter().min_by_key(|(place, _)| *place);
    Ok(earliest.map_or((last, None), |(_, found)| found))
}

/// What is found while rows are read.
struct Judging {
    judge: Judge,
    /// The batches with a row that does not fit, by their places.
    broken: Mutex<Vec<(usize, Found)>>,
}

impl Judging {
    /// Reads all rows and hands them to threads that judge; gives the last that was read.
    fn read(
        &self,
        mut next: impl FnMut() -> rusqlite::Result<Option<Stored>>,
    ) -> Result<Head, StoreFault> {
        let cores = std::thread::available_parallelism().map_or(1, usize::from);
        let threads = cores.min(MOST_THREADS);
        let (hand, handed) = sync_channel::<Batch>(2 * threads);
        let handed = Mutex::new(handed);
        std::thread::scope(|scope| {
            // It ends here, so that the threads do not wait for more.
            let hand = hand;
            for _ in 0..threads {
                scope.spawn(|| self.work(&handed));
            }
            let mut before = Head::START;
            for place in 0.. {
                let rows = rows(&mut next)?;
                let Some(last) = rows.last().map(behind).filter(|_| !self.is_broken()) else {
                    break;
                };
                let batch = Batch {
                    place,
                    before,
                    rows,
                };
                if hand.send(batch).is_err() {
                    break;
                }
                before = last;
            }
            Ok(before)
        })
    }

    fn work(&self, handed: &Mutex<Receiver<Batch>>) {
        let next = || handed.lock().ok()?.recv().ok();
        while let Some(batch) = next() {
            if let found @ (_, Some(_)) = self.judged(&batch)
                && let Ok(mut broken) = self.broken.lock()
            {
                broken.push((batch.place, found));
            }
        }
    }

    fn judged(&self, batch: &Batch) -> Found {
        let mut sound = batch.before;
        for row in &batch.rows {
            match (self.judge)(sound, row) {
                Ok(head) => sound = head,
                Err(why) => return (sound, Some(why)),
            }
        }
        (sound, None)
    }

    fn is_broken(&self) -> bool {
        self.broken.lock().is_ok_and(|broken| !broken.is_empty())
    }
}

/// The next rows.
fn rows(
    next: &mut impl FnMut() -> rusqlite::Result<Option<Stored>>,
) -> rusqlite::Result<Vec<Stored>> {
    let mut rows = Vec::with_capacity(ROWS);
    while rows.len() < ROWS
        && let Some(row) = next()?
    {
        rows.push(row);
    }
    Ok(rows)
}

/// The head as a row tells it. One that tells none is itself judged, and does not fit.
fn behind(row: &Stored) -> Head {
    Head {
        seq: u64::try_from(row.seq).unwrap_or_default(),
        digest: row.digest.unwrap_or(Digest::START),
    }
}
