//! Reading lines, each held against the line before.

use super::{DIGEST, END, ENTRY, LineFault, LinesFault, MOST_LINE, SEQ};
use crate::ledger::{self, Digest, Head};
use baywalk_domain::walk::Entry;
use std::io::{BufRead, Read};

/// One entry of a file of lines, checked.
#[derive(Debug)]
pub struct Line {
    /// The entry.
    pub entry: Entry,
    /// Its number and digest.
    pub head: Head,
    pub(crate) body: String,
    pub(crate) version: u32,
}

/// Reads lines one by one and sees that each hangs on the one before; ends behind the end line.
#[derive(Debug)]
pub struct Lines<R> {
    from: R,
    line: u64,
    head: Head,
    text: Vec<u8>,
    ended: bool,
}

impl<R: BufRead> Lines<R> {
    /// Reads from the start of a ledger.
    #[must_use]
    pub const fn new(from: R) -> Self {
        Self {
            from,
            line: 0,
            head: Head::START,
            text: Vec::new(),
            ended: false,
        }
    }

    /// The last entry that was read.
    #[must_use]
    pub const fn head(&self) -> Head {
        self.head
    }

    fn next_line(&mut self) -> Result<Option<Line>, LineFault> {
        self.line = self.line.saturating_add(1);
        self.text.clear();
        let most = u64::try_from(MOST_LINE).unwrap_or(u64::MAX);
        let mut part = Read::take(&mut self.from, most.saturating_add(1));
        part.read_until(b'\n', &mut self.text)
            .map_err(|error| LineFault::Unread(error.to_string()))?;
        if self.text.is_empty() {
            return Err(LineFault::Cut);
        }
        if self.text.len() > MOST_LINE {
            return Err(LineFault::TooLong { most: MOST_LINE });
        }
        let text = self.text.strip_suffix(b"\n").ok_or(LineFault::Cut)?;
        let text = str::from_utf8(text).map_err(|_| LineFault::Form)?;
        match text.strip_prefix(END) {
            Some(end) => {
                ends(end, self.head)?;
                self.ended = true;
                let behind = self.from.fill_buf();
                match behind.map_err(|error| LineFault::Unread(error.to_string()))? {
                    [] => Ok(None),
                    _ => Err(LineFault::Behind),
                }
            }
            None => {
                let line = line(text, self.head)?;
                self.head = line.head;
                Ok(Some(line))
            }
        }
    }
}

impl<R: BufRead> Iterator for Lines<R> {
    type Item = Result<Line, LinesFault>;

    fn next(&mut self) -> Option<Self::Item> {
        if self.ended {
            return None;
        }
        let read = self.next_line().map_err(|why| LinesFault {
            line: self.line,
            why,
        });
        self.ended |= read.is_err();
        read.transpose()
    }
}

/// Reads one entry behind a head.
fn line(text: &str, before: Head) -> Result<Line, LineFault> {
    let rest = text.strip_prefix(DIGEST).ok_or(LineFault::Form)?;
    let (said, rest) = rest.split_at_checked(64).ok_or(LineFault::Form)?;
    let said = Digest::read(said).ok_or(LineFault::Form)?;
    let rest = rest.strip_prefix(ENTRY).ok_or(LineFault::Form)?;
    let body = rest.strip_suffix('}').ok_or(LineFault::Form)?;
    let head = before.then(body.as_bytes());
    if head.digest != said {
        // What can't be an entry says more than its digest does.
        ledger::versioned(body)?;
        let (found, expected) = (said, head.digest);
        return Err(LineFault::Digest { found, expected });
    }
    let canonical = |value: &serde_json::Value| serde_json_canonicalizer::to_string(value);
    let value: serde_json::Value =
        serde_json::from_str(body).map_err(|error| ledger::EntryFault::Form(error.to_string()))?;
    if !canonical(&value).is_ok_and(|text| text == body) {
        return Err(LineFault::NotCanonical);
    }
    let (version, numbered) = ledger::versioned(body)?;
    if numbered.seq != head.seq {
        return Err(LineFault::Number {
            found: numbered.seq,
            expected: head.seq,
        });
    }
    Ok(Line {
        entry: numbered.entry,
        head,
        version,
        body: body.to_owned(),
    })
}

/// Sees that the end names the last entry.
fn ends(text: &str, head: Head) -> Result<(), LineFault> {
    let (said, rest) = text.split_at_checked(64).ok_or(LineFault::Form)?;
    let said = Digest::read(said).ok_or(LineFault::Form)?;
    let rest = rest.strip_prefix(SEQ).ok_or(LineFault::Form)?;
    let seq = rest.strip_suffix("}}").ok_or(LineFault::Form)?;
    if said == head.digest && seq == head.seq.to_string() {
        Ok(())
    } else {
        Err(LineFault::End)
    }
}
