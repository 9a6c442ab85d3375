//! Where an archive is read from, in the clear or wrapped.

use super::passphrase::MOST_WORK;
use super::{ArchiveFault, Passphrase};
use age::DecryptError;
use std::fs::File;
use std::io::{Read, Seek, SeekFrom};
use std::path::Path;

/// How every wrapped file begins (the age format, version 1).
const WRAPPED: &[u8] = b"age-encryption.org/";

/// A file that holds an archive.
pub(super) enum Input {
    /// In the clear.
    Plain(File),
    /// Wrapped by a passphrase.
    Wrapped(Box<age::stream::StreamReader<File>>),
}

impl Input {
    /// Opens a file.
    pub(super) fn open(path: &Path, passphrase: Option<&Passphrase>) -> Result<Self, ArchiveFault> {
        let mut file = File::open(path)?;
        let mut begin = Vec::new();
        let length = u64::try_from(WRAPPED.len()).unwrap_or(u64::MAX);
        Read::take(&mut file, length).read_to_end(&mut begin)?;
        file.seek(SeekFrom::Start(0))?;
        if begin != WRAPPED {
            return Ok(Self::Plain(file));
        }
        let passphrase = passphrase.ok_or(ArchiveFault::NeedsPassphrase)?;
        unwrap(file, passphrase).map(|reader| Self::Wrapped(Box::new(reader)))
    }
}

fn unwrap(
    file: File,
    passphrase: &Passphrase,
) -> Result<age::stream::StreamReader<File>, ArchiveFault> {
    let broken = |fault: DecryptError| match fault {
        DecryptError::DecryptionFailed
        | DecryptError::KeyDecryptionFailed
        | DecryptError::NoMatchingKeys => ArchiveFault::WrongPassphrase,
        DecryptError::ExcessiveWork { required, .. } => ArchiveFault::TooMuchWork {
            found: required,
            most: MOST_WORK,
        },
        other => ArchiveFault::NotAnArchive(other.to_string()),
    };
    let wrapped = age::Decryptor::new(file).map_err(broken)?;
    let identity = passphrase.to_read();
    let identities = std::iter::once(&identity as &dyn age::Identity);
    wrapped.decrypt(identities).map_err(broken)
}

impl Read for Input {
    fn read(&mut self, bytes: &mut [u8]) -> std::io::Result<usize> {
        match self {
            Self::Plain(file) => file.read(bytes),
            Self::Wrapped(reader) => reader.read(bytes),
        }
    }
}

impl Seek for Input {
    fn seek(&mut self, to: SeekFrom) -> std::io::Result<u64> {
        match self {
            Self::Plain(file) => file.seek(to),
            Self::Wrapped(reader) => reader.seek(to),
        }
    }
}
