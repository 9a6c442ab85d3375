//! The seal: a digest over everything in an archive but the bytes of the photos, each of which has
//! its own. It stands as the archive's comment, in its last 64 bytes, so that no byte of a backup
//! can change, be added or be cut off unseen.

use sha2::{Digest, Sha256};
use std::cell::Cell;
use std::io::Write;
use std::rc::Rc;

/// The length of the seal.
pub(super) const LENGTH: usize = 64;

/// What stands in place of the seal until it is known.
pub(super) const EMPTY: [u8; LENGTH] = [b'0'; LENGTH];

/// Whether bytes count for the seal now.
#[derive(Debug, Clone, Default)]
pub(super) struct Apart(Rc<Cell<bool>>);

impl Apart {
    /// Does something whose bytes do not count.
    pub(super) fn during<T>(&self, work: impl FnOnce() -> T) -> T {
        self.0.set(true);
        let done = work();
        self.0.set(false);
        done
    }
}

/// Hands bytes on and puts the seal in place of the last ones.
pub(super) struct Sealing<W> {
    out: W,
    apart: Apart,
    seal: Sha256,
    /// What was not handed on yet, as it may be the place of the seal.
    tail: Vec<u8>,
}

impl<W: Write> Sealing<W> {
    pub(super) fn new(out: W, apart: Apart) -> Self {
        Self {
            out,
            apart,
            seal: Sha256::new(),
            tail: Vec::new(),
        }
    }

    /// Writes the seal; gives where it was written to.
    pub(super) fn finish(mut self) -> std::io::Result<W> {
        if self.tail != EMPTY {
            return Err(std::io::Error::other("the seal has no place"));
        }
        self.out.write_all(text(self.seal).as_bytes())?;
        Ok(self.out)
    }

    fn hand_on(&mut self, keep: usize) -> std::io::Result<()> {
        let ready = self.tail.len().saturating_sub(keep);
        if let Some(bytes) = self.tail.get(..ready).filter(|bytes| !bytes.is_empty()) {
            self.seal.update(bytes);
            self.out.write_all(bytes)?;
            self.tail.drain(..ready);
        }
        Ok(())
    }
}

impl<W: Write> Write for Sealing<W> {
    fn write(&mut self, bytes: &[u8]) -> std::io::Result<usize> {
        if self.apart.0.get() {
            self.hand_on(0)?;
            self.out.write_all(bytes)?;
        } else {
            self.tail.extend_from_slice(bytes);
            self.hand_on(LENGTH)?;
        }
        Ok(bytes.len())
    }

    fn flush(&mut self) -> std::io::Result<()> {
        self.out.flush()
    }
}

/// A digest as it stands in an archive.
pub(super) fn text(digest: Sha256) -> String {
    crate::ledger::Digest::from_bytes(&digest.finalize())
        .map(|digest| digest.to_string())
        .unwrap_or_default()
}
