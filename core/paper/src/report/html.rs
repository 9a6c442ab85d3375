//! Writes a sheet as one self-contained HTML file.

use super::Facts;
use crate::drawn;
use crate::sheet::{Block, Sheet};
use askama::Template;
use baywalk_words::Words;

/// The page; its file extension makes the engine escape every text in it.
#[derive(Template)]
#[template(path = "report.html")]
struct Page {
    sheet: Sheet,
}

/// The report of a walk as one HTML file: style inside, no script, no link, no other file. It reads
/// on a phone 360 px wide and prints on A4 and letter.
///
/// All text from people is escaped by the template engine.
///
/// # Example
/// ```no_run
/// # fn facts() -> (baywalk_paper::report::Facts<'static>, baywalk_words::Words) { todo!() }
/// let (facts, words) = facts();
/// let page = baywalk_paper::report::html(&facts, &words);
/// assert!(page.starts_with("<!DOCTYPE html>"));
/// ```
#[must_use]
pub fn html(facts: &Facts<'_>, words: &Words) -> String {
    let page = Page {
        sheet: super::sheet(facts, words),
    };
    // Writing to a string can't fail; an engine that failed all the same leaves an empty page.
    let page = page.render().unwrap_or_default();
    page.chars().map(shown).collect()
}

/// A character as it may be shown: one that is no sign of its own but would turn the order of what
/// stands around it, or that HTML does not allow, is shown as replaced.
fn shown(letter: char) -> char {
    match letter {
        '\n' | '\t' => letter,
        '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' => char::REPLACEMENT_CHARACTER,
        _ if letter.is_control() => char::REPLACEMENT_CHARACTER,
        _ => letter,
    }
}
