//! Reads a whole rig from its two files.

use super::entry::Entry;
use super::records::Codes;
use super::row::rows;
use super::sink::Sink;
use super::{Fault, FaultKind, NamedText, point_reader, rig_reader};
use baywalk_domain::ids::ActId;
use baywalk_domain::rig::Book;
use toml::de::DeTable;

/// Reads a rig from its TOML file and the CSV file of its points.
///
/// The names of records for the machine are derived from the act and the people's codes, so that
/// the same files and act give the same book. Nothing is stored.
///
/// # Errors
/// Every [`Fault`] of both files, in the order of their text, the TOML file first; up to
/// [`MOST_FAULTS`](super::MOST_FAULTS) of each. A file that is too large or of a newer format is
/// told alone.
///
/// # Example
/// ```
/// use baywalk_domain::ids::ActId;
/// use baywalk_logbook::rigfile::{self, NamedText};
/// let toml = NamedText { name: "rig.toml", text: r#"
/// format = 1
/// rig = { name = "Wren", kind = "motorhome", service = "none" }
/// yearly = { months = 13 }
/// "# };
/// let csv = NamedText { name: "points.csv", text: "code,device,nam\n" };
/// let act: ActId = "0190f0c4-0000-7000-8000-000000000001".parse()?;
/// let faults = rigfile::read(&toml, &csv, act).unwrap_err();
/// let places: Vec<_> = faults.iter().map(|f| (f.line, f.column, f.field.as_str())).collect();
/// assert_eq!(places, [(4, 21, "months"), (1, 1, "name"), (1, 13, "nam")]);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn read(toml: &NamedText<'_>, csv: &NamedText<'_>, ids: ActId) -> Result<Book, Vec<Fault>> {
    let large: Vec<Fault> = [toml, csv]
        .into_iter()
        .filter_map(NamedText::too_large)
        .collect();
    if !large.is_empty() {
        return Err(large);
    }
    let (toml, csv) = (sink(toml), sink(csv));
    let book = both(&toml, &csv, ids);
    match book {
        Some(book) if toml.is_clean() && csv.is_clean() => whole(book, toml),
        _ => Err([toml.finish(), csv.finish()].concat()),
    }
}

/// Begins with a file, without the mark that some programs write at the start of UTF-8 text.
fn sink<'a>(file: &NamedText<'a>) -> Sink<'a> {
    let text = file.text.strip_prefix('\u{feff}').unwrap_or(file.text);
    Sink::new(NamedText { text, ..*file })
}

fn both(toml: &Sink<'_>, csv: &Sink<'_>, act: ActId) -> Option<Book> {
    let (document, errors) = DeTable::parse_recoverable(toml.text());
    for error in &errors {
        let offset = error.span().map_or(0, |span| span.start);
        let detail = error.message().to_owned();
        toml.fault(offset, "", FaultKind::Syntax { detail });
    }
    let top = Entry::document(document.get_ref(), toml);
    if !rig_reader::is_known(top) {
        return None;
    }
    top.judge_keys(rig_reader::TOP);
    let mut codes = Codes::new(errors.is_empty());
    let book = rig_reader::read(top, act, &mut codes);
    let mut points = Vec::new();
    rows(csv, |row| {
        points.extend(point_reader::read(row, act, &mut codes))
    });
    book.map(|book| Book { points, ..book })
}

/// Sees that the book holds together by the domain's own rules.
fn whole(book: Book, toml: Sink<'_>) -> Result<Book, Vec<Fault>> {
    match book.check_whole() {
        Ok(()) => Ok(book),
        Err(fault) => {
            toml.fault(0, "", fault);
            Err(toml.finish())
        }
    }
}
