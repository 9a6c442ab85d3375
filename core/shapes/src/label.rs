//! Short texts in a drawing, and how wide they are at most.

/// A short text in one line.
#[derive(Debug, Clone, PartialEq)]
pub struct Label {
    /// The text, as the caller gave it.
    pub text: String,
    /// Where its anchor lies.
    pub x: f64,
    /// Its baseline.
    pub y: f64,
    /// Which end of the text lies at `x`.
    pub anchor: Anchor,
    /// How large it is.
    pub size: Size,
}

/// Which part of a text lies at its place.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Anchor {
    /// Its beginning.
    Start,
    /// Its middle.
    Middle,
    /// Its end.
    End,
}

/// The sizes of text; figures have one width each.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Size {
    /// The least: words of the strip, scales.
    Least,
    /// The word on a tag or pin.
    Tag,
    /// Body.
    Body,
    /// Titles and units.
    Title,
    /// A reading.
    Reading,
    /// The torque.
    Torque,
}

impl Size {
    /// Height of the type at font scale 1.
    #[must_use]
    pub const fn height(self) -> f64 {
        match self {
            Self::Least => 14.0,
            Self::Tag => 15.0,
            Self::Body => 16.0,
            Self::Title => 26.0,
            Self::Reading => 72.0,
            Self::Torque => 112.0,
        }
    }

    /// Weight of the type, from 100 to 900.
    #[must_use]
    pub const fn weight(self) -> u16 {
        match self {
            Self::Reading | Self::Torque | Self::Least => 500,
            Self::Body | Self::Title => 600,
            Self::Tag => 700,
        }
    }

    /// How far the baseline lies under the middle of a capital letter.
    #[must_use]
    pub const fn drop(self) -> f64 {
        self.height() * 0.36
    }
}

/// How wide a text is at most, whatever plain face the system has: as in a wide sans, bold.
///
/// # Example
/// ```
/// use baywalk_shapes::{Size, width_of};
/// assert!(width_of("MMM", Size::Tag) > width_of("ill", Size::Tag));
/// ```
#[must_use]
pub fn width_of(text: &str, size: Size) -> f64 {
    text.chars().map(share).sum::<f64>() * size.height()
}

/// The text, cut with an ellipsis where it is wider than there is room; empty where there is none.
#[must_use]
pub fn cut(text: &str, size: Size, room: f64) -> String {
    if width_of(text, size) <= room {
        return text.to_owned();
    }
    let mut left = room - width_of("…", size);
    if left < 0.0 {
        return String::new();
    }
    let fits = text.chars().take_while(|letter| {
        left -= share(*letter) * size.height();
        left >= 0.0
    });
    let kept: String = fits.collect();
    format!("{}…", kept.trim_end())
}

/// Width of a letter as a share of the type's height.
const fn share(letter: char) -> f64 {
    match letter {
        'i' | 'j' | 'l' | 'I' | '.' | ',' | ':' | ';' | '\'' | '|' | '!' | ' ' => 0.4,
        'f' | 'r' | 't' | '(' | ')' | '-' | '/' => 0.5,
        'm' | 'w' | 'M' | 'W' | '@' | '%' | '…' => 1.1,
        'A'..='Z' => 0.85,
        ' '..='~' => 0.72,
        '\u{a0}'..='\u{24f}' => 0.8,
        _ => 1.1,
    }
}
