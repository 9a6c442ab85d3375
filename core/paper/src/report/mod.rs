//! The report of a walk: what stays out of service first, then what moved, then all the rest.

mod as_found;
mod as_left;
mod bays;
mod cautions;
mod counts;
mod exceptions;
mod facts;
mod figure;
mod findings;
mod follow_up;
mod glance;
mod isolation;
mod moved;
mod next;
mod out;
mod pairs;
mod photos;
mod proof;
mod readings;
mod rig;
mod sources;
mod strip;
mod verify;
mod view;

pub use facts::{Asked, Facts, LedgerHead};
pub use follow_up::follow_up;

use crate::sheet::{Block, Part, Sheet};
use baywalk_words::Words;
use view::View;

/// The report of a walk, without a format.
///
/// # Example
/// ```no_run
/// use baywalk_paper::Paper;
/// use baywalk_paper::photo::NoPhotos;
/// # fn facts() -> (baywalk_paper::report::Facts<'static>, baywalk_words::Words) { todo!() }
/// let (facts, words) = facts();
/// let report = baywalk_paper::report::sheet(&facts, &words);
/// let pdf = report.pdf(Paper::A4, &words, &NoPhotos)?;
/// assert!(pdf.starts_with(b"%PDF-1.7"));
/// # Ok::<(), baywalk_paper::Unwritten>(())
/// ```
#[must_use]
pub fn sheet(facts: &Facts<'_>, words: &Words) -> Sheet {
    let view = View {
        facts: *facts,
        words,
    };
    Sheet {
        language: words.locale().to_owned(),
        title: title(&view),
        under: rig::under(&view),
        parts: parts(&view),
        foot: verify::foot(&view),
        edition: facts.edition.to_owned(),
        identity: format!("{} {}", facts.walk.id, facts.ledger.digest),
    }
}

fn title(view: &View<'_>) -> String {
    let day = view.words.date(view.facts.walk.started.date());
    let args = [("day", day.as_str()), ("rig", &view.facts.book.rig.name)];
    view.fill("report-title", &args)
}

fn parts(view: &View<'_>) -> Vec<Part> {
    let part = |anchor, key, blocks| Part {
        anchor,
        title: view.say(key),
        apart: false,
        blocks,
    };
    vec![
        part("result", "report-part-result", glance::blocks(view)),
        Part {
            apart: true,
            ..part("details", "report-part-details", details(view))
        },
        part("cautions", "report-part-cautions", cautions::blocks(view)),
        part("walk", "report-part-walk", rig::blocks(view)),
        part("isolated", "report-part-isolated", isolation::blocks(view)),
        part("proved", "report-part-proved", proof::blocks(view)),
        part("bays", "report-part-bays", bays::blocks(view)),
        part("power", "report-part-power", readings::blocks(view)),
        part("sources", "report-part-sources", sources::blocks(view)),
        part("verify", "report-part-verify", verify::blocks(view)),
    ]
}

/// What had moved and what was found, in full.
fn details(view: &View<'_>) -> Vec<Block> {
    let mut blocks = moved::blocks(view);
    blocks.extend(findings::blocks(view));
    blocks.extend(next::asked(view));
    blocks
}
