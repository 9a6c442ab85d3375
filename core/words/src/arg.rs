//! What is filled into a text.

use fluent_bundle::{FluentArgs, FluentValue};
use std::borrow::Cow;

/// One thing that is filled into a text: words, or a whole number that can decide a plural.
///
/// Other numbers are given as words, made by [`Words::number`](crate::Words::number).
///
/// # Example
/// ```
/// use baywalk_words::Arg;
/// assert_eq!(Arg::from("F8"), Arg::Text("F8".into()));
/// assert_eq!(Arg::from(3), Arg::Whole(3));
/// ```
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Arg<'a> {
    /// Words.
    Text(Cow<'a, str>),
    /// A whole number.
    Whole(i64),
}

impl<'a> From<&'a str> for Arg<'a> {
    fn from(text: &'a str) -> Self {
        Self::Text(Cow::Borrowed(text))
    }
}

impl<'a> From<&'a String> for Arg<'a> {
    fn from(text: &'a String) -> Self {
        Self::Text(Cow::Borrowed(text))
    }
}

impl From<String> for Arg<'_> {
    fn from(text: String) -> Self {
        Self::Text(Cow::Owned(text))
    }
}

macro_rules! whole {
    ($($kind:ty),+) => {$(
        impl From<$kind> for Arg<'_> {
            fn from(number: $kind) -> Self {
                Self::Whole(i64::from(number))
            }
        }
    )+};
}

whole!(u8, u16, u32, i32, i64);

macro_rules! count {
    ($($kind:ty),+) => {$(
        impl From<$kind> for Arg<'_> {
            /// A count; one beyond what 64 bits with a sign hold is cut there.
            fn from(number: $kind) -> Self {
                Self::Whole(i64::try_from(number).unwrap_or(i64::MAX))
            }
        }
    )+};
}

count!(usize, u64);

/// Hands the arguments over to the formatter.
pub(crate) fn fluent<'a>(args: &'a [(&'a str, Arg<'a>)]) -> FluentArgs<'a> {
    args.iter()
        .map(|(name, arg)| {
            let value = match arg {
                Arg::Text(text) => FluentValue::from(text.as_ref()),
                Arg::Whole(number) => FluentValue::from(*number),
            };
            (*name, value)
        })
        .collect()
}
