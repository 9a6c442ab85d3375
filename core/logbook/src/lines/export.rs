//! Exporting the ledger.

use super::Writer;
use crate::ledger::{self, Head};
use crate::store::StoreFault;
use rusqlite::Connection;
use std::io::{BufWriter, Write};

/// Writes all entries as lines; gives the last one.
pub(crate) fn export(conn: &Connection, out: impl Write) -> Result<Head, StoreFault> {
    let mut writer = Writer::new(BufWriter::new(out));
    let written = |error: std::io::Error| StoreFault::file("".as_ref(), &error);
    ledger::each_stored(conn, |seq, body, digest| {
        writer.entry(seq, body, digest).map_err(written)
    })?;
    let (head, mut out) = writer.end().map_err(written)?;
    out.flush().map_err(written)?;
    Ok(head)
}
