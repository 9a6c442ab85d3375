//! As found and as left, as a script writes them.

use super::ScriptFault;
use super::bring::tool;
use baywalk_domain::coded::Coded;
use baywalk_domain::rig::Book;
use baywalk_domain::units::{Stated, TorqueUnit};
use baywalk_domain::walk::{Angle, AsFound, AsLeft, Movement, Test};
use serde::Deserialize;

/// What was found: a grade, and what it was told by.
#[derive(Debug, Deserialize)]
#[serde(tag = "grade", rename_all = "snake_case", deny_unknown_fields)]
pub(super) enum WrittenFound {
    Held {
        at: Option<String>,
        tool: Option<String>,
    },
    Moved {
        angle: Option<String>,
        at: Option<String>,
        tool: Option<String>,
    },
    Began {
        at: String,
        tool: String,
    },
    MarkOff {
        angle: String,
    },
    Loose,
    Apart,
    OpenedByUs,
    LookedAt {
        #[serde(default)]
        tugged: bool,
    },
    NotJudged {
        why: String,
        #[serde(default)]
        note: String,
    },
}

impl WrittenFound {
    pub(super) fn found(&self, book: &Book) -> Result<AsFound, ScriptFault> {
        Ok(match self {
            Self::Held {
                at: Some(at),
                tool: Some(code),
            } => AsFound::Held(Test::Torque {
                at: torque(at)?,
                tool: tool(book, code)?,
            }),
            Self::Held {
                at: None,
                tool: None,
            } => AsFound::Held(Test::Tug),
            Self::Moved {
                angle: Some(angle),
                at: Some(at),
                tool: Some(code),
            } => AsFound::Moved(Movement::Turned {
                angle: Angle::from_code(angle)?,
                below: torque(at)?,
                tool: tool(book, code)?,
            }),
            Self::Moved {
                angle: None,
                at: None,
                tool: None,
            } => AsFound::Moved(Movement::Gave),
            Self::Held { .. } => return Err(ScriptFault::Missing("at, tool")),
            Self::Moved { .. } => return Err(ScriptFault::Missing("angle, at, tool")),
            Self::Began { at, tool: code } => AsFound::Moved(Movement::Began {
                at: torque(at)?,
                tool: tool(book, code)?,
            }),
            Self::MarkOff { angle } => AsFound::Moved(Movement::MarkOff {
                angle: Angle::from_code(angle)?,
            }),
            Self::Loose => AsFound::Loose,
            Self::Apart => AsFound::Apart,
            Self::OpenedByUs => AsFound::OpenedByUs,
            Self::LookedAt { tugged } => AsFound::LookedAt { tugged: *tugged },
            Self::NotJudged { why, note } => AsFound::NotJudged {
                why: Coded::from_code(why)?,
                note: note.clone(),
            },
        })
    }
}

/// What was done.
#[derive(Debug, Deserialize)]
#[serde(tag = "left", rename_all = "snake_case", deny_unknown_fields)]
pub(super) enum WrittenLeft {
    Alone {
        why: String,
    },
    Set {
        torque: String,
        tool: String,
    },
    Remade {
        torque: Option<String>,
        tool: Option<String>,
    },
    OutOfService {
        how: String,
    },
}

impl WrittenLeft {
    pub(super) fn left(&self, book: &Book) -> Result<AsLeft, ScriptFault> {
        Ok(match self {
            Self::Alone { why } => AsLeft::Alone(Coded::from_code(why)?),
            Self::Set {
                torque: to,
                tool: code,
            } => AsLeft::Set {
                torque: torque(to)?,
                tool: tool(book, code)?,
            },
            Self::Remade {
                torque: Some(to),
                tool: Some(code),
            } => AsLeft::Remade {
                set: Some((torque(to)?, tool(book, code)?)),
            },
            Self::Remade { .. } => AsLeft::Remade { set: None },
            Self::OutOfService { how } => AsLeft::OutOfService { how: how.clone() },
        })
    }
}

fn torque(text: &str) -> Result<Stated<TorqueUnit>, ScriptFault> {
    Ok(Stated::parse_pair(text)?)
}
