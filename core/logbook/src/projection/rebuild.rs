//! Drops the computed tables and computes them again.

use super::{Progress, RigFold, fingerprint, project};
use crate::ledger;
use crate::store::StoreFault;
use baywalk_domain::ids::RigId;
use rusqlite::{Connection, TransactionBehavior};
use std::collections::BTreeMap;

/// Computes all tables anew from the ledger, all or nothing.
pub(crate) fn rebuild(conn: &mut Connection) -> Result<Progress, StoreFault> {
    conn.flush_prepared_statement_cache();
    let tx = conn.transaction_with_behavior(TransactionBehavior::Immediate)?;
    for table in fingerprint::tables(&tx)? {
        tx.execute_batch(&format!("DROP TABLE {}", fingerprint::quoted(&table)))?;
    }
    tx.execute_batch(include_str!("schema.sql"))?;
    let mut rigs: BTreeMap<RigId, RigFold> = BTreeMap::new();
    let mut progress = Progress::START;
    ledger::each(&tx, |numbered| {
        let fold = rigs.entry(numbered.entry.rig).or_default();
        project(&tx, fold, &numbered)?;
        progress = progress.then(progress.head, &numbered.entry.at);
        Ok(())
    })?;
    progress.head = ledger::head(&tx)?;
    progress.put(&tx)?;
    tx.commit()?;
    Ok(progress)
}
