//! Where an archive is written to, in the clear or wrapped.

use super::Passphrase;
use super::steady::Steady;
use std::fs::File;
use std::io::{BufWriter, Error, Write};

/// How much is gathered before it is written.
const BUFFER: usize = 64 * 1024;

/// A file that takes an archive.
pub(super) enum Output {
    /// In the clear.
    Plain(BufWriter<Steady>),
    /// Wrapped by a passphrase.
    Wrapped(Box<age::stream::StreamWriter<BufWriter<Steady>>>),
}

impl Output {
    pub(super) fn new(file: File, passphrase: Option<&Passphrase>) -> std::io::Result<Self> {
        let out = BufWriter::with_capacity(BUFFER, Steady::new(file)?);
        let Some(passphrase) = passphrase else {
            return Ok(Self::Plain(out));
        };
        let recipient = passphrase.to_write();
        let recipients = std::iter::once(&recipient as &dyn age::Recipient);
        let wrap = age::Encryptor::with_recipients(recipients).map_err(Error::other)?;
        Ok(Self::Wrapped(Box::new(wrap.wrap_output(out)?)))
    }

    /// Ends it; gives the file, synced.
    pub(super) fn finish(self) -> std::io::Result<File> {
        let out = match self {
            Self::Plain(out) => out,
            Self::Wrapped(wrapped) => wrapped.finish()?,
        };
        let steady = out.into_inner();
        steady.map_err(|error| error.into_error())?.finish()
    }
}

impl Write for Output {
    fn write(&mut self, bytes: &[u8]) -> std::io::Result<usize> {
        match self {
            Self::Plain(out) => out.write(bytes),
            Self::Wrapped(out) => out.write(bytes),
        }
    }

    fn flush(&mut self) -> std::io::Result<()> {
        match self {
            Self::Plain(out) => out.flush(),
            Self::Wrapped(out) => out.flush(),
        }
    }
}
