//! Looks at the first bytes of a database file, without opening it as one, so that what is not ours
//! is left untouched (the file format of SQLite: magic at 0, user version at 60, application at 68).

use super::{APPLICATION, Damage, Newer, StoreFault, VERSION};
use std::io::Read;
use std::path::Path;

const MAGIC: &[u8] = b"SQLite format 3\0";
const USER_VERSION: usize = 60;
const APPLICATION_ID: usize = 68;
const LENGTH: usize = 100;

/// Sees that a file may be opened: it is absent, empty, or a database of ours that is not newer.
pub(super) fn look(path: &Path) -> Result<(), StoreFault> {
    let mut head = Vec::new();
    match std::fs::File::open(path) {
        Ok(file) => {
            let most = u64::try_from(LENGTH).unwrap_or(u64::MAX);
            file.take(most)
                .read_to_end(&mut head)
                .map_err(|error| StoreFault::file(path, &error))?;
        }
        Err(error) if error.kind() == std::io::ErrorKind::NotFound => return Ok(()),
        Err(error) => return Err(StoreFault::file(path, &error)),
    }
    if head.is_empty() {
        return Ok(());
    }
    if !head.starts_with(MAGIC) || head.len() < LENGTH {
        return Err(StoreFault::Damaged(Damage::NotADatabase {
            path: path.to_owned(),
        }));
    }
    let number = |at| number(&head, at);
    may_open(number(APPLICATION_ID), number(USER_VERSION), path)
}

/// Sees that an application number and a version are ours; both are 0 before the first commit.
pub(super) fn may_open(application: i32, version: i32, path: &Path) -> Result<(), StoreFault> {
    if (application, version) == (0, 0) {
        return Ok(());
    }
    if application != APPLICATION {
        return Err(StoreFault::NotOurs {
            path: path.to_owned(),
        });
    }
    match u32::try_from(version) {
        Ok(found) if found <= VERSION => Ok(()),
        Ok(found) => Err(Newer::Store {
            found,
            known: VERSION,
        }
        .into()),
        Err(_) => Err(StoreFault::NotOurs {
            path: path.to_owned(),
        }),
    }
}

fn number(head: &[u8], at: usize) -> i32 {
    let bytes = head.get(at..).and_then(|rest| rest.first_chunk::<4>());
    bytes.map_or(0, |bytes| i32::from_be_bytes(*bytes))
}
