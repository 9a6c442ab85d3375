//! Setting a rig up where one stands: a bay, a device, a point by a few answers, the last point once
//! more, and the rest filled in later at the table.
//!
//! What is not answered is taken as the stricter case: a group of conductors of which nobody noted
//! what feeds it counts as fed by everything until it is proved dead.

mod add;
mod ask;
mod code;
mod copy;
mod facts;
mod sources;

pub use add::{Added, add};
pub use ask::{SetUpForm, form};
pub use copy::copy;
pub use facts::{Fact, Facts, facts};
pub use sources::{SourceAsk, SourcesScreen, sources};

use serde::Serialize;

/// What can be added to a rig where one stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Enum))]
#[serde(rename_all = "snake_case")]
pub enum Piece {
    /// A place that is opened or reached.
    Bay,
    /// A thing in a bay that has terminals.
    Device,
    /// A terminal.
    Terminal,
    /// A check by eye or hand that is no terminal.
    Look,
}

impl Piece {
    /// All of them, with the words that a command knows them by.
    pub const ALL: [(&'static str, Self); 4] = [
        ("bay", Self::Bay),
        ("device", Self::Device),
        ("terminal", Self::Terminal),
        ("look", Self::Look),
    ];

    /// The key of what it is called.
    const fn title(self) -> &'static str {
        match self {
            Self::Bay => "set-up-bay",
            Self::Device => "set-up-device-new",
            Self::Terminal => "set-up-terminal",
            Self::Look => "set-up-look-new",
        }
    }
}

/// The fields of a record, as pairs of column and text.
type Fields = Vec<(String, String)>;

fn field(column: &str, text: impl Into<String>) -> (String, String) {
    (column.to_owned(), text.into())
}
