//! Whether an error is told in a whole sentence, in both languages.

use baywalk_logbook::store::StoreFault;
use baywalk_screens::Core;
use baywalk_words::Words;

/// Sees that a fault is told in whole sentences.
///
/// # Errors
/// What is told instead.
pub fn is_sentence(fault: &StoreFault) -> Result<(), String> {
    for language in ["en", "es"] {
        let words = Words::for_locales(&[language]);
        let said = Core::worded(&words, fault).sentence;
        if !is_whole(&said) {
            return Err(format!("{said:?} for {fault:?}"));
        }
    }
    Ok(())
}

/// Whether something said is a whole sentence, with nothing left to fill in.
#[must_use]
pub fn is_whole(said: &str) -> bool {
    let first = said.chars().next();
    let begins = first.is_some_and(|first| !first.is_lowercase());
    begins && said.ends_with('.') && !said.contains(['{', '}']) && said.len() >= 20
}
