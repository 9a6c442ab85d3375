//! The texts themselves, read once for each language.

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource};
use std::sync::LazyLock;

/// A language of the catalogue.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Language {
    /// English, which every other language falls back to.
    English,
    /// Spanish as it is read in all of the Americas.
    Spanish,
}

type Bundle = FluentBundle<FluentResource>;

macro_rules! themes {
    ($($theme:literal),+ $(,)?) => {
        const ENGLISH: &[&str] = &[$(include_str!(concat!("../text/en/", $theme, ".ftl"))),+];
        const SPANISH: &[&str] = &[$(include_str!(concat!("../text/es/", $theme, ".ftl"))),+];
    };
}

themes!(
    "advice", "backup", "cautions", "codes", "faults", "files", "past", "photos", "plan",
    "refusals", "report", "set_up", "shell", "steps", "storage", "terminal", "timing", "units",
    "walk",
);

static ENGLISH_BUNDLE: LazyLock<Bundle> = LazyLock::new(|| bundle("en", ENGLISH));
static SPANISH_BUNDLE: LazyLock<Bundle> = LazyLock::new(|| bundle("es", SPANISH));

/// Reads the texts of a language. What can't be read is left out, and so falls back.
fn bundle(code: &str, texts: &[&str]) -> Bundle {
    let locale = code.parse().unwrap_or_default();
    let mut bundle = Bundle::new_concurrent(vec![locale]);
    bundle.set_use_isolating(false);
    for text in texts {
        let read = FluentResource::try_new((*text).to_owned());
        bundle.add_resource_overriding(read.unwrap_or_else(|(partly, _)| partly));
    }
    bundle
}

impl Language {
    /// The languages that there are.
    pub(crate) const ALL: [Self; 2] = [Self::English, Self::Spanish];

    /// The code of the language (ISO 639-1).
    pub(crate) const fn code(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::Spanish => "es",
        }
    }

    /// The text of a key, or of an attribute of it, with its arguments filled in; `None` where the
    /// language has none.
    pub(crate) fn text(
        self,
        key: &str,
        attribute: Option<&str>,
        args: Option<&FluentArgs<'_>>,
    ) -> Option<String> {
        let bundle: &Bundle = match self {
            Self::English => &ENGLISH_BUNDLE,
            Self::Spanish => &SPANISH_BUNDLE,
        };
        let message = bundle.get_message(key)?;
        let pattern = match attribute {
            Some(name) => message.get_attribute(name)?.value(),
            None => message.value()?,
        };
        let mut faults = Vec::new();
        Some(
            bundle
                .format_pattern(pattern, args, &mut faults)
                .into_owned(),
        )
    }
}
