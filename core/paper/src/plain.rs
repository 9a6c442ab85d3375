//! Text as it may stand on paper, whatever stands in it.

/// A character as it may be shown: one that is no sign of its own but would turn the order of what
/// stands around it, or that neither HTML nor PDF allows, is shown as replaced.
pub(crate) fn shown(letter: char) -> char {
    match letter {
        '\n' | '\t' => letter,
        '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{feff}' => {
            char::REPLACEMENT_CHARACTER
        }
        _ if letter.is_control() || is_no_character(letter) => char::REPLACEMENT_CHARACTER,
        _ => letter,
    }
}

/// Whether the code point is one that Unicode gives to no character for ever (section 23.7).
fn is_no_character(letter: char) -> bool {
    let code = u32::from(letter);
    (0xfdd0..=0xfdef).contains(&code) || code & 0xfffe == 0xfffe
}

#[cfg(test)]
mod tests {
    use super::shown;

    #[test]
    fn what_would_turn_or_break_a_line_is_replaced() {
        for letter in [
            '\0',
            '\u{202e}',
            '\u{feff}',
            '\u{fffe}',
            '\u{1ffff}',
            '\u{85}',
        ] {
            assert_eq!(shown(letter), '\u{fffd}', "{letter:?}");
        }
        for letter in ['a', 'ñ', 'Ω', '\n', '\u{200d}', '😀', 'ע'] {
            assert_eq!(shown(letter), letter);
        }
    }
}
