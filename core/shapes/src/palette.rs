//! The colours of the roles, for paper.

use crate::Role;
use std::borrow::Cow;

/// A colour for each role, in the notation of CSS.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Palette {
    /// [`Role::Ink`].
    pub ink: Cow<'static, str>,
    /// [`Role::Detail`].
    pub detail: Cow<'static, str>,
    /// [`Role::Hair`].
    pub hair: Cow<'static, str>,
    /// [`Role::Plate`].
    pub plate: Cow<'static, str>,
    /// [`Role::Face`].
    pub face: Cow<'static, str>,
    /// [`Role::Next`].
    pub next: Cow<'static, str>,
    /// [`Role::OnNext`].
    pub on_next: Cow<'static, str>,
    /// [`Role::Caution`].
    pub caution: Cow<'static, str>,
    /// [`Role::OnCaution`].
    pub on_caution: Cow<'static, str>,
}

impl Palette {
    /// Dark on white, for paper; it keeps its contrast when printed without colour.
    pub const PAPER: Self = Self {
        ink: Cow::Borrowed("#11151a"),
        detail: Cow::Borrowed("#394148"),
        hair: Cow::Borrowed("#7c868c"),
        plate: Cow::Borrowed("#ffffff"),
        face: Cow::Borrowed("#ffffff"),
        next: Cow::Borrowed("#22309e"),
        on_next: Cow::Borrowed("#ffffff"),
        caution: Cow::Borrowed("#11151a"),
        on_caution: Cow::Borrowed("#f7f9f8"),
    };

    /// The colour of a role.
    ///
    /// # Example
    /// ```
    /// use baywalk_shapes::{Role, palette::Palette};
    /// assert_eq!(Palette::PAPER.colour(Role::Ink), "#11151a");
    /// ```
    #[must_use]
    pub fn colour(&self, role: Role) -> &str {
        match role {
            Role::Ink => &self.ink,
            Role::Detail => &self.detail,
            Role::Hair => &self.hair,
            Role::Plate => &self.plate,
            Role::Face => &self.face,
            Role::Next => &self.next,
            Role::OnNext => &self.on_next,
            Role::Caution => &self.caution,
            Role::OnCaution => &self.on_caution,
        }
    }
}
