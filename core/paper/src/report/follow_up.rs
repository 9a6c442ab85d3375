//! The sheet of one finding, to hand to the licensed person who is asked.

use super::view::View;
use super::{Facts, bays, cautions, findings, out, photos, verify};
use crate::sheet::{Block, Cell, Part, Sheet};
use baywalk_domain::finding::{About, Finding};
use baywalk_domain::ids::BayId;
use baywalk_domain::rig::Point;
use baywalk_words::Words;

/// The sheet of one finding: what is asked, where it is, what was found and done, photos, what is
/// alive, and lines to fill in. The facts are those of the walk that raised it.
#[must_use]
pub fn follow_up(facts: &Facts<'_>, finding: &Finding, words: &Words) -> Sheet {
    let view = View {
        facts: *facts,
        words,
    };
    let kind = view.headed(finding.raised.kind);
    let about = words.about(finding.raised.about, facts.book);
    let args = [("finding", kind.as_str()), ("about", &about)];
    Sheet {
        language: words.locale().to_owned(),
        title: view.fill("report-follow-up-title", &args),
        under: under(&view, finding),
        parts: parts(&view, finding),
        foot: verify::foot(&view),
        edition: facts.edition.to_owned(),
        identity: format!("{} {}", finding.raised.id, facts.ledger.digest),
    }
}

fn under(view: &View<'_>, finding: &Finding) -> Vec<String> {
    let rig = &view.facts.book.rig;
    let (kind, service) = (view.headed(rig.kind), view.code(rig.service));
    let day = view.words.date(finding.on);
    let found = [("day", day.as_str()), ("person", &view.facts.walk.person)];
    vec![
        rig.name.clone(),
        view.fill("report-rig", &[("kind", &kind), ("service", &service)]),
        view.fill("report-follow-up-by", &found),
    ]
}

fn parts(view: &View<'_>, finding: &Finding) -> Vec<Part> {
    let part = |anchor, key, blocks: Vec<Block>| Part {
        anchor,
        title: view.say(key),
        apart: false,
        blocks,
    };
    vec![
        part("asked", "report-part-asked", asked(view, finding)),
        part("place", "report-part-place", place(view, finding)),
        part("live", "report-part-live", out::power(view)),
        part("cautions", "report-part-cautions", cautions::blocks(view)),
        part("answer", "report-part-answer", answer(view)),
        part("verify", "report-part-verify", verify::blocks(view)),
    ]
}

/// How soon, what to do, and what was decided.
fn asked(view: &View<'_>, finding: &Finding) -> Vec<Block> {
    let kind = finding.raised.kind;
    let mut lines = vec![view.words.what_to_do(kind)];
    lines.extend(findings::decided(view, finding));
    lines.retain(|line| !line.trim().is_empty());
    vec![
        Block::Caution {
            title: view.headed(kind.urgency()),
            lines,
        },
        Block::Text(view.say("report-follow-up-label")),
    ]
}

/// Where it is, what was found there and done, and its photos.
fn place(view: &View<'_>, finding: &Finding) -> Vec<Block> {
    let about = finding.raised.about;
    let bay = photos::home(view, about);
    let mut blocks = bay.map_or_else(Vec::new, |bay| at_bay(view, bay));
    let point = match about {
        About::Point(id) => view.facts.book.point(id),
        About::Rig | About::Bay(_) | About::Source(_) | About::Reading(_) => None,
    };
    let noted = [view.about(about), findings::what(view, finding)];
    let columns = [("report-col-where", 50), ("report-col-finding", 50)];
    let caption = view.say("report-follow-up-noted");
    blocks.extend(view.table(caption, &columns, vec![noted.to_vec()]));
    blocks.extend(point.and_then(|point| found(view, point)));
    blocks.extend(photos::blocks(view, &|shown| {
        shown == about || bay.is_some_and(|bay| shown == About::Bay(bay))
    }));
    blocks
}

fn at_bay(view: &View<'_>, id: BayId) -> Vec<Block> {
    let Some(bay) = view.facts.book.bay(id) else {
        return Vec::new();
    };
    bays::heading(view, bay)
}

fn found(view: &View<'_>, point: &Point) -> Option<Block> {
    let row: Vec<Cell> = bays::row(view, point);
    view.table(
        view.say("report-follow-up-found"),
        &bays::COLUMNS,
        vec![row],
    )
}

/// What the one who mends it writes in.
fn answer(view: &View<'_>) -> Vec<Block> {
    let lines = [
        "report-answer-done",
        "report-answer-torque",
        "report-answer-readings",
        "report-answer-parts",
        "report-answer-name",
        "report-answer-licence",
        "report-answer-day",
    ];
    let lines = lines.map(|line| view.say(line));
    vec![
        Block::Text(view.say("report-answer")),
        Block::Blanks(lines.to_vec()),
    ]
}
