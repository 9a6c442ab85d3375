//! Acts of a script that tell when to look again, and what the open walk goes by.

use super::ScriptFault;
use super::book::pairs;
use super::run::words;
use super::written::Written;
use baywalk_domain::due::{RuleChange, Usage};
use baywalk_domain::ids::{ActId, RigId, RuleId};
use baywalk_domain::walk::Act;
use baywalk_screens::{Core, Problem, due, plan, rule, usage};
use chrono::NaiveDate;

/// The act that a line writes, on its day; its name makes the name of a new rule.
pub(super) fn act(
    core: &Core,
    (rig, id, today): (RigId, ActId, NaiveDate),
    written: &Written,
) -> Result<Act, Problem> {
    Ok(match written {
        Written::Rule { fields, in_place } => {
            let id = match in_place {
                Some(number) => rule::called(core, rig, *number)?,
                None => RuleId::new(id.uuid()),
            };
            let set = rule::of_parts(core, rig, id, &pairs(fields))?;
            Act::Rule(RuleChange::Set(set))
        }
        Written::DropRule { number } => {
            Act::Rule(RuleChange::Drop(rule::called(core, rig, *number)?))
        }
        Written::Restart { reading, why } => Act::Usage(usage::of_restart(core, reading, why)?),
        Written::Hours { reading } => Act::Usage(Usage::Hours(usage::stated(core, reading)?)),
        Written::Trip { distance } => Act::Usage(Usage::Trip(usage::stated(core, distance)?)),
        Written::Event {
            event,
            about,
            distance,
            note,
        } => Act::Usage(usage::of_event(core, rig, event, (about, distance, note))?),
        Written::PutOff { number, until, why } => Act::PutOff {
            asked: due::called(core, rig, *number)?,
            until: *until,
            why: why.clone(),
        },
        Written::Follow { minutes } => Act::Follow(plan::route_on(core, rig, today, *minutes)?),
        Written::LeavePlan => Act::LeavePlan,
        _ => {
            let sentence = words(&core.words, &ScriptFault::Missing("act"));
            return Err(Problem::new(baywalk_screens::ProblemKind::Input, sentence));
        }
    })
}
