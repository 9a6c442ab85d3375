//! A card: one thing to do, with all that is drawn for it and the keys that answer it.

use crate::Named;
use crate::named::count;
use baywalk_domain::coded::Coded;
use baywalk_domain::torque::{Action, Advice};
use baywalk_domain::units::{Stated, TorqueUnit};
use baywalk_words::Words;
use serde::Serialize;

/// One thing to do.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct Card {
    /// The name of the act that a key of it becomes: one card, one act.
    pub act: String,
    /// The number of the newest entry when it was shown.
    pub seq: u64,
    /// What kind of step it is, such as `point` or `read`.
    pub kind: String,
    /// The point it is about, where it is about one.
    pub point: Option<String>,
    /// The bay's tag, where it is about one.
    pub tag: Option<String>,
    /// The bay's name, where it is about one.
    pub bay: Option<String>,
    /// What it is about.
    pub title: String,
    /// Where that is.
    pub place: String,
    /// Which of how many.
    pub count: Option<Count>,
    /// Whether power is away and proved so here.
    pub line: Line,
    /// The torque, large, with its basis.
    pub figure: Option<Figure>,
    /// What holds it, tool setting, instructions: one sentence each.
    pub lines: Vec<String>,
    /// What to do first or what stays alive, directly above the keys.
    pub cautions: Vec<String>,
    /// Whether it tells how long a wait still runs, so that a shell reads it anew each second.
    pub waits: bool,
    /// What the hand just did.
    pub question: String,
    /// The answers.
    pub keys: Vec<Key>,
}

/// Which of how many.
#[derive(Debug, Clone, Copy, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct Count {
    /// This one, from 1.
    pub at: u32,
    /// All of them.
    pub of: u32,
}

impl Count {
    pub(crate) fn new(at: usize, of: usize) -> Self {
        Self {
            at: count(at),
            of: count(of),
        }
    }
}

/// How the line under the header is drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Enum))]
#[serde(rename_all = "snake_case")]
pub enum LineState {
    /// Whole and thick: live, or not known.
    Live,
    /// Whole and thick: away, but treated as live until proved.
    Unproved,
    /// Thin with an open blade: dead and proved.
    Dead,
}

/// The line under the header.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct Line {
    /// How it is drawn.
    pub state: LineState,
    /// What it says.
    pub words: String,
}

/// The torque, large.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct Figure {
    /// The number as typed or printed; empty where there is none.
    pub number: String,
    /// Its unit, in full.
    pub unit: String,
    /// The same in N·m; empty where that is the unit.
    pub metric: String,
    /// The code of the basis that frames it: a basis kind, `nothing` or `leave_alone`.
    pub frame: String,
    /// The basis in words.
    pub basis: String,
}

/// An answer that can be pressed.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct Key {
    /// Its stable code.
    pub code: String,
    /// The word on it.
    pub word: String,
    /// What it stands for, below the word.
    pub note: String,
    /// What is asked when it is pressed, in order.
    pub asks: Vec<Ask>,
}

/// What is asked when a key is pressed.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Enum))]
#[serde(tag = "ask", rename_all = "snake_case")]
pub enum Ask {
    /// Words; some or none.
    Words {
        /// The question.
        question: String,
    },
    /// A number of a unit.
    Number {
        /// The question.
        question: String,
        /// The unit.
        unit: String,
    },
    /// One of several.
    Choice {
        /// The question.
        question: String,
        /// What to choose from.
        options: Vec<Named>,
    },
}

impl Key {
    /// A key with no note and nothing to ask.
    #[must_use]
    pub fn plain(code: &str, word: String) -> Self {
        Self {
            code: code.to_owned(),
            word,
            note: String::new(),
            asks: Vec::new(),
        }
    }

    /// The same key with a note.
    #[must_use]
    pub fn noted(mut self, note: String) -> Self {
        self.note = note;
        self
    }

    /// The same key with something to ask.
    #[must_use]
    pub fn asking(mut self, ask: Ask) -> Self {
        self.asks.push(ask);
        self
    }
}

/// A torque of an advice, framed by its basis; no figure where none is to be used.
pub(crate) fn figure(words: &Words, advice: &Advice, shown: Option<&Stated<TorqueUnit>>) -> Figure {
    let frame = match advice.action {
        Action::LeaveAlone | Action::Refer | Action::LookAndTug => "leave_alone",
        _ => advice
            .target
            .as_ref()
            .map_or("nothing", |target| target.basis.kind().code()),
    };
    let number = shown.filter(|_| frame != "leave_alone");
    Figure {
        number: number
            .map(|stated| stated.text().to_owned())
            .unwrap_or_default(),
        unit: number
            .map(|stated| words.code(stated.unit()))
            .unwrap_or_default(),
        metric: number
            .map(|stated| metric(words, stated))
            .unwrap_or_default(),
        frame: frame.to_owned(),
        basis: words.advice(advice).basis,
    }
}

/// The same torque in N·m; empty where that is its unit.
fn metric(words: &Words, stated: &Stated<TorqueUnit>) -> String {
    match stated.unit() {
        TorqueUnit::NewtonMetres => String::new(),
        _ => words.torque_in(stated.quantity(), TorqueUnit::NewtonMetres),
    }
}
