//! Where the cells of a row begin, also in quoted rows over several lines.

/// The cells of one row, found in the text.
pub(super) struct Cells {
    /// Byte offset of each cell's first character, its quotation mark included.
    pub(super) starts: Vec<usize>,
    /// Whether a quotation mark is open at the end of the text.
    pub(super) open_quote: bool,
}

/// Where in a cell the reading stands.
#[derive(PartialEq)]
enum At {
    Start,
    Plain,
    Quoted,
    /// Behind a quotation mark in a quoted cell: its end, or the first of a doubled one.
    Mark,
}

/// Finds the cells of the row that begins at or behind a byte; line ends before it are skipped.
///
/// The rules are those of RFC 4180 as the `csv` crate reads them: a quotation mark opens only as
/// the first character of a cell, and a doubled one inside stands for itself.
pub(super) fn cells(text: &str, from: usize) -> Cells {
    let rest = text.get(from..).unwrap_or_default();
    let row = rest.trim_start_matches(['\r', '\n']);
    let begin = from + (rest.len() - row.len());
    let mut starts = vec![begin];
    let mut at = At::Start;
    for (index, byte) in row.bytes().enumerate() {
        at = match (at, byte) {
            (At::Start, b'"') | (At::Mark, b'"') => At::Quoted,
            (At::Quoted, b'"') => At::Mark,
            (At::Quoted, _) => At::Quoted,
            (_, b',') => {
                starts.push(begin + index + 1);
                At::Start
            }
            (_, b'\r' | b'\n') => {
                at = At::Plain;
                break;
            }
            _ => At::Plain,
        };
    }
    Cells {
        starts,
        open_quote: at == At::Quoted,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn finds_cells_behind_quoted_lines_and_commas() {
        let text = "a,b\r\n\r\n\"one\n\"\"two\"\", three\",x,\"y\"\nz";
        let second = cells(text, 3);
        let x = text.find('x').unwrap();
        assert_eq!(second.starts, [text.find("\"one").unwrap(), x, x + 2]);
        assert!(!second.open_quote);
        assert!(cells("a,\"b\nc", 0).open_quote);
    }

    proptest! {
        #![proptest_config(ProptestConfig { failure_persistence: None, cases: 2000, ..Default::default() })]
        #[test]
        fn agrees_with_the_csv_crate(text in "[a\",\r\n é]{0,40}") {
            let mut reader = csv::ReaderBuilder::new()
                .has_headers(false)
                .flexible(true)
                .from_reader(text.as_bytes());
            let mut record = csv::StringRecord::new();
            while reader.read_record(&mut record).unwrap() {
                let from = usize::try_from(record.position().unwrap().byte()).unwrap();
                let found = cells(&text, from);
                prop_assert_eq!(found.starts.len(), record.len(), "{:?} {:?}", record, found.starts);
                for (start, cell) in found.starts.iter().zip(&record) {
                    let head = text.get(*start..).unwrap().trim_start_matches('"');
                    let first = cell.trim_start_matches('"').chars().next();
                    prop_assert!(first.is_none() || head.chars().next() == first);
                }
            }
        }
    }
}
