//! The kinds that loosen: of how many have how many moved, and, where enough have, how long they hold.

use super::Chart;
use super::page::{BROKEN, MARGIN, divide, heading, line, sheet, words as write};
use super::plot::{Axis, Map, Spot, axes};
use crate::table::{Cell, Table};
use baywalk_domain::due::KindCurve;
use baywalk_domain::loosening::{Npmle, Proportion};
use baywalk_shapes::{Anchor, Drawing, Path, Role};
use baywalk_words::Words;

/// What is shown of one kind.
#[derive(Debug, Clone, PartialEq)]
pub struct KindFacts {
    /// Its name.
    pub name: String,
    /// What is told of it, in sentences.
    pub told: String,
    /// The share that has moved, with its interval.
    pub share: Option<Proportion>,
    /// What its lives tell at any age.
    pub curve: KindCurve,
}

const COLUMNS: [&str; 12] = [
    "kind",
    "joints",
    "moved",
    "share",
    "share_least",
    "share_most",
    "months",
    "steps_least",
    "steps_most",
    "law",
    "law_least",
    "law_most",
];

/// The ends of the scale of shares, in percent.
const SCALES: [f64; 4] = [10.0, 20.0, 50.0, 100.0];

/// The kinds that loosen: each with its share and interval, then a curve for those of which five have
/// moved.
#[must_use]
pub fn kinds(kinds: &[KindFacts], none: &str, words: &Words, width: f64) -> Chart {
    let mut drawing = sheet(width);
    let mut told: Vec<String> = kinds.iter().map(|kind| kind.told.clone()).collect();
    if kinds.is_empty() {
        told.push(none.to_owned());
        drawing.height = line(&mut drawing, 8.0, none);
    } else {
        let mut top = shares(&mut drawing, kinds, words);
        for kind in kinds.iter().filter(|kind| kind.curve.law.is_some()) {
            told.extend(steps_told(kind, words));
            top = panel(&mut drawing, top + 14.0, kind, words);
        }
        if kinds.iter().any(|kind| kind.curve.law.is_some()) {
            told.push(words.say("past-kinds-law"));
        }
        drawing.height = top + 4.0;
    }
    Chart {
        title: words.say("past-kinds"),
        told,
        drawing,
        numbers: Table::new("kinds", &COLUMNS, kinds.iter().flat_map(rows).collect()),
    }
}

/// For each kind its name; under it a dot at the share, a line over the interval, k of n.
fn shares(drawing: &mut Drawing, kinds: &[KindFacts], words: &Words) -> f64 {
    let most = kinds.iter().filter_map(|kind| kind.share);
    let most = most.fold(0.0, |most: f64, share| most.max(100.0 * share.most));
    let end = SCALES.into_iter().find(|end| *end >= most).unwrap_or(100.0);
    let args = [("most", words.number(end, 0).into())];
    let mut top = line(drawing, 2.0, &words.fill("past-kinds-scale", &args));
    let (from, to) = (MARGIN + 6.0, drawing.width - 110.0);
    for kind in kinds {
        divide(drawing, top);
        let y = line(drawing, top + 4.0, &kind.name) + 6.0;
        drawing.stroke(Role::Hair, 1.0, Path::line((from, y), (to, y)));
        if let Some(share) = kind.share {
            let x = |part: f64| from + (to - from) * 100.0 * part / end;
            let (least, most) = (x(share.least), x(share.most));
            let ends = Path::line((least, y), (most, y))
                .and(Path::line((least, y - 5.0), (least, y + 5.0)))
                .and(Path::line((most, y - 5.0), (most, y + 5.0)));
            drawing.stroke(Role::Ink, 2.0, ends);
            drawing.fill(Role::Ink, Path::circle(x(share.share), y, 4.0));
        }
        let args = [
            ("moved", kind.curve.moved.into()),
            ("joints", kind.curve.joints.into()),
        ];
        let (count, right) = (words.fill("past-k-of-n", &args), drawing.width - MARGIN);
        write(
            drawing,
            (right, y + 5.0),
            Anchor::End,
            &count,
            right - to - 6.0,
        );
        top = y + 14.0;
    }
    divide(drawing, top);
    top
}

/// One kind: what is counted as boxes, the law broken, its band as upright hairlines.
fn panel(drawing: &mut Drawing, top: f64, kind: &KindFacts, words: &Words) -> f64 {
    let named = [("kind", kind.name.clone().into())];
    let top = heading(drawing, top, &words.fill("past-kind", &named));
    let args = [
        ("moved", kind.curve.moved.into()),
        ("joints", kind.curve.joints.into()),
    ];
    let top = line(drawing, top, &words.fill("past-kind-n", &args));
    let word = |value: &f64| words.number(*value, 0);
    let spot = Spot {
        top,
        height: 190.0,
        left: 44.0,
        foot: 24.0,
    };
    let months = Axis {
        over: 0.0..kind.curve.last.max(1.0),
        ticks: 6,
        word: &word,
    };
    let held = Axis {
        over: 0.0..100.0,
        ticks: 5,
        word: &word,
    };
    if let Some(map) = axes(drawing, spot, &months, &held) {
        law(drawing, &map, kind.curve.law.as_deref().unwrap_or_default());
        if let Ok(found) = &kind.curve.steps {
            steps(drawing, &map, found, kind.curve.last);
        }
    }
    let middle = (drawing.width + spot.left) / 2.0;
    let foot = top + spot.height + 12.0;
    let room = drawing.width - spot.left;
    let axis = words.say("past-kind-axis");
    write(drawing, (middle, foot), Anchor::Middle, &axis, room) - 5.0
}

fn held(moved: f64) -> f64 {
    100.0 * (1.0 - moved)
}

fn law(drawing: &mut Drawing, map: &Map, law: &[(f64, Proportion)]) {
    let mut band = Path::default();
    for (age, chance) in law {
        let (from, to) = (
            map.at(*age, held(chance.most)),
            map.at(*age, held(chance.least)),
        );
        band = band.and(Path::line(from, to));
    }
    drawing.stroke(Role::Detail, 1.0, band);
    let limits: [fn(&Proportion) -> f64; 2] = [|chance| chance.least, |chance| chance.most];
    for limit in limits {
        let line = law.iter().map(|(age, chance)| (*age, held(limit(chance))));
        if let Some(path) = map.line(line) {
            drawing.stroke(Role::Ink, 1.0, path);
        }
    }
    let line = law.iter().map(|(age, chance)| (*age, held(chance.share)));
    if let Some(path) = map.line(line) {
        drawing.dashed(Role::Ink, 2.0, BROKEN, path);
    }
}

/// Bold where the share is known; inside a span, where it can't be told, its limits alone.
fn steps(drawing: &mut Drawing, map: &Map, found: &Npmle, last: f64) {
    let (mut age, mut share) = (0.0, 0.0);
    for span in found.spans.iter().filter(|span| span.mass > 1e-9) {
        let after = span.after.min(last);
        if let Some(path) = map.line([(age, held(share)), (after, held(share))]) {
            drawing.stroke(Role::Ink, 3.5, path);
        }
        let Some(by) = span.by else {
            return;
        };
        let next = share + span.mass;
        let corners = [
            (after, share),
            (by, share),
            (by, next),
            (after, next),
            (after, share),
        ];
        let corners = corners.map(|(age, share)| (age, held(share)));
        if let Some(path) = map.line(corners) {
            drawing.stroke(Role::Ink, 1.5, path);
        }
        (age, share) = (by, next);
    }
    if let Some(path) = map.line([(age, held(share)), (last, held(share))]) {
        drawing.stroke(Role::Ink, 3.5, path);
    }
}

/// What the lives tell without a law, by the last check.
fn steps_told(kind: &KindFacts, words: &Words) -> Option<String> {
    let (least, most) = kind.curve.steps.as_ref().ok()?.moved_by(kind.curve.last);
    let percent = |share: f64| words.number(100.0 * share, 0);
    let (least, most) = (percent(least), percent(most));
    let key = if least == most {
        "past-kind-step"
    } else {
        "past-kind-steps"
    };
    let args = [
        ("kind", kind.name.clone().into()),
        ("months", words.number(kind.curve.last, 0).into()),
        ("least", least.into()),
        ("most", most.into()),
    ];
    Some(words.fill(key, &args))
}

/// The share; then, where there is a law, the steps and the law at each age.
fn rows(kind: &KindFacts) -> Vec<[Cell; 12]> {
    let curve = &kind.curve;
    let part = |of: f64| Cell::number(of, 6);
    let limits = |share: Option<Proportion>| {
        share.map_or([const { Cell::Empty }; 3], |share| {
            [part(share.share), part(share.least), part(share.most)]
        })
    };
    let row = |age: Option<f64>, chance: Option<Proportion>| {
        let [share, least, most] = limits(kind.share.filter(|_| age.is_none()));
        let [law, law_least, law_most] = limits(chance);
        let steps = age.zip(curve.steps.as_ref().ok());
        let steps = steps.map(|(age, steps)| steps.moved_by(age));
        [
            Cell::code(curve.kind),
            curve.joints.into(),
            curve.moved.into(),
            share,
            least,
            most,
            age.map(|age| Cell::number(age, 4)).into(),
            steps.map(|(least, _)| part(least)).into(),
            steps.map(|(_, most)| part(most)).into(),
            law,
            law_least,
            law_most,
        ]
    };
    let law = curve.law.iter().flatten();
    let curve = law.map(|(age, chance)| row(Some(*age), Some(*chance)));
    std::iter::once(row(None, None)).chain(curve).collect()
}
