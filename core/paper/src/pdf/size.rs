//! Measures on paper: points of 1/72 inch, down and right from the upper left corner.

/// The paper that is printed on.
///
/// # Example
/// ```
/// use baywalk_paper::Paper;
/// assert_eq!(Paper::parse("letter"), Some(Paper::Letter));
/// assert_eq!(Paper::parse("napkin"), None);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Paper {
    /// 210 mm by 297 mm (ISO 216).
    A4,
    /// 8.5 in by 11 in.
    Letter,
}

impl Paper {
    /// Every paper.
    pub const ALL: [Self; 2] = [Self::A4, Self::Letter];

    /// Its name on a command line.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::A4 => "a4",
            Self::Letter => "letter",
        }
    }

    /// The paper of a name.
    #[must_use]
    pub fn parse(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|paper| paper.name() == name)
    }

    /// Width and height in points.
    pub(crate) const fn size(self) -> (f32, f32) {
        match self {
            Self::A4 => (595.28, 841.89),
            Self::Letter => (612.0, 792.0),
        }
    }
}

/// A measure of a drawing on paper.
#[expect(clippy::cast_possible_truncation, reason = "7 digits suffice")]
pub(crate) const fn points(measure: f64) -> f32 {
    measure as f32
}
