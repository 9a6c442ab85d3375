//! Decides whether an act may be, and what is shown with it. The rules stand here, a verb a file.

mod bay;
mod book;
mod clocks;
mod end;
mod follow;
mod found;
mod gate;
mod isolate;
mod left;
mod look;
mod measure;
mod prove;
mod ready;
mod restore;
mod set_tool;
mod start;
mod strike;
mod timing;

pub use found::past;

use super::{Act, Entry, Phase, Refusal, Shown, WalkState};
use crate::due::Known;
use crate::finding::{About, Finding, FindingKind, Raised};
use crate::ids::{ActId, FindingId, PointId, RigId, WalkId};
use crate::moment::Moment;
use crate::rig::{Book, is_digest};
use crate::torque::Practice;
use std::collections::BTreeMap;

/// An act on its way: who it is, and which rig it is for.
#[derive(Debug, Clone, PartialEq)]
pub struct Call {
    /// The act's name; the same act sent twice has the same.
    pub id: ActId,
    /// The rig.
    pub rig: RigId,
    /// The act.
    pub act: Act,
}

/// What the rules look at.
#[derive(Debug, Clone, Copy)]
pub struct Context<'a> {
    /// The rig's book; `None` where there is no such rig yet.
    pub book: Option<&'a Book>,
    /// The open walk of the rig.
    pub walk: Option<&'a WalkState>,
    /// In how many walks running each point had moved before this one.
    pub moved_running: &'a BTreeMap<PointId, u8>,
    /// The findings of the rig.
    pub findings: &'a [Finding],
    /// What tells when to look again: notes, rules, the walks before this one.
    pub known: &'a Known,
    /// The newest wall clock of the ledger.
    pub newest: Option<&'a Moment>,
    /// Our own settings of the check.
    pub practice: &'a Practice,
}

/// Decides about an act.
///
/// # Errors
/// [`Refusal`] with why the act is not taken; nothing is changed then.
pub fn decide(context: &Context<'_>, call: &Call, now: &Moment) -> Result<Entry, Refusal> {
    let flags = clocks::flags(context, &call.act, now);
    let judged = Deciding {
        context,
        id: call.id,
        now,
        lapse: flags.lapse,
    };
    let (walk, shown) = judged.decide(&call.act, call.rig)?;
    Ok(Entry {
        id: call.id,
        rig: call.rig,
        walk,
        at: now.clone(),
        flags,
        act: call.act.clone(),
        shown,
    })
}

/// One decision being made.
struct Deciding<'a> {
    context: &'a Context<'a>,
    id: ActId,
    now: &'a Moment,
    lapse: Option<crate::isolation::Lapse>,
}

impl<'a> Deciding<'a> {
    fn decide(&self, act: &Act, rig: RigId) -> Result<(Option<WalkId>, Shown), Refusal> {
        let open = self.context.walk.map(|walk| walk.id);
        let outside = match act {
            Act::Book(change) => Some((open, self.book_change(change, rig)?)),
            Act::Odometer(reading) => Some((open, self.odometer(reading)?)),
            Act::Usage(usage) => Some((open, self.usage(usage)?)),
            Act::Rule(change) => Some((open, self.rule(change)?)),
            Act::PutOff { asked, until, why } => Some((open, self.put_off(*asked, *until, why)?)),
            Act::Start { person, scope } => {
                self.start(person, scope)?;
                Some((Some(WalkId::made_by(self.id, "walk")), Shown::default()))
            }
            Act::Decide { finding, follow_up } => {
                Some((open, self.follow_up(*finding, follow_up)?))
            }
            act if act.is_origin() => Some((open, Shown::default())),
            _ => None,
        };
        if let Some(decided) = outside {
            return Ok(decided);
        }
        let walk = self.context.walk.ok_or(Refusal::NoWalk)?;
        if walk.paused && !matches!(act, Act::Resume | Act::Strike { .. } | Act::End(_)) {
            return Err(Refusal::Paused);
        }
        Ok((Some(walk.id), self.in_walk(walk, act)?))
    }

    fn in_walk(&self, walk: &WalkState, act: &Act) -> Result<Shown, Refusal> {
        match act {
            Act::Ready { item, answer } => self.ready(walk, *item, answer),
            Act::Isolate { source, away } => self.isolate(walk, *source, away),
            Act::Follow(route) => self.follow(walk, route),
            Act::LeavePlan => follow::leave(walk),
            Act::Open { bay } => self.open(walk, *bay),
            Act::KnownLive {
                bay,
                supply,
                place,
                meter,
                volts,
            } => self.known_live(walk, *bay, (*supply, meter), place, volts),
            Act::Read {
                device,
                check,
                volts,
            } => self.read(walk, *device, check, volts),
            Act::Except {
                device,
                set,
                reason,
            } => self.except(walk, *device, set, reason),
            Act::SetTool { tool, at } => self.set_tool(walk, *tool, at),
            Act::Found { point, found } => self.found(walk, *point, found),
            Act::Correct { point, found, why } => self.correct(walk, *point, found, why),
            Act::Look { point, seen } => self.look(walk, *point, seen),
            Act::Damage { point, damage, .. } => self.damage(walk, *point, *damage),
            Act::Left { point, left } => self.left(walk, *point, left),
            Act::Photo { digest, .. } => photo(digest),
            Act::Close { bay, counted } => self.close(walk, *bay, *counted),
            Act::PowerUp => self.power_up(walk),
            Act::Restore { source } => self.restore(walk, *source),
            Act::LeaveAway { source, why } => self.leave_away(walk, *source, why),
            Act::Measure(reading) => self.measure(walk, reading),
            Act::Pause => Ok(Shown::default()),
            Act::Resume if walk.paused => Ok(Shown::default()),
            Act::Resume => Err(Refusal::NotPaused),
            Act::End(ending) => self.end(walk, ending),
            Act::Strike { act } => strike::strike(walk, *act),
            Act::Book(_)
            | Act::Odometer(_)
            | Act::Usage(_)
            | Act::Rule(_)
            | Act::PutOff { .. }
            | Act::Start { .. }
            | Act::Decide { .. }
            | Act::FromBackup { .. }
            | Act::Recovered(_) => Err(Refusal::NoWalk),
        }
    }

    fn book(&self) -> Result<&'a Book, Refusal> {
        self.context.book.ok_or(Refusal::NoRig)
    }

    /// A finding of this act.
    fn raise(&self, kind: FindingKind, about: About) -> Raised {
        let label = format!("{}:{about:?}", crate::coded::Coded::code(kind));
        Raised {
            id: FindingId::made_by(self.id, &label),
            kind,
            about,
        }
    }
}

/// Sees that the walk stands where the act belongs.
fn at_phase(walk: &WalkState, expected: Phase) -> Result<(), Refusal> {
    if walk.phase == expected {
        Ok(())
    } else {
        Err(Refusal::Phase {
            found: walk.phase,
            expected,
        })
    }
}

/// Sees that something was typed.
fn said(words: &str) -> Result<(), Refusal> {
    if words.trim().is_empty() {
        Err(Refusal::SayWhy)
    } else {
        Ok(())
    }
}

/// Sees that a photo's digest is one.
fn photo(digest: &str) -> Result<Shown, Refusal> {
    if is_digest(digest) {
        Ok(Shown::default())
    } else {
        Err(Refusal::NotInBook("photo"))
    }
}
