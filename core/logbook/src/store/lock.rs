//! One writer: a lock file that the system frees when its holder ends, however it ends.

use super::StoreFault;
use baywalk_domain::moment::Moment;
use chrono::DateTime;
use std::fs::{File, OpenOptions, TryLockError};
use std::io::{Read, Seek, SeekFrom, Write};
use std::path::Path;
use std::time::Duration;

/// How often the lock is tried, and how long it is waited for between: 3 seconds in all.
const TRIES: u32 = 60;
const PAUSE: Duration = Duration::from_millis(50);

/// The lock, held until it is dropped.
#[derive(Debug)]
pub(crate) struct Lock {
    _file: File,
}

/// Takes the lock of a folder, waiting a little for another holder to end.
pub(crate) fn lock(folder: &Path, now: &Moment) -> Result<Lock, StoreFault> {
    let path = folder.join("baywalk.lock");
    let fault = |error: std::io::Error| StoreFault::file(&path, &error);
    let open = || {
        let mut options = OpenOptions::new();
        let options = options.read(true).write(true).create(true);
        options.truncate(false).open(&path).map_err(fault)
    };
    let mut file = open()?;
    for _ in 0..TRIES {
        match file.try_lock() {
            // While it was waited for, another store may have come to stand here.
            Ok(()) if !is_at(&file, &path) => file = open()?,
            Ok(()) => {
                // Who holds it is told for people's sake; without room it is left unsaid.
                let _untold = sign(&mut file, now);
                return Ok(Lock { _file: file });
            }
            Err(TryLockError::WouldBlock) => std::thread::sleep(PAUSE),
            Err(TryLockError::Error(error)) => return Err(fault(error)),
        }
    }
    Err(held(&mut file))
}

/// Whether the file is still the one that its path names.
#[cfg(unix)]
fn is_at(file: &File, path: &Path) -> bool {
    use std::os::unix::fs::MetadataExt;
    let same = |at: std::fs::Metadata, here: std::fs::Metadata| {
        (at.dev(), at.ino()) == (here.dev(), here.ino())
    };
    let at = std::fs::metadata(path);
    at.is_ok_and(|at| file.metadata().is_ok_and(|here| same(at, here)))
}

/// Whether the file is still the one that its path names; an open file can't be renamed here.
#[cfg(not(unix))]
fn is_at(_file: &File, _path: &Path) -> bool {
    true
}

/// Writes who holds the lock. It is written over and then cut to its length: some file systems wait
/// for the disk where a file is first emptied.
fn sign(file: &mut File, now: &Moment) -> std::io::Result<()> {
    let text = format!("{}\n{}\n", std::process::id(), now.wall.to_rfc3339());
    file.seek(SeekFrom::Start(0))?;
    file.write_all(text.as_bytes())?;
    file.set_len(u64::try_from(text.len()).unwrap_or_default())
}

/// Who holds the lock, as far as it was written there.
fn held(file: &mut File) -> StoreFault {
    let mut text = String::new();
    let read = file.take(200).read_to_string(&mut text);
    let mut lines = if read.is_ok() {
        text.lines()
    } else {
        "".lines()
    };
    StoreFault::Held {
        pid: lines.next().and_then(|line| line.parse().ok()),
        since: lines
            .next()
            .and_then(|line| DateTime::parse_from_rfc3339(line).ok()),
    }
}
