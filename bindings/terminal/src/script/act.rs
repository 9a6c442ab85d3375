//! Turns a written act into an act of the core, one group of verbs a function.

use super::ScriptFault;
use super::written::{How, Written};
use super::{about, bring};
use baywalk_domain::coded::Coded;
use baywalk_domain::finding::{Finding, FollowUp};
use baywalk_domain::ids::{ActId, PointId};
use baywalk_domain::isolation::{Meter, MeterCategory, MeterKind};
use baywalk_domain::rig::{Book, Check};
use baywalk_domain::supply::{Measured, Reading};
use baywalk_domain::units::Stated;
use baywalk_domain::walk::{Act, Away, Counted, Ending, ReadyAnswer, Scope, Seen};

/// What acts are turned with.
pub(super) struct Around<'a> {
    pub(super) book: &'a Book,
    pub(super) findings: &'a [Finding],
    pub(super) newest: Option<ActId>,
    /// The points that wait for a second look.
    pub(super) unsettled: Vec<PointId>,
    /// Takes a photo in and gives its digest.
    pub(super) photo: &'a mut dyn FnMut(&str) -> Result<String, ScriptFault>,
}

/// An act, or that it belongs to another group.
type Turned = Result<Option<Act>, ScriptFault>;

impl Written {
    /// The act in the core's terms; `None` where it changes the book.
    pub(super) fn act(&self, around: &mut Around<'_>) -> Turned {
        let groups = [
            Self::of_walk,
            Self::of_power,
            Self::of_proof,
            Self::of_point,
        ];
        for group in groups {
            if let Some(act) = group(self, around)? {
                return Ok(Some(act));
            }
        }
        self.of_records(around)
    }

    /// Starting, stopping, ending, undoing.
    fn of_walk(&self, around: &mut Around<'_>) -> Turned {
        Ok(Some(match self {
            Self::Odometer { reading } => Act::Odometer(Stated::parse_pair(reading)?),
            Self::Start {
                person,
                bays,
                second_look,
            } => Act::Start {
                person: person.clone(),
                scope: scope(around, bays, *second_look)?,
            },
            Self::Ready { item, without } => Act::Ready {
                item: Coded::from_code(item)?,
                answer: without
                    .clone()
                    .map_or(ReadyAnswer::Done, ReadyAnswer::Without),
            },
            Self::Pause => Act::Pause,
            Self::Resume => Act::Resume,
            Self::End { early } => Act::End(early.clone().map_or(Ending::Whole, Ending::Early)),
            Self::Undo => Act::Strike {
                act: around.newest.ok_or(ScriptFault::Missing("undo"))?,
            },
            _ => return Ok(None),
        }))
    }

    /// Taking power away and bringing it back.
    fn of_power(&self, around: &mut Around<'_>) -> Turned {
        let book = around.book;
        Ok(Some(match self {
            Self::Isolate { source, how, note } => Act::Isolate {
                source: bring::source(book, source)?,
                away: match how {
                    How::Isolated => Away::Isolated(note.clone()),
                    How::NotFound => Away::NotFound(note.clone()),
                    How::Stays => Away::Stays(note.clone()),
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
            _ => return Ok(None),
        }))
    }

    /// Bays and their proofs.
    fn of_proof(&self, around: &mut Around<'_>) -> Turned {
        let book = around.book;
        Ok(Some(match self {
            Self::Open { bay } => Act::Open {
                bay: bring::bay(book, bay)?,
            },
            Self::Close { bay, not_counted } => Act::Close {
                bay: bring::bay(book, bay)?,
                counted: Counted {
                    hardware: !not_counted,
                    ..Counted::ALL
                },
            },
            Self::KnownLive {
                bay,
                supply,
                place,
                meter,
                with,
                category,
                volts,
            } => Act::KnownLive {
                bay: bring::bay(book, bay)?,
                supply: Coded::from_code(supply)?,
                place: place.clone(),
                meter: Meter {
                    kind: meter
                        .as_deref()
                        .map_or(Ok(MeterKind::Contact), Coded::from_code)?,
                    name: with.clone(),
                    category: category
                        .as_deref()
                        .map_or(Ok(MeterCategory::NotNoted), Coded::from_code)?,
                },
                volts: Stated::parse_pair(volts)?,
            },
            Self::Read { device, volts, .. } => Act::Read {
                device: bring::device(book, device)?,
                check: self.check()?,
                volts: Stated::parse_pair(volts)?,
            },
            Self::SetTool { tool, to } => Act::SetTool {
                tool: bring::tool(book, tool)?,
                at: Stated::parse_pair(to)?,
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
            _ => return Ok(None),
        }))
    }

    /// The pair of a reading.
    fn check(&self) -> Result<Check, ScriptFault> {
        let Self::Read {
            set,
            from,
            other_set,
            to,
            supply,
            ..
        } = self
        else {
            return Err(ScriptFault::Missing("read"));
        };
        Ok(Check {
            set: set.clone(),
            from: Coded::from_code(from)?,
            other_set: other_set.clone().unwrap_or_else(|| set.clone()),
            to: Coded::from_code(to)?,
            supply: Coded::from_code(supply)?,
        })
    }

    /// What is noted at a point.
    fn of_point(&self, around: &mut Around<'_>) -> Turned {
        let book = around.book;
        let point = |code: &String| bring::point(book, code);
        Ok(Some(match self {
            Self::Found { point: code, found } => Act::Found {
                point: point(code)?,
                found: found.found(book)?,
            },
            Self::Correct {
                point: code,
                found,
                why,
            } => Act::Correct {
                point: point(code)?,
                found: found.found(book)?,
                why: why.clone(),
            },
            Self::Left { point: code, left } => Act::Left {
                point: point(code)?,
                left: left.left(book)?,
            },
            Self::Look {
                point: code,
                trouble,
                not_looked,
            } => Act::Look {
                point: point(code)?,
                seen: match (trouble, not_looked) {
                    (Some(words), _) => Seen::Trouble(words.clone()),
                    (None, Some(why)) => Seen::NotLooked(why.clone()),
                    (None, None) => Seen::Clear,
                },
            },
            Self::Damage {
                point: code,
                damage,
                note,
            } => Act::Damage {
                point: point(code)?,
                damage: Coded::from_code(damage)?,
                note: note.clone(),
            },
            _ => return Ok(None),
        }))
    }

    /// Photos, and what is decided about findings.
    fn of_records(&self, around: &mut Around<'_>) -> Turned {
        Ok(Some(match self {
            Self::Photo {
                about: code,
                file,
                caption,
            } => Act::Photo {
                about: about::about(around.book, code)?,
                digest: (around.photo)(file)?,
                caption: caption.clone(),
            },
            Self::Decide {
                finding,
                about: code,
                decision,
                by,
                note,
            } => Act::Decide {
                finding: about::finding((around.book, around.findings), finding, code)?,
                follow_up: FollowUp {
                    decision: Coded::from_code(decision)?,
                    by: *by,
                    note: note.clone(),
                },
            },
            _ => return Ok(None),
        }))
    }
}

fn scope(around: &Around<'_>, bays: &[String], second_look: bool) -> Result<Scope, ScriptFault> {
    Ok(match (second_look, bays) {
        (true, _) => Scope::SecondLook(around.unsettled.clone()),
        (false, []) => Scope::Whole,
        (false, bays) => {
            let bays = bays.iter().map(|bay| bring::bay(around.book, bay));
            Scope::Bays(bays.collect::<Result<_, _>>()?)
        }
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
