//! Writes a sheet as a PDF that can be read aloud, searched, and printed without colour.

mod blocks;
mod cell;
mod counts;
mod drawing;
mod emit;
mod faces;
mod flow;
mod ink;
mod labels;
mod line;
mod photos;
mod setter;
mod size;
mod stack;
mod table;
mod tree;

pub use size::Paper;

pub(crate) use labels::labels;

use crate::photo::Photos;
use crate::sheet::Sheet;
use baywalk_words::{Arg, Words};
use setter::Setter;
use std::fmt;

/// What a file says of itself.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Front<'a> {
    pub(crate) title: &'a str,
    pub(crate) language: &'a str,
    /// The edition of the software.
    pub(crate) edition: &'a str,
    /// What makes the file the same one when it is made again.
    pub(crate) identity: &'a str,
    /// What stands at the foot of each page.
    pub(crate) foot: &'a str,
}

/// Why no PDF was written: a fault of this program, since no text or photo can cause one.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Unwritten(pub String);

impl fmt::Display for Unwritten {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl std::error::Error for Unwritten {}

impl Sheet {
    /// The sheet as PDF: tagged, with bookmarks and embedded type, in black, grey and white. Photos
    /// are the bytes that are handed over; each is asked for twice, so that no two are held at once
    /// beside the file. The same sheet makes the same bytes.
    ///
    /// # Errors
    /// [`Unwritten`], which is a fault of this program.
    pub fn pdf(
        &self,
        paper: Paper,
        words: &Words,
        photos: &dyn Photos,
    ) -> Result<Vec<u8>, Unwritten> {
        let mut setter = Setter::new(paper, photos)?;
        setter.head(&self.title, &self.under);
        for part in &self.parts {
            setter.part(part);
        }
        setter.foot(&self.foot);
        setter.lacking(words);
        let front = Front {
            title: &self.title,
            language: &self.language,
            edition: &self.edition,
            identity: &self.identity,
            foot: &self.title,
        };
        setter.emit(words, &front)
    }
}

/// The number of a page in words.
fn numbered(words: &Words, page: usize, pages: usize) -> String {
    let args = [("page", Arg::from(page)), ("pages", Arg::from(pages))];
    words.fill("report-page", &args)
}
