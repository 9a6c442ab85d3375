//! Importing a ledger into a store that has none.

use super::{LineFault, Lines, LinesFault};
use crate::ledger::{self, Head};
use crate::store::StoreFault;
use rusqlite::{Connection, TransactionBehavior};
use std::io::BufRead;

/// Puts all lines into an empty ledger, byte for byte, all or none; gives the last entry.
pub(crate) fn import<E>(conn: &mut Connection, lines: Lines<impl BufRead>) -> Result<Head, E>
where
    E: From<StoreFault> + From<LinesFault>,
{
    let stored = |error: rusqlite::Error| E::from(StoreFault::from(error));
    let behaviour = TransactionBehavior::Immediate;
    let tx = conn.transaction_with_behavior(behaviour).map_err(stored)?;
    let mut head = Head::START;
    for line in lines {
        let line = line?;
        if ledger::by_id(&tx, line.entry.id)?.is_some() {
            let (line, why) = (line.head.seq, LineFault::Twice);
            return Err(LinesFault { line, why }.into());
        }
        head = ledger::put(&tx, head, (line.version, &line.entry), &line.body)?;
    }
    tx.commit().map_err(stored)?;
    Ok(head)
}
