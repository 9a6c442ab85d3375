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
mod html;
mod isolation;
mod moved;
mod next;
mod out;
mod pairs;
mod proof;
mod readings;
mod rig;
mod sources;
mod strip;
mod verify;
mod view;

pub use facts::{Facts, LedgerHead};
pub use html::html;

use crate::sheet::{Block, Part, Sheet};
use baywalk_words::Words;
use view::View;

/// Lays a report out, without a format.
pub(crate) fn sheet(facts: &Facts<'_>, words: &Words) -> Sheet {
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
        blocks,
    };
    vec![
        part("result", "report-part-result", result(view)),
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

fn result(view: &View<'_>) -> Vec<Block> {
    let mut blocks = out::blocks(view);
    blocks.extend(counts::blocks(view));
    blocks.extend(strip::blocks(view));
    blocks.extend(next::blocks(view));
    blocks.extend(moved::blocks(view));
    blocks.extend(findings::blocks(view));
    blocks
}
