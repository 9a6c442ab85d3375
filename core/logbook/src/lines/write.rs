//! Writing lines.

use super::{DIGEST, END, ENTRY, SEQ};
use crate::ledger::{Digest, Head};
use std::io::Write;

/// Writes entries as lines.
#[derive(Debug)]
pub(crate) struct Writer<W> {
    out: W,
    head: Head,
}

impl<W: Write> Writer<W> {
    pub(crate) const fn new(out: W) -> Self {
        Self {
            out,
            head: Head::START,
        }
    }

    /// Writes the next entry.
    pub(crate) fn entry(&mut self, seq: u64, body: &str, digest: Digest) -> std::io::Result<()> {
        self.head = Head { seq, digest };
        writeln!(self.out, "{DIGEST}{digest}{ENTRY}{body}}}")
    }

    /// Writes the end; gives the last entry.
    pub(crate) fn end(mut self) -> std::io::Result<(Head, W)> {
        let Head { seq, digest } = self.head;
        writeln!(self.out, "{END}{digest}{SEQ}{seq}}}}}")?;
        Ok((self.head, self.out))
    }
}
