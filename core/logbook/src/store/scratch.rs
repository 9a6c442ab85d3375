//! What may be lost: where a screen stood, settings. Not chained, not in backups.

use super::{Store, StoreFault};
use rusqlite::OptionalExtension;

impl Store {
    /// The value of a key.
    pub(crate) fn scratch(&self, key: &str) -> Result<Option<String>, StoreFault> {
        let value = self
            .conn()
            .prepare_cached(include_str!("sql/scratch_get.sql"))?
            .query_row([key], |row| row.get(0))
            .optional()?;
        Ok(value)
    }

    /// Sets a key, or forgets it.
    pub(crate) fn set_scratch(&self, key: &str, value: Option<&str>) -> Result<(), StoreFault> {
        let conn = self.conn();
        match value {
            Some(value) => conn
                .prepare_cached(include_str!("sql/scratch_set.sql"))?
                .execute([key, value])?,
            None => conn
                .prepare_cached(include_str!("sql/scratch_forget.sql"))?
                .execute([key])?,
        };
        Ok(())
    }
}
