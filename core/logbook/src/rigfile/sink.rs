//! Collects the faults of one file and turns their offsets into lines and columns.

use super::{Fault, FaultKind, Limit, MOST_FAULTS, NamedText};
use std::cell::RefCell;

/// A fault at a byte of the text.
struct Raw {
    offset: usize,
    field: String,
    kind: FaultKind,
}

/// One file's text and the faults found in it so far.
pub(super) struct Sink<'a> {
    file: NamedText<'a>,
    /// Byte offset of each line's first character.
    starts: Vec<usize>,
    found: RefCell<Vec<Raw>>,
    untold: RefCell<usize>,
}

impl<'a> Sink<'a> {
    /// Begins with a text and no faults.
    pub(super) fn new(file: NamedText<'a>) -> Self {
        Self {
            file,
            starts: line_starts(file.text),
            found: RefCell::default(),
            untold: RefCell::default(),
        }
    }

    /// The text.
    pub(super) fn text(&self) -> &'a str {
        self.file.text
    }

    /// The name of the file.
    pub(super) fn name(&self) -> &'a str {
        self.file.name
    }

    /// Notes a fault of a key or cell that begins at a byte.
    pub(super) fn fault(&self, offset: usize, field: &str, kind: impl Into<FaultKind>) {
        let mut found = self.found.borrow_mut();
        if found.len() >= MOST_FAULTS {
            *self.untold.borrow_mut() += 1;
            return;
        }
        found.push(Raw {
            offset,
            field: field.to_owned(),
            kind: kind.into(),
        });
    }

    /// Whether no fault was noted.
    pub(super) fn is_clean(&self) -> bool {
        self.found.borrow().is_empty()
    }

    /// The line of a byte, from 1.
    pub(super) fn line(&self, offset: usize) -> u32 {
        u32::try_from(self.starts.partition_point(|start| *start <= offset)).unwrap_or(u32::MAX)
    }

    /// The line and column of a byte, both from 1.
    pub(super) fn place(&self, offset: usize) -> (u32, u32) {
        let before = self.starts.partition_point(|start| *start <= offset);
        let start = before
            .checked_sub(1)
            .and_then(|index| self.starts.get(index))
            .copied()
            .unwrap_or(0);
        (self.line(offset), count(self.file.text, start, offset) + 1)
    }

    /// All faults in the order of the text.
    ///
    /// Columns are counted on from fault to fault, so that one line with many faults is read once.
    pub(super) fn finish(self) -> Vec<Fault> {
        let mut raws = self.found.take();
        raws.sort_by_key(|raw| raw.offset);
        let mut faults = Vec::with_capacity(raws.len());
        let mut last: Option<(usize, u32, u32)> = None;
        for raw in raws {
            let line = self.line(raw.offset);
            let column = match last {
                Some((offset, at, column)) if at == line => {
                    column + count(self.file.text, offset, raw.offset)
                }
                _ => self.place(raw.offset).1,
            };
            last = Some((raw.offset, line, column));
            faults.push(Fault {
                file: self.file.name.to_owned(),
                line,
                column,
                field: raw.field,
                kind: raw.kind,
            });
        }
        let untold = self.untold.take();
        if untold > 0 {
            faults.push(more(self.file.name, faults.len() + untold));
        }
        faults
    }
}

/// The fault that stands for those that are not told.
fn more(file: &str, found: usize) -> Fault {
    Fault {
        file: file.to_owned(),
        line: 1,
        column: 1,
        field: String::new(),
        kind: FaultKind::TooMany {
            what: Limit::Faults,
            found,
            most: MOST_FAULTS,
        },
    }
}

/// Characters between two bytes; 0 where they are out of order or inside a character.
fn count(text: &str, from: usize, to: usize) -> u32 {
    let characters = text.get(from..to).map_or(0, |part| part.chars().count());
    u32::try_from(characters).unwrap_or(u32::MAX)
}

/// Where lines begin: behind `\n`, and behind a `\r` that no `\n` follows.
fn line_starts(text: &str) -> Vec<usize> {
    let mut starts = vec![0];
    let mut bytes = text.bytes().enumerate().peekable();
    while let Some((index, byte)) = bytes.next() {
        let lone_return = byte == b'\r' && bytes.peek().is_none_or(|(_, next)| *next != b'\n');
        if byte == b'\n' || lone_return {
            starts.push(index + 1);
        }
    }
    starts
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn counts_lines_and_characters_not_bytes() {
        let text = "añb\r\nc\rd\n";
        let sink = Sink::new(NamedText { name: "x", text });
        assert_eq!(sink.place(0), (1, 1));
        assert_eq!(sink.place(3), (1, 3));
        assert_eq!(sink.place(text.find('c').unwrap()), (2, 1));
        assert_eq!(sink.place(text.find('d').unwrap()), (3, 1));
        assert_eq!(sink.place(text.len()), (4, 1));
    }

    #[test]
    fn tells_faults_in_order_and_says_when_there_are_more() {
        let sink = Sink::new(NamedText {
            name: "x",
            text: "abc\ndef",
        });
        sink.fault(6, "b", FaultKind::Missing);
        for _ in 0..MOST_FAULTS + 1 {
            sink.fault(1, "a", FaultKind::Missing);
        }
        let faults = sink.finish();
        assert_eq!(faults.len(), MOST_FAULTS + 1);
        assert_eq!((faults[0].line, faults[0].column), (1, 2));
        let told = &faults[MOST_FAULTS - 1];
        assert_eq!((told.line, told.column, told.field.as_str()), (2, 3, "b"));
        assert!(matches!(
            faults[MOST_FAULTS].kind,
            FaultKind::TooMany { what: Limit::Faults, found, .. } if found == MOST_FAULTS + 2
        ));
    }
}
