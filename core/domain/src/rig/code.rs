//! The short words by which people call a bay, a point or a source.

/// A short word that people say, print and write for a record of a rig: bay `F`, point `F8`,
/// source `S2`. It is unique in a rig and never used twice.
///
/// # Example
/// ```
/// use baywalk_domain::rig::Code;
/// assert_eq!(Code::parse(" f8 ")?.as_str(), "F8");
/// assert!(Code::parse("F 8").is_err());
/// # Ok::<(), baywalk_domain::rig::CodeFault>(())
/// ```
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub struct Code(String);

/// Why a text is no code.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{found:?} is no code; expected one to eight letters and digits, such as F8")]
pub struct CodeFault {
    /// What was found.
    pub found: String,
}

impl Code {
    /// The most letters and digits of a code.
    pub const MOST: usize = 8;

    /// Reads a code; blanks around it are dropped and letters become capitals.
    ///
    /// # Errors
    /// [`CodeFault`] where it is empty, too long, or has another character.
    pub fn parse(text: &str) -> Result<Self, CodeFault> {
        let word = text.trim().to_ascii_uppercase();
        let fits = (1..=Self::MOST).contains(&word.len());
        if fits && word.bytes().all(|b| b.is_ascii_alphanumeric()) {
            Ok(Self(word))
        } else {
            Err(CodeFault {
                found: text.to_owned(),
            })
        }
    }

    /// The code as text.
    #[must_use]
    pub fn as_str(&self) -> &str {
        &self.0
    }

    /// Splits letters from the number behind them, so that F8 sorts before F10.
    fn parts(&self) -> (&str, u64) {
        let letters = self.0.trim_end_matches(|c: char| c.is_ascii_digit());
        let number = self.0.strip_prefix(letters).unwrap_or("");
        (letters, number.parse().unwrap_or(0))
    }
}

impl std::fmt::Display for Code {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(&self.0)
    }
}

impl Ord for Code {
    fn cmp(&self, other: &Self) -> std::cmp::Ordering {
        self.parts()
            .cmp(&other.parts())
            .then_with(|| self.0.cmp(&other.0))
    }
}

impl PartialOrd for Code {
    fn partial_cmp(&self, other: &Self) -> Option<std::cmp::Ordering> {
        Some(self.cmp(other))
    }
}
