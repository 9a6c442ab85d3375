//! The catalogue of one language, as the rest of the core asks it.

use crate::catalogue::Language;
use crate::{Arg, arg, key};
use baywalk_domain::coded::Coded;
use unic_langid::LanguageIdentifier;

/// All text for people, in one language.
///
/// It is a small value that can be copied and shared between threads; the texts are read once.
///
/// # Example
/// ```
/// use baywalk_words::Words;
/// let words = Words::for_locales(&["fr-CA", "es-MX"]);
/// assert_eq!(words.locale(), "es");
/// assert_eq!(words.say("caution-pen-testers"),
///     "Los detectores de proximidad no prueban nada. Solo medidor de contacto.");
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Words {
    language: Language,
    pub(crate) mark: char,
}

/// Regions that write a comma before the fraction in Spanish; the others, North and Central America
/// above all, write a point (Unicode CLDR, from memory). Spanish without a region has the comma.
const COMMA_REGIONS: [&str; 11] = [
    "AR", "BO", "CL", "CO", "CR", "EC", "ES", "GQ", "PY", "UY", "VE",
];

impl Words {
    /// The first known language of a list of locales, such as `es-MX` or `en_US.UTF-8`; English
    /// where none is known.
    #[must_use]
    pub fn for_locales(wanted: &[&str]) -> Self {
        let known = wanted.iter().find_map(|locale| Self::for_locale(locale));
        known.unwrap_or(Self {
            language: Language::English,
            mark: '.',
        })
    }

    fn for_locale(locale: &str) -> Option<Self> {
        let bare = locale.split(['.', '@']).next()?;
        let id: LanguageIdentifier = bare.parse().ok()?;
        let of_id = |language: &Language| language.code() == id.language.as_str();
        let language = Language::ALL.into_iter().find(of_id)?;
        let comma = id
            .region
            .is_none_or(|region| COMMA_REGIONS.contains(&region.as_str()));
        let mark = if language == Language::Spanish && comma {
            ','
        } else {
            '.'
        };
        Some(Self { language, mark })
    }

    /// The code of the language in use: `en` or `es`.
    #[must_use]
    pub fn locale(&self) -> &'static str {
        self.language.code()
    }

    /// The text of a key. A key that the language lacks is told in English; one that English lacks
    /// too is told as itself in angle brackets, never as an error.
    #[must_use]
    pub fn say(&self, key: &str) -> String {
        self.fill(key, &[])
    }

    /// The text of a key with its arguments filled in; else as [`Words::say`].
    ///
    /// # Example
    /// ```
    /// use baywalk_words::Words;
    /// let words = Words::for_locales(&["en"]);
    /// assert_eq!(words.fill("caution-keep-out", &[("what", "control board".into())]),
    ///     "Keep out: control board");
    /// assert_eq!(words.say("no-such-key"), "<no-such-key>");
    /// ```
    #[must_use]
    pub fn fill(&self, key: &str, args: &[(&str, Arg<'_>)]) -> String {
        let args = arg::fluent(args);
        let told = |language: Language| language.text(key, None, Some(&args));
        told(self.language)
            .or_else(|| told(Language::English))
            .unwrap_or_else(|| format!("<{key}>"))
    }

    /// The text of a member of a coded list.
    ///
    /// # Example
    /// ```
    /// use baywalk_domain::walk::Grade;
    /// use baywalk_words::Words;
    /// assert_eq!(Words::for_locales(&["en"]).code(Grade::LookedAt), "Looked at");
    /// ```
    #[must_use]
    pub fn code<T: Coded>(&self, value: T) -> String {
        self.say(&key::of_code(T::NAME, value.code()))
    }

    /// What the catalogue says of a member of a coded list under an aspect beside its name.
    pub(crate) fn aspect<T: Coded>(&self, value: T, aspect: &str) -> String {
        let key = key::of_code(T::NAME, value.code());
        let told = |language: Language| language.text(&key, Some(aspect), None);
        told(self.language)
            .or_else(|| told(Language::English))
            .unwrap_or_else(|| format!("<{key}.{aspect}>"))
    }

    /// The text of a code of the domain that is no member of a coded list, such as a table's column.
    pub(crate) fn named_code(&self, list: &str, code: &str) -> String {
        self.say(&key::of_code(list, code))
    }
}

/// A text with its first letter as a capital, so that it can begin a sentence.
pub(crate) fn sentence(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().chain(letters).collect()
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_known_locale_is_taken() {
        let code = |wanted: &[&str]| Words::for_locales(wanted).locale();
        assert_eq!(code(&[]), "en");
        assert_eq!(code(&["de-DE", "es-419", "en"]), "es");
        assert_eq!(code(&["en_US.UTF-8", "es"]), "en");
        assert_eq!(code(&["C.UTF-8", "", "??"]), "en");
    }

    #[test]
    fn it_can_be_shared_between_threads() {
        fn shared<T: Send + Sync + Copy>() {}
        shared::<Words>();
    }
}
