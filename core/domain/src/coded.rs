//! Closed lists of named values, each with the code under which it is stored and written in files.

/// A closed list whose members each have one stable code.
///
/// Codes are lower-case words joined by underscores. They stand in rig files, scripts and the
/// ledger, so they never change once published.
///
/// # Example
/// ```
/// use baywalk_domain::coded::Coded;
/// use baywalk_domain::rig::Side;
/// assert_eq!(Side::Left.code(), "left");
/// assert_eq!(Side::from_code("left"), Ok(Side::Left));
/// assert!(Side::from_code("starboard").is_err());
/// ```
pub trait Coded: Copy + Eq + Sized + 'static {
    /// What the list is called in messages and message keys, such as `side`.
    const NAME: &'static str;
    /// Every member, in the order in which it is offered.
    const ALL: &'static [Self];
    /// The stable code of this member.
    fn code(self) -> &'static str;

    /// Finds the member with a code.
    ///
    /// # Errors
    /// [`UnknownCode`] with the codes that would have been accepted.
    fn from_code(code: &str) -> Result<Self, UnknownCode> {
        Self::ALL
            .iter()
            .copied()
            .find(|member| member.code() == code)
            .ok_or_else(|| UnknownCode {
                list: Self::NAME,
                found: code.to_owned(),
                expected: Self::ALL.iter().map(|member| member.code()).collect(),
            })
    }
}

/// A word that is not in the list where it stood.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{found:?} is no {list}; expected one of {expected:?}")]
pub struct UnknownCode {
    /// The name of the list.
    pub list: &'static str,
    /// What stood there.
    pub found: String,
    /// The codes of the list.
    pub expected: Vec<&'static str>,
}

/// Declares a closed list and its codes in one place.
macro_rules! coded {
    ($(#[$meta:meta])* $name:ident as $list:literal { $($(#[$doc:meta])* $variant:ident = $code:literal),+ $(,)? }) => {
        $(#[$meta])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
        pub enum $name { $($(#[$doc])* $variant),+ }

        impl $crate::coded::Coded for $name {
            const NAME: &'static str = $list;
            const ALL: &'static [Self] = &[$(Self::$variant),+];
            fn code(self) -> &'static str {
                match self { $(Self::$variant => $code),+ }
            }
        }
    };
}
pub(crate) use coded;
