//! What a part is there for; shells and paper give each role its colour.

/// What a part of a drawing is there for. A role is no state: states are told by shape.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Role {
    /// Text and lines that say what is so.
    Ink,
    /// Lines of detail.
    Detail,
    /// Dividing hairlines; never the only carrier of anything.
    Hair,
    /// The ground.
    Plate,
    /// The face of keys and bays.
    Face,
    /// Where the hand goes next, and nothing else.
    Next,
    /// Text and lines on [`Role::Next`].
    OnNext,
    /// The ground of a caution, and of what was chosen.
    Caution,
    /// Text and lines on [`Role::Caution`].
    OnCaution,
}

impl Role {
    /// Every role.
    pub const ALL: [Self; 9] = [
        Self::Ink,
        Self::Detail,
        Self::Hair,
        Self::Plate,
        Self::Face,
        Self::Next,
        Self::OnNext,
        Self::Caution,
        Self::OnCaution,
    ];
}
