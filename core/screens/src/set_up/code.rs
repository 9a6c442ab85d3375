//! The next free code for something new.

use baywalk_domain::rig::{Book, Code};

/// The next free code for a bay: a letter, and where all are taken, B and a number.
pub(super) fn bay(book: &Book) -> String {
    let letters = ('A'..='Z').map(|letter| letter.to_string());
    first_free(book, letters.chain((1_u32..).map(|n| format!("B{n}"))))
}

/// The next free code for a device in the bay that has a code: that code, D and a number.
pub(super) fn device(book: &Book, bay: &Code) -> String {
    first_free(book, (1_u32..).map(|n| format!("{bay}D{n}")))
}

/// The next free code for a point in the bay that has a code: that code and the next number, one
/// beyond the highest that was ever given there.
pub(super) fn point(book: &Book, bay: &Code) -> String {
    let number = |code: &Code| {
        code.as_str()
            .strip_prefix(bay.as_str())?
            .parse::<u32>()
            .ok()
    };
    let highest = book.codes().filter_map(number).max().unwrap_or(0);
    first_free(
        book,
        (highest.saturating_add(1)..).map(|n| format!("{bay}{n}")),
    )
}

fn first_free(book: &Book, mut codes: impl Iterator<Item = String>) -> String {
    let taken = |text: &str| book.codes().any(|code| code.as_str() == text);
    codes.find(|text| !taken(text)).unwrap_or_default()
}
