//! Text that stays text.

/// The text with everything replaced that would end its place in SVG or HTML.
pub(super) fn escape(text: &str) -> String {
    let mut safe = String::with_capacity(text.len());
    for letter in text.chars() {
        match letter {
            '&' => safe.push_str("&#38;"),
            '<' => safe.push_str("&#60;"),
            '>' => safe.push_str("&#62;"),
            '"' => safe.push_str("&#34;"),
            '\'' => safe.push_str("&#39;"),
            '\n' | '\t' => safe.push(' '),
            _ if letter.is_control() => safe.push(char::REPLACEMENT_CHARACTER),
            _ => safe.push(letter),
        }
    }
    safe
}
