//! Writes a sheet as one self-contained HTML file.

use crate::drawn;
use crate::photo::Photos;
use crate::plain::shown;
use crate::sheet::{Block, Sheet};
use askama::Template;
use base64::Engine as _;
use base64::prelude::BASE64_STANDARD;
use std::fmt;
use std::io;

/// The page; its file extension makes the engine escape every text in it.
#[derive(Template)]
#[template(path = "sheet.html")]
struct Page<'a> {
    sheet: &'a Sheet,
    photos: &'a dyn Photos,
}

impl Page<'_> {
    /// A picture in base 64, where it is there.
    fn picture(&self, digest: &str) -> Option<String> {
        let bytes = self.photos.jpeg(digest)?;
        Some(BASE64_STANDARD.encode(bytes))
    }
}

impl Sheet {
    /// Writes one HTML file: style and photos inside, no script, no link, no other file. It reads on
    /// a phone 360 px wide and prints on A4 and letter.
    ///
    /// All text from people is escaped by the template engine; photos are the bytes that were handed
    /// over, in base 64 (RFC 4648).
    ///
    /// # Errors
    /// What the writer fails with.
    ///
    /// # Example
    /// ```no_run
    /// use baywalk_paper::photo::NoPhotos;
    /// # fn sheet() -> baywalk_paper::Sheet { todo!() }
    /// let mut page = Vec::new();
    /// sheet().html(&NoPhotos, &mut page)?;
    /// assert!(page.starts_with(b"<!DOCTYPE html>"));
    /// # Ok::<(), std::io::Error>(())
    /// ```
    pub fn html(&self, photos: &dyn Photos, out: &mut dyn io::Write) -> io::Result<()> {
        let mut plain = Plain { out, fault: None };
        let page = Page {
            sheet: self,
            photos,
        };
        let written = page.render_into(&mut plain);
        match (plain.fault, written) {
            (Some(fault), _) => Err(fault),
            (None, Err(fault)) => Err(io::Error::other(fault)),
            (None, Ok(())) => Ok(()),
        }
    }
}

/// Writes text on, with what may not be shown replaced.
struct Plain<'a> {
    out: &'a mut dyn io::Write,
    fault: Option<io::Error>,
}

impl fmt::Write for Plain<'_> {
    fn write_str(&mut self, text: &str) -> fmt::Result {
        let written = if text.chars().all(|letter| shown(letter) == letter) {
            self.out.write_all(text.as_bytes())
        } else {
            let text: String = text.chars().map(shown).collect();
            self.out.write_all(text.as_bytes())
        };
        written.map_err(|fault| {
            self.fault = Some(fault);
            fmt::Error
        })
    }
}
