//! Bringing an older store to the present version. Migrations touch the ledger table alone: what is
//! computed is computed anew, and stored entries keep their bytes for ever.

use super::{StoreFault, VERSION};
use rusqlite::{Connection, TransactionBehavior};

/// What leads from each version to the next, from version 1 on.
const STEPS: &[&str] = &[include_str!("sql/to_2.sql"), include_str!("sql/to_3.sql")];

/// Brings a store from an older version to the present one, all or nothing.
pub(super) fn migrate(conn: &mut Connection, from: u32) -> Result<(), StoreFault> {
    let done = usize::try_from(from.saturating_sub(1)).unwrap_or(usize::MAX);
    let tx = conn.transaction_with_behavior(TransactionBehavior::Immediate)?;
    for step in STEPS.iter().skip(done) {
        tx.execute_batch(step)?;
    }
    tx.pragma_update(None, "user_version", VERSION)?;
    tx.commit()?;
    // The version stands in the file itself from now on, not in its log alone.
    conn.query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |_| Ok(()))?;
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn there_is_one_step_from_each_version_to_the_next() {
        assert_eq!(u32::try_from(STEPS.len()), Ok(VERSION - 1));
    }
}
