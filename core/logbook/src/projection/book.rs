//! Books, record by record.

use super::json;
use crate::store::StoreFault;
use crate::stored::{self, Shape};
use baywalk_domain::ids::RigId;
use baywalk_domain::rig::{Book, BookChange};
use rusqlite::Connection;

/// Puts a change, a row a record.
pub(super) fn put(
    tx: &Connection,
    rig: RigId,
    seq: u64,
    change: &BookChange,
) -> Result<(), StoreFault> {
    let (whole, records) = match change {
        BookChange::Whole(book) => (true, records(book)),
        change => (false, vec![change.clone()]),
    };
    let mut put = tx.prepare_cached(include_str!("sql/book_put.sql"))?;
    for (place, record) in records.iter().enumerate() {
        let body = json::write::<stored::BookChange>(record)?;
        put.execute((rig.to_string(), list(record), seq, place, whole, body))?;
    }
    Ok(())
}

/// Takes out what an entry had put.
pub(super) fn remove(tx: &Connection, rig: RigId, seq: u64) -> Result<(), StoreFault> {
    tx.prepare_cached(include_str!("sql/book_remove.sql"))?
        .execute((rig.to_string(), seq))?;
    Ok(())
}

/// The book of a rig as it stood at an entry.
pub(crate) fn book_at(conn: &Connection, rig: RigId, seq: u64) -> Result<Option<Book>, StoreFault> {
    let mut statement = conn.prepare_cached(include_str!("sql/book_at.sql"))?;
    let seq = i64::try_from(seq).unwrap_or(i64::MAX);
    let rows = statement.query_map((rig.to_string(), seq), |row| row.get::<_, String>(0))?;
    let mut book: Option<Book> = None;
    for row in rows {
        let change = json::read::<stored::BookChange>(&row?)?;
        match (&mut book, change) {
            (None, BookChange::Rig(rig)) => book = Some(Book::new(*rig)),
            (Some(book), change) => book.apply(&change),
            (None, change) => {
                let shape = stored::BookChange::of(&change);
                return Err(json::computed(&format!("{shape:?} stands before its rig")));
            }
        }
    }
    Ok(book)
}

fn records(book: &Book) -> Vec<BookChange> {
    fn each<T: Clone>(
        list: &[T],
        change: fn(Box<T>) -> BookChange,
    ) -> impl Iterator<Item = BookChange> {
        list.iter().cloned().map(Box::new).map(change)
    }
    std::iter::once(BookChange::Rig(Box::new(book.rig.clone())))
        .chain(each(&book.sources, BookChange::Source))
        .chain(each(&book.bays, BookChange::Bay))
        .chain(each(&book.devices, BookChange::Device))
        .chain(each(&book.points, BookChange::Point))
        .chain(each(&book.tools, BookChange::Tool))
        .chain(each(&book.bay_photos, BookChange::BayPhoto))
        .collect()
}

/// The list a record stands in. The rig itself sorts first.
const fn list(change: &BookChange) -> &'static str {
    match change {
        BookChange::Whole(_) | BookChange::Rig(_) => "a-rig",
        BookChange::Source(_) => "source",
        BookChange::Bay(_) => "bay",
        BookChange::Device(_) => "device",
        BookChange::Point(_) => "point",
        BookChange::Tool(_) => "tool",
        BookChange::BayPhoto(_) => "bay-photo",
    }
}
