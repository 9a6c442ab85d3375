//! What the rig's own past tells of its terminals.

use crate::{Core, Problem};
use baywalk_domain::coded::Coded;
use baywalk_domain::due::{Condition, KindTold, condition, learned};
use baywalk_domain::ids::RigId;
use baywalk_domain::loosening::Proportion;
use baywalk_words::Arg;
use serde::Serialize;

/// What the rig's own past tells of its terminals.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct LearnedScreen {
    /// Kind by kind, in words.
    pub kinds: Vec<LearnedLine>,
    /// What is said of those that were never known to be tight.
    pub never_tight: Option<String>,
    /// The first critical terminal that is likely to have moved, in words.
    pub first: Option<String>,
    /// How a due day comes of it, in words.
    pub how: String,
    /// The condition by analogy, in words.
    pub condition: String,
}

/// What is told of a kind of terminal.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct LearnedLine {
    /// The kind, by its code.
    pub kind: String,
    /// How many lives are known.
    pub joints: u32,
    /// How many of them ended by moving.
    pub moved: u32,
    /// In words.
    pub words: String,
}

/// What the rig's own past tells.
///
/// # Errors
/// [`Problem`] where there is no such rig or the logbook can't be read.
pub fn told(core: &Core, rig: RigId) -> Result<LearnedScreen, Problem> {
    let (book, known) = (core.logbook.shared_book(rig)?, core.logbook.known(rig)?);
    let past = learned(&book, &known);
    let words = &core.words;
    let findings = core.logbook.findings(rig)?;
    let stands = condition(&book.rig.rule, &known, &findings, core.logbook.now().date());
    let place = Condition::ALL.iter().position(|other| *other == stands);
    let never = (past.never_tight > 0).then_some(past.never_tight);
    let none = past
        .kinds
        .is_empty()
        .then(|| words.say("timing-learned-none"));
    Ok(LearnedScreen {
        kinds: past.kinds.iter().map(|kind| line(core, kind)).collect(),
        never_tight: never
            .map(|count| words.fill("timing-never-tight", &[("count", count.into())])),
        first: past.first.map(|(on, point)| {
            let args = [
                ("point", words.point_name(point, &*book).into()),
                ("date", words.date(on).into()),
            ];
            words.fill("timing-learned-first", &args)
        }),
        how: none.unwrap_or_else(|| words.say("timing-learned-how")),
        condition: words.fill(
            "timing-condition",
            &[
                ("number", place.map_or(0, |place| place + 1).into()),
                ("condition", words.code(stands).into()),
            ],
        ),
    })
}

pub(crate) fn line(core: &Core, told: &KindTold) -> LearnedLine {
    let words = &core.words;
    let mut args: Vec<(&str, Arg<'_>)> = vec![
        ("kind", words.code(told.kind).into()),
        ("moved", told.moved.into()),
        ("joints", told.joints.into()),
    ];
    args.extend(
        told.proportion
            .iter()
            .flat_map(|share| percent(core, share)),
    );
    let counted = words.fill("timing-kind", &args);
    let mut args: Vec<(&str, Arg<'_>)> = vec![("kind", counted.into())];
    let text = match &told.in_a_year {
        Some(chance) => {
            args.extend(percent(core, chance));
            words.fill("timing-kind-law", &args)
        }
        None => words.fill("timing-kind-few", &args),
    };
    LearnedLine {
        kind: told.kind.code().to_owned(),
        joints: told.joints,
        moved: told.moved,
        words: text,
    }
}

/// A share with its interval, in percent.
fn percent(core: &Core, share: &Proportion) -> [(&'static str, Arg<'static>); 3] {
    let number = |value: f64| core.words.number(100.0 * value, 0).into();
    [
        ("share", number(share.share)),
        ("least", number(share.least)),
        ("most", number(share.most)),
    ]
}
