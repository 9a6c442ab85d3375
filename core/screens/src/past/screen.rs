//! The screen: charts with what they tell, the walks one by one, and how the interval was chosen.

use super::facts::{find, of_point};
use super::{Subject, chart};
use crate::{Core, Problem, due, learned, rule};
use baywalk_domain::ids::RigId;
use baywalk_domain::loosening::Ended;
use baywalk_domain::rig::{Book, Point};
use baywalk_paper::chart::{Chart, PointWalk};
use baywalk_words::Words;
use serde::Serialize;
use std::collections::BTreeMap;

/// A point that has moved before.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct PastPoint {
    /// Its code.
    pub code: String,
    /// Its name, and how often it had moved, in words.
    pub words: String,
}

/// What a chart tells, for whoever can't see it.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct ToldChart {
    /// What it shows.
    pub title: String,
    /// What it tells, in sentences.
    pub told: Vec<String>,
    /// Whether its drawing shows anything that the sentences do not say.
    pub drawn: bool,
}

/// The past of a rig, or of one point of it.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct PastScreen {
    /// What it is about.
    pub title: String,
    /// The charts, in the order of their drawings.
    pub charts: Vec<ToldChart>,
    /// A point's walks, the newest first, each in a sentence.
    pub walks: Vec<String>,
    /// The points of a rig that have moved before, those that moved most often first.
    pub moved: Vec<PastPoint>,
    /// How the interval was chosen: by which limit, whose word, what the past adds.
    pub why: Vec<String>,
    /// Whose word comes before all of it.
    pub caution: String,
}

/// The past with its drawings.
#[derive(Debug, Clone)]
pub struct PastView {
    /// What it says.
    pub screen: PastScreen,
    /// Its charts.
    pub charts: Vec<Chart>,
}

/// The past of a rig, or of the point with a code, drawn over a width.
///
/// # Errors
/// [`Problem`] where there is no such rig or point, or the logbook can't be read.
pub fn past(core: &Core, rig: RigId, code: Option<&str>, width: f64) -> Result<PastView, Problem> {
    let book = core.logbook.shared_book(rig)?;
    let words = &core.words;
    let (title, subjects, walks, moved, why) = match code {
        Some(code) => {
            let point = find(core, &book, code)?;
            let known = core.logbook.known(rig)?;
            let walks = of_point(core, &book, &known, point.id)?;
            let lines = walks.iter().rev().map(|walk| line(words, &book, walk));
            let title = words.point_name(point.id, &*book);
            let subjects = vec![Subject::Point(code)];
            (title, subjects, lines.collect(), Vec::new(), Vec::new())
        }
        None => {
            let subjects = vec![Subject::Kinds, Subject::Minutes, Subject::Volts];
            let moved = moved(core, rig, &book)?;
            (
                book.rig.name.clone(),
                subjects,
                Vec::new(),
                moved,
                why(core, rig)?,
            )
        }
    };
    let charts = subjects.into_iter().map(|of| chart(core, rig, of, width));
    let charts = charts.collect::<Result<Vec<Chart>, Problem>>()?;
    let told = charts.iter().map(|chart| ToldChart {
        title: chart.title.clone(),
        told: chart.told.clone(),
        drawn: !chart.numbers.rows.is_empty(),
    });
    let screen = PastScreen {
        title,
        charts: told.collect(),
        walks,
        moved,
        why,
        caution: words.say("shell-label-first"),
    };
    Ok(PastView { screen, charts })
}

/// One walk at a point: the day, as found, as left, damage.
fn line(words: &Words, book: &Book, walk: &PointWalk) -> String {
    let record = &walk.record;
    let found = record.found.as_ref();
    let found = found.map(|found| words.as_found(&found.found, book));
    let seen = record.seen.as_ref().map(|seen| words.seen(seen));
    let left = record.left.as_ref().map(|left| words.as_left(left, book));
    let damage = record.damage.iter().map(|(damage, note)| {
        let damage = words.code(*damage);
        if note.trim().is_empty() {
            return damage;
        }
        words.fill(
            "walk-with-note",
            &[("text", damage.into()), ("note", note.into())],
        )
    });
    let parts: Vec<String> = found
        .into_iter()
        .chain(seen)
        .chain(left)
        .chain(damage)
        .collect();
    let args = [
        ("date", words.date(walk.day).into()),
        ("told", parts.join("; ").into()),
    ];
    let line = words.fill("past-walk", &args);
    if walk.far.is_empty() {
        return line;
    }
    words.fill(
        "past-walk-far",
        &[("walk", line.into()), ("far", (&walk.far).into())],
    )
}

/// The points in use that have moved before.
fn moved(core: &Core, rig: RigId, book: &Book) -> Result<Vec<PastPoint>, Problem> {
    let known = core.logbook.known(rig)?;
    let mut times: BTreeMap<_, u32> = BTreeMap::new();
    let ended = known.ended.iter();
    for (point, _) in ended.filter(|(_, Ended { moved, .. })| moved.is_some()) {
        let count = times.entry(*point).or_default();
        *count = count.saturating_add(1);
    }
    let in_use = |point: &&Point| !point.retired && times.contains_key(&point.id);
    let mut points: Vec<&Point> = book.points.iter().filter(in_use).collect();
    points.sort_by_key(|point| std::cmp::Reverse(times.get(&point.id).copied()));
    let told = points.into_iter().map(|point| PastPoint {
        code: point.code.to_string(),
        words: core.words.fill(
            "past-moved",
            &[
                ("point", core.words.point_name(point.id, book).into()),
                ("times", times.get(&point.id).copied().unwrap_or(0).into()),
            ],
        ),
    });
    Ok(told.collect())
}

/// Which limit comes first and what each comes to, the owner's rules with the owner's word, what the
/// past adds.
fn why(core: &Core, rig: RigId) -> Result<Vec<String>, Problem> {
    let due = due::due(core, rig)?;
    let rules = rule::rules(core, rig)?;
    let learned = learned::told(core, rig)?;
    let first = due.items.into_iter().find(|item| item.words == due.words);
    let limits = first
        .into_iter()
        .flat_map(|item| item.limits.into_iter().chain(item.put_off));
    let rules = rules
        .rules
        .into_iter()
        .map(|rule| rule.words)
        .chain(rules.empty);
    let past = learned.never_tight.into_iter().chain(learned.first);
    let past = past.chain([learned.how, learned.condition]);
    Ok(std::iter::once(due.words)
        .chain(limits)
        .chain(rules)
        .chain(past)
        .collect())
}
