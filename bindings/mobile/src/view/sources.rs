//! The sources and their bus, as a one-line diagram.

use crate::Picture;
use baywalk_domain::isolation::away_order;
use baywalk_domain::rig::{Book, Isolation};
use baywalk_domain::walk::{Next, WalkState};
use baywalk_screens::Core;
use baywalk_shapes::line::Power;
use baywalk_shapes::one_line::{SourceLine, SourceState, one_line};

/// The sources in the order in which they are taken away; the bus stays whole until a proof.
pub(super) fn sources(
    core: &Core,
    (book, walk): (&Book, &WalkState),
    next: &Next,
    width: f64,
) -> Picture {
    let lines: Vec<SourceLine> = away_order(book.live_sources())
        .into_iter()
        .map(|source| {
            let is_next = matches!(next, Next::Isolate(id) | Next::Restore(id) if *id == source.id);
            let state = match source.isolation {
                _ if is_next => SourceState::Next,
                Isolation::Never => SourceState::Fixed,
                _ if walk.is_dealt_with(source.id) && !walk.restored.contains(&source.id) => {
                    SourceState::Away
                }
                _ => SourceState::Connected,
            };
            SourceLine {
                supply: source.supply,
                state,
                word: core.words.source_name(source.id, book),
            }
        })
        .collect();
    one_line(&lines, Power::Live, width).into()
}
