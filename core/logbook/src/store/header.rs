//! Looks at the first bytes of a database file, without opening it as one, so that what is not ours
//! is left untouched (the file format of SQLite: magic at 0, user version at 60, application at 68).

use super::{APPLICATION, Damage, Newer, StoreFault, VERSION};
use std::io::Read;
use std::path::Path;

const MAGIC: &[u8] = b"SQLite format 3\0";
/// The first bytes of a log, by the order of bytes in its sums (the same, section 4.1).
const LOG_MAGICS: &[&[u8]] = &[b"\x37\x7f\x06\x82", b"\x37\x7f\x06\x83"];
/// The first bytes of a rollback journal (the same, section 3).
const JOURNAL_MAGIC: &[u8] = b"\xd9\xd5\x05\xf9\x20\xa1\x63\xd7";
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
        if can_be_mended(path) {
            return Ok(());
        }
        return Err(StoreFault::Damaged(Damage::NotADatabase {
            path: path.to_owned(),
        }));
    }
    let number = |at| number(&head, at);
    may_open(number(APPLICATION_ID), number(USER_VERSION), path)
}

/// Whether a log or a journal stands beside a file. A power cut in the middle of writing the file's
/// first sector can leave anything there, while these still have the whole of it: then only the
/// database engine can tell what the file is.
fn can_be_mended(path: &Path) -> bool {
    let begins = |ending: &str, magics: &[&[u8]]| {
        let mut beside = path.as_os_str().to_owned();
        beside.push(ending);
        let mut head = [0; 8];
        let read = std::fs::File::open(beside).and_then(|mut file| file.read_exact(&mut head));
        read.is_ok() && magics.iter().any(|magic| head.starts_with(magic))
    };
    begins("-wal", LOG_MAGICS) || begins("-journal", &[JOURNAL_MAGIC])
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
