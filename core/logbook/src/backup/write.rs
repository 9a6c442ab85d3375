//! Writing an archive.

use super::manifest::{Listed, Manifest};
use super::output::Output;
use super::seal::{self, Apart, Sealing};
use super::watch::{Count, Step};
use super::{BackupFault, FORMAT, Job, Made, Passphrase, Photos, Watch, check, member};
use crate::ledger::{self, Head};
use crate::lines::Writer;
use crate::store::{self, StoreFault};
use sha2::{Digest, Sha256};
use std::ffi::OsString;
use std::fs::File;
use std::io::{BufWriter, Write};
use std::path::{Path, PathBuf};
use zip::write::{SimpleFileOptions, StreamWriter};
use zip::{CompressionMethod, ZipWriter};

/// How much of the ledger is gathered before it is written.
const BUFFER: usize = 256 * 1024;

/// How many photos are read ahead.
const AHEAD: usize = 2;

type Zip = ZipWriter<StreamWriter<Sealing<Output>>>;

/// Writes, syncs, reads back and renames.
pub(super) fn write(
    job: &Job,
    to: &Path,
    passphrase: Option<&Passphrase>,
    watch: &mut Watch<'_>,
) -> Result<Made, BackupFault> {
    if to.exists() {
        return Err(BackupFault::Exists(to.to_owned()));
    }
    let part = part(to);
    let made = archive(job, &part, passphrase, watch).and_then(|mut made| {
        check::bytes(&part, passphrase, watch).map_err(|fault| match fault {
            super::ArchiveFault::Stopped => BackupFault::Stopped,
            fault => BackupFault::ReadBack(fault),
        })?;
        std::fs::rename(&part, to).map_err(|error| BackupFault::target(to, &error))?;
        let folder = to.parent().filter(|folder| !folder.as_os_str().is_empty());
        store::sync(folder.unwrap_or(Path::new(".")))?;
        to.clone_into(&mut made.path);
        Ok(made)
    });
    if made.is_err() {
        // What was begun takes room; where it can't be removed it is harmless.
        let _left = std::fs::remove_file(&part);
    }
    made
}

/// The temporary name beside a target.
fn part(to: &Path) -> PathBuf {
    let mut name = to.file_name().map_or_else(OsString::new, ToOwned::to_owned);
    name.push(".part");
    to.with_file_name(name)
}

fn archive(
    job: &Job,
    path: &Path,
    passphrase: Option<&Passphrase>,
    watch: &mut Watch<'_>,
) -> Result<Made, BackupFault> {
    let target = |error: std::io::Error| BackupFault::target(path, &error);
    let conn = job.reader.conn();
    let named = ledger::photos(conn)?;
    let photos = Photos::list(job.reader.photos())?;
    let text: u64 = conn
        .query_row(include_str!("sql/size.sql"), [], |row| row.get(0))
        .map_err(StoreFault::from)?;
    let all = text.saturating_add(photos.size(named.iter()));
    let file = File::create(path).map_err(target)?;
    let apart = Apart::default();
    let output = Output::new(file, passphrase).map_err(target)?;
    let mut archive = Writing {
        zip: ZipWriter::new_stream(Sealing::new(output, apart.clone())),
        apart,
        path,
        members: Vec::new(),
        count: Count::new(watch, Step::Writing, all),
    };
    let head = archive.ledger(job)?;
    let missing = archive.photos(&photos, &named)?;
    let photos = archive.members.len().saturating_sub(1);
    let file = archive.end(job, head, missing.clone())?;
    Ok(Made {
        path: path.to_owned(),
        head,
        photos,
        bytes: file.metadata().map_err(target)?.len(),
        missing,
    })
}

/// An archive being written.
struct Writing<'a, 'b, 'c> {
    zip: Zip,
    apart: Apart,
    path: &'a Path,
    members: Vec<Listed>,
    count: Count<'b, 'c>,
}

impl Writing<'_, '_, '_> {
    fn begin(&mut self, name: &str) -> Result<(), BackupFault> {
        let options = SimpleFileOptions::default()
            .compression_method(CompressionMethod::Stored)
            .last_modified_time(zip::DateTime::default())
            .large_file(name == member::LEDGER)
            .unix_permissions(0o600);
        self.zip
            .start_file(name, options)
            .map_err(|error| self.fault(error.into()))
    }

    fn fault(&self, error: std::io::Error) -> BackupFault {
        BackupFault::target(self.path, &error)
    }

    fn ledger(&mut self, job: &Job) -> Result<Head, BackupFault> {
        self.begin(member::LEDGER)?;
        let path = self.path;
        let written = |error: std::io::Error| BackupFault::target(path, &error);
        let hashing = Hashing {
            out: &mut self.zip,
            hash: Sha256::new(),
            size: 0,
        };
        let mut lines = Writer::new(BufWriter::with_capacity(BUFFER, hashing));
        ledger::each_stored(job.reader.conn(), |seq, body, digest| {
            lines.entry(seq, body, digest).map_err(written)?;
            let bytes = u64::try_from(body.len()).unwrap_or(u64::MAX);
            Ok::<(), BackupFault>(self.count.add(bytes)?)
        })?;
        let (head, buffered) = lines.end().map_err(written)?;
        let hashing = buffered.into_inner();
        let hashing = hashing.map_err(|error| written(error.into_error()))?;
        self.members.push(Listed {
            name: member::LEDGER.to_owned(),
            size: hashing.size,
            sha256: seal::text(hashing.hash),
        });
        Ok(head)
    }

    /// Writes the photos that are there and whole; gives the others. They are read and held against
    /// their names ahead of the writing, on a thread of their own.
    fn photos(&mut self, photos: &Photos, named: &[String]) -> Result<Vec<String>, BackupFault> {
        std::thread::scope(|scope| {
            let (ahead, read) = std::sync::mpsc::sync_channel(AHEAD);
            scope.spawn(move || {
                for digest in named {
                    let mut bytes = Vec::new();
                    let file = photos.read(digest, &mut bytes).map(str::to_owned);
                    // Nobody waits for it any more where the writing has ended.
                    if ahead.send((digest, file, bytes)).is_err() {
                        break;
                    }
                }
            });
            let mut missing = Vec::new();
            for (digest, file, bytes) in read {
                match file {
                    Some(file) => self.photo(digest, &file, &bytes)?,
                    None => missing.push(digest.clone()),
                }
            }
            Ok(missing)
        })
    }

    fn photo(&mut self, digest: &str, file: &str, bytes: &[u8]) -> Result<(), BackupFault> {
        let name = member::of_photo(file);
        self.begin(&name)?;
        let written = self.apart.during(|| self.zip.write_all(bytes));
        written.map_err(|error| self.fault(error))?;
        let size = u64::try_from(bytes.len()).unwrap_or(u64::MAX);
        self.members.push(Listed {
            name,
            size,
            sha256: digest.to_owned(),
        });
        Ok(self.count.add(size)?)
    }

    /// Writes the manifest, the directory and the seal.
    fn end(mut self, job: &Job, head: Head, missing: Vec<String>) -> Result<File, BackupFault> {
        let manifest = Manifest {
            format: FORMAT,
            store: store::VERSION,
            program: env!("CARGO_PKG_VERSION").to_owned(),
            made: job.now.wall.to_rfc3339(),
            entries: head.seq,
            head: head.digest.to_string(),
            members: std::mem::take(&mut self.members),
            missing,
        };
        self.begin(member::MANIFEST)?;
        let path = self.path;
        let fault = |error: std::io::Error| BackupFault::target(path, &error);
        let text = manifest.write().map_err(fault)?;
        self.zip.write_all(text.as_bytes()).map_err(fault)?;
        let comment = Box::new(seal::EMPTY);
        let mut zip = self.zip;
        zip.set_raw_comment(comment)
            .map_err(|error| fault(error.into()))?;
        let sealing = zip.finish().map_err(|error| fault(error.into()))?;
        let output = sealing.into_inner().finish().map_err(fault)?;
        output.finish().map_err(fault)
    }
}

/// Hashes and counts what passes through.
struct Hashing<W> {
    out: W,
    hash: Sha256,
    size: u64,
}

impl<W: Write> Write for Hashing<W> {
    fn write(&mut self, bytes: &[u8]) -> std::io::Result<usize> {
        let done = self.out.write(bytes)?;
        let (hashed, _) = bytes.split_at_checked(done).unwrap_or((bytes, &[]));
        self.hash.update(hashed);
        self.size = self
            .size
            .saturating_add(u64::try_from(done).unwrap_or(u64::MAX));
        Ok(done)
    }

    fn flush(&mut self) -> std::io::Result<()> {
        self.out.flush()
    }
}
