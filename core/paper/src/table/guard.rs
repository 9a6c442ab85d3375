//! Keeping text of people from being run: a spreadsheet takes a cell that begins with one of
//! `=`, `+`, `-`, `@` for a formula.
//!
//! Where a cell could begin, an apostrophe is put before such a sign: at the start of the text, and
//! behind a semicolon, tab or line end in it, since a spreadsheet of another country parts cells
//! there. So it is before a tab or a carriage return at the start, which may be stripped. Blanks,
//! quotes and unseen signs between are passed over; the full-width signs count too. A text that is a
//! number as a whole stays as it is. [`plain`] takes the apostrophes away again.
//!
//! Signs and separators: OWASP, "CSV Injection" (from memory).

/// What makes a cell a formula.
const SIGNS: [char; 8] = ['=', '+', '-', '@', '＝', '＋', '－', '＠'];

/// Behind which a cell may begin.
const BREAKS: [char; 4] = [';', '\t', '\n', '\r'];

/// The text with an apostrophe before whatever would be run.
///
/// # Example
/// ```
/// use baywalk_paper::table::guard::{guarded, plain};
/// assert_eq!(guarded("=HYPERLINK(1)"), "'=HYPERLINK(1)");
/// assert_eq!(guarded("seen; -2 turns"), "seen;' -2 turns");
/// assert_eq!(guarded("-0.5"), "-0.5");
/// assert_eq!(guarded("'tis tight"), "'tis tight");
/// assert_eq!(plain("'=HYPERLINK(1)"), "=HYPERLINK(1)");
/// assert_eq!(plain(&guarded("''=1")), "''=1");
/// ```
#[must_use]
pub fn guarded(text: &str) -> String {
    if is_number(text) {
        return text.to_owned();
    }
    changed(text, |marks, out| {
        out.push('\'');
        out.push_str(marks);
    })
}

/// The text as it was before it was guarded.
#[must_use]
pub fn plain(cell: &str) -> String {
    changed(cell, |marks, out| {
        out.push_str(marks.strip_prefix('\'').unwrap_or(marks));
    })
}

/// Writes the apostrophes anew at each place where a formula would begin behind them.
fn changed(text: &str, write: impl Fn(&str, &mut String)) -> String {
    let mut out = String::with_capacity(text.len() + 1);
    for (place, cell) in text.split_inclusive(BREAKS).enumerate() {
        let rest = cell.trim_start_matches('\'');
        let (marks, rest) = cell.split_at(cell.len() - rest.len());
        let stripped = place == 0 && rest.starts_with(['\t', '\r']);
        if stripped || begins(rest) {
            write(marks, &mut out);
        } else {
            out.push_str(marks);
        }
        out.push_str(rest);
    }
    out
}

/// Whether a formula begins here, blanks, quotes and unseen signs passed over.
fn begins(cell: &str) -> bool {
    let unseen = |sign: char| {
        let invisible = matches!(sign, '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}');
        let mark = matches!(sign, '\u{2060}'..='\u{206f}' | '\u{feff}' | '\u{ad}' | '"');
        sign.is_whitespace() || sign.is_control() || invisible || mark
    };
    cell.trim_start_matches(unseen).starts_with(SIGNS)
}

/// Whether a text is a plain number as a whole: a sign, digits, a point, digits.
fn is_number(text: &str) -> bool {
    let digits = text.strip_prefix(['-', '+']).unwrap_or(text);
    let (whole, fraction) = digits.split_once('.').unwrap_or((digits, "0"));
    let all = |part: &str| !part.is_empty() && part.bytes().all(|digit| digit.is_ascii_digit());
    all(whole) && all(fraction)
}
