//! The acts, as a script writes them.

use super::ScriptFault;
use super::bring;
use super::found::{WrittenFound, WrittenLeft};
use baywalk_domain::coded::Coded;
use baywalk_domain::finding::{About, Finding, FindingKind, FollowUp};
use baywalk_domain::isolation::MeterKind;
use baywalk_domain::rig::{Book, Check, Code, CodeOwner};
use baywalk_domain::supply::{Measured, Reading};
use baywalk_domain::units::Stated;
use baywalk_domain::walk::{Act, Away, Counted, Ending, ReadyAnswer, Scope, Seen};
use chrono::NaiveDate;
use serde::Deserialize;
use std::collections::BTreeMap;

/// One act as written. What the book is changed by is kept as text and read as the rig's files are.
#[derive(Debug, Deserialize)]
#[serde(tag = "act", rename_all = "snake_case")]
pub(super) enum Written {
    Layout {
        layout: String,
    },
    Files {
        toml: String,
        csv: String,
    },
    Add {
        record: String,
        fields: BTreeMap<String, String>,
    },
    Change {
        code: String,
        fields: BTreeMap<String, String>,
    },
    Odometer {
        reading: String,
    },
    Start {
        person: String,
        #[serde(default)]
        bays: Vec<String>,
        #[serde(default)]
        second_look: bool,
    },
    Ready {
        item: String,
        without: Option<String>,
    },
    Isolate {
        source: String,
        #[serde(default)]
        how: How,
        #[serde(default)]
        note: String,
    },
    Open {
        bay: String,
    },
    KnownLive {
        bay: String,
        supply: String,
        place: String,
        meter: Option<String>,
        volts: String,
    },
    Read {
        device: String,
        set: String,
        from: String,
        other_set: Option<String>,
        to: String,
        supply: String,
        volts: String,
    },
    Except {
        device: String,
        set: String,
        reason: String,
    },
    Found {
        point: String,
        found: WrittenFound,
    },
    Correct {
        point: String,
        found: WrittenFound,
        why: String,
    },
    Look {
        point: String,
        trouble: Option<String>,
        not_looked: Option<String>,
    },
    Damage {
        point: String,
        damage: String,
        #[serde(default)]
        note: String,
    },
    Left {
        point: String,
        left: WrittenLeft,
    },
    Photo {
        about: String,
        file: String,
        #[serde(default)]
        caption: String,
    },
    Close {
        bay: String,
        #[serde(default)]
        not_counted: bool,
    },
    PowerUp,
    Restore {
        source: String,
    },
    LeaveAway {
        source: String,
        why: String,
    },
    Measure {
        reading: String,
        #[serde(default)]
        place: String,
        volts: Option<String>,
        works: Option<bool>,
        not: Option<String>,
    },
    Pause,
    Resume,
    End {
        early: Option<String>,
    },
    Decide {
        finding: String,
        about: String,
        decision: String,
        by: Option<NaiveDate>,
        #[serde(default)]
        note: String,
    },
    Undo,
}

/// How a source was taken away.
#[derive(Debug, Default, Clone, Copy, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(super) enum How {
    #[default]
    Isolated,
    NotFound,
    Stays,
}

/// What acts are turned with.
pub(super) struct Around<'a> {
    pub(super) book: &'a Book,
    pub(super) findings: &'a [Finding],
    pub(super) newest: Option<baywalk_domain::ids::ActId>,
    /// Takes a photo in and gives its digest.
    pub(super) photo: &'a mut dyn FnMut(&str) -> Result<String, ScriptFault>,
}

impl Written {
    /// Whether it changes the book.
    pub(super) const fn is_book(&self) -> bool {
        matches!(
            self,
            Self::Layout { .. } | Self::Files { .. } | Self::Add { .. } | Self::Change { .. }
        )
    }

    /// The act in the core's terms; `None` where it changes the book.
    pub(super) fn act(&self, around: &mut Around<'_>) -> Result<Option<Act>, ScriptFault> {
        let book = around.book;
        Ok(Some(match self {
            Self::Layout { .. } | Self::Files { .. } | Self::Add { .. } | Self::Change { .. } => {
                return Ok(None);
            }
            Self::Odometer { reading } => Act::Odometer(Stated::parse_pair(reading)?),
            Self::Start {
                person,
                bays,
                second_look,
            } => Act::Start {
                person: person.clone(),
                scope: scope(book, bays, *second_look)?,
            },
            Self::Ready { item, without } => Act::Ready {
                item: Coded::from_code(item)?,
                answer: without
                    .clone()
                    .map_or(ReadyAnswer::Done, ReadyAnswer::Without),
            },
            Self::Isolate { source, how, note } => Act::Isolate {
                source: bring::source(book, source)?,
                away: match how {
                    How::Isolated => Away::Isolated(note.clone()),
                    How::NotFound => Away::NotFound(note.clone()),
                    How::Stays => Away::Stays(note.clone()),
                },
            },
            Self::Open { bay } => Act::Open {
                bay: bring::bay(book, bay)?,
            },
            Self::Found { point, found } => Act::Found {
                point: bring::point(book, point)?,
                found: found.found(book)?,
            },
            Self::Correct { point, found, why } => Act::Correct {
                point: bring::point(book, point)?,
                found: found.found(book)?,
                why: why.clone(),
            },
            Self::Left { point, left } => Act::Left {
                point: bring::point(book, point)?,
                left: left.left(book)?,
            },
            Self::Close { bay, not_counted } => Act::Close {
                bay: bring::bay(book, bay)?,
                counted: Counted {
                    hardware: !not_counted,
                    ..Counted::ALL
                },
            },
            Self::PowerUp => Act::PowerUp,
            Self::Restore { source } => Act::Restore {
                source: bring::source(book, source)?,
            },
            Self::LeaveAway { source, why } => Act::LeaveAway {
                source: bring::source(book, source)?,
                why: why.clone(),
            },
            Self::Pause => Act::Pause,
            Self::Resume => Act::Resume,
            Self::End { early } => Act::End(early.clone().map_or(Ending::Whole, Ending::Early)),
            Self::Undo => Act::Strike {
                act: around.newest.ok_or(ScriptFault::Missing("undo"))?,
            },
            other => return other.noted(around).map(Some),
        }))
    }

    /// Acts that note what was read or seen.
    fn noted(&self, around: &mut Around<'_>) -> Result<Act, ScriptFault> {
        let book = around.book;
        Ok(match self {
            Self::KnownLive {
                bay,
                supply,
                place,
                meter,
                volts,
            } => Act::KnownLive {
                bay: bring::bay(book, bay)?,
                supply: Coded::from_code(supply)?,
                place: place.clone(),
                meter: meter
                    .as_deref()
                    .map_or(Ok(MeterKind::Contact), Coded::from_code)?,
                volts: Stated::parse_pair(volts)?,
            },
            Self::Read {
                device,
                set,
                from,
                other_set,
                to,
                supply,
                volts,
            } => Act::Read {
                device: bring::device(book, device)?,
                check: Check {
                    set: set.clone(),
                    from: Coded::from_code(from)?,
                    other_set: other_set.clone().unwrap_or_else(|| set.clone()),
                    to: Coded::from_code(to)?,
                    supply: Coded::from_code(supply)?,
                },
                volts: Stated::parse_pair(volts)?,
            },
            Self::Except {
                device,
                set,
                reason,
            } => Act::Except {
                device: bring::device(book, device)?,
                set: set.clone(),
                reason: reason.clone(),
            },
            Self::Look {
                point,
                trouble,
                not_looked,
            } => Act::Look {
                point: bring::point(book, point)?,
                seen: match (trouble, not_looked) {
                    (Some(words), _) => Seen::Trouble(words.clone()),
                    (None, Some(why)) => Seen::NotLooked(why.clone()),
                    (None, None) => Seen::Clear,
                },
            },
            Self::Damage {
                point,
                damage,
                note,
            } => Act::Damage {
                point: bring::point(book, point)?,
                damage: Coded::from_code(damage)?,
                note: note.clone(),
            },
            Self::Photo {
                about: code,
                file,
                caption,
            } => Act::Photo {
                about: about(book, code)?,
                digest: (around.photo)(file)?,
                caption: caption.clone(),
            },
            Self::Measure {
                reading,
                place,
                volts,
                works,
                not,
            } => Act::Measure(Reading {
                step: Coded::from_code(reading)?,
                place: place.clone(),
                measured: measured(volts.as_deref(), *works, not.as_deref())?,
            }),
            Self::Decide {
                finding,
                about: code,
                decision,
                by,
                note,
            } => Act::Decide {
                finding: find(around, finding, code)?,
                follow_up: FollowUp {
                    decision: Coded::from_code(decision)?,
                    by: *by,
                    note: note.clone(),
                },
            },
            _ => return Err(ScriptFault::Missing("act")),
        })
    }
}

fn scope(book: &Book, bays: &[String], second_look: bool) -> Result<Scope, ScriptFault> {
    Ok(match (second_look, bays) {
        (true, _) => Scope::SecondLook,
        (false, []) => Scope::Whole,
        (false, bays) => Scope::Bays(
            bays.iter()
                .map(|bay| bring::bay(book, bay))
                .collect::<Result<_, _>>()?,
        ),
    })
}

fn measured(
    volts: Option<&str>,
    works: Option<bool>,
    not: Option<&str>,
) -> Result<Measured, ScriptFault> {
    match (volts, works, not) {
        (Some(volts), None, None) => Ok(Measured::Volts(Stated::parse_pair(volts)?)),
        (None, Some(true), None) => Ok(Measured::Works),
        (None, Some(false), None) => Ok(Measured::Fails),
        (None, None, Some(why)) => Ok(Measured::Not(why.to_owned())),
        _ => Err(ScriptFault::Missing("volts, works, not")),
    }
}

/// What a code is about: a bay, point or source; a reading by its code; the rig by its name.
fn about(book: &Book, text: &str) -> Result<About, ScriptFault> {
    if let Ok(step) = Coded::from_code(text) {
        return Ok(About::Reading(step));
    }
    if text == book.rig.name {
        return Ok(About::Rig);
    }
    let code = Code::parse(text)?;
    let owner = book.owners(&code).find_map(|owner| match owner {
        CodeOwner::Bay(id) => Some(About::Bay(id)),
        CodeOwner::Point(id) => Some(About::Point(id)),
        CodeOwner::Source(id) => Some(About::Source(id)),
        CodeOwner::Device(_) | CodeOwner::Tool(_) => None,
    });
    owner.ok_or_else(|| ScriptFault::NoCode {
        what: "record",
        code: text.to_owned(),
    })
}

/// The newest open finding of a kind about something.
fn find(
    around: &Around<'_>,
    kind: &str,
    code: &str,
) -> Result<baywalk_domain::ids::FindingId, ScriptFault> {
    let kind = FindingKind::from_code(kind)?;
    let about = about(around.book, code)?;
    let fits = |finding: &&Finding| finding.raised.kind == kind && finding.raised.about == about;
    let found = around
        .findings
        .iter()
        .filter(|finding| finding.is_open())
        .rfind(fits);
    found
        .map(|finding| finding.raised.id)
        .ok_or_else(|| ScriptFault::NoCode {
            what: "finding",
            code: code.to_owned(),
        })
}
