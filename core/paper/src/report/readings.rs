//! The readings while power came back.

use super::view::View;
use crate::sheet::{Block, Cell};
use baywalk_domain::supply::{Judged, Measured, SafeAct};

pub(super) fn blocks(view: &View<'_>) -> Vec<Block> {
    let readings = view.facts.walk.readings.iter();
    let rows = readings.map(|(reading, judged)| {
        vec![
            Cell::of(view.headed(reading.step)).with([reading.place.clone()]),
            measured(view, &reading.measured),
            limits(view, judged.as_ref()),
            verdict(view, judged.as_ref()),
        ]
    });
    let columns = [
        ("report-col-reading", 36),
        ("report-col-value", 16),
        ("report-col-limits", 24),
        ("report-col-verdict", 24),
    ];
    let caption = view.count("report-readings-caption", view.facts.walk.readings.len());
    let table = view.table(caption, &columns, rows.collect());
    let table = table.unwrap_or_else(|| Block::Text(view.say("report-readings-none")));
    let circuit = view.facts.walk.service.as_ref().map(|(step, seen)| {
        let (after, said) = (view.code(*step), view.words.service_seen(seen));
        Block::Text(view.fill("report-service", &[("after", &after), ("said", &said)]))
    });
    std::iter::once(table).chain(circuit).collect()
}

fn measured(view: &View<'_>, measured: &Measured) -> Cell {
    match measured {
        Measured::Volts(volts) => Cell::of(view.words.typed(volts)),
        Measured::Works => Cell::of(view.say("walk-measured-works")),
        Measured::Fails => Cell::of(view.say("walk-measured-fails")),
        Measured::Not(why) => Cell::of(view.say("report-not-measured")).with([why.clone()]),
    }
}

fn limits(view: &View<'_>, judged: Option<&Judged>) -> Cell {
    let Some((judged, (least, most))) = judged.and_then(|judged| Some((judged, judged.limits?)))
    else {
        return Cell::default();
    };
    let (least, most) = (volts(least), volts(most));
    let between = view.fill("report-limits", &[("least", &least), ("most", &most)]);
    Cell::default().with([between, view.code(judged.basis)])
}

/// A limit to a tenth of a volt, without a needless zero.
fn volts(limit: f64) -> String {
    let text = format!("{limit:.1}");
    text.strip_suffix(".0").map_or(text.clone(), str::to_owned)
}

fn verdict(view: &View<'_>, judged: Option<&Judged>) -> Cell {
    match judged {
        None => Cell::default(),
        Some(judged) => {
            let act = (judged.act != SafeAct::GoOn).then(|| view.code(judged.act));
            Cell::of(view.headed(judged.verdict)).with(act)
        }
    }
}
