//! One of each drawing, by name; also kept as a page that can be looked at in a browser.

use crate::rig::{many, motorhome, trailer};
use baywalk_domain::coded::Coded;
use baywalk_domain::rig::{RigKind, SupplyKind};
use baywalk_domain::walk::{Angle, Grade};
use baywalk_shapes::clamp::{Depth, clamp};
use baywalk_shapes::drift::drift;
use baywalk_shapes::frame::{Frame, frame};
use baywalk_shapes::line::{PointMark, Power, line, stretches};
use baywalk_shapes::one_line::{SourceLine, SourceState, one_line};
use baywalk_shapes::palette::Palette;
use baywalk_shapes::pin::{PinState, pin};
use baywalk_shapes::places::{Spot, places};
use baywalk_shapes::proof::{Layout, Pair, proof};
use baywalk_shapes::strip::strip;
use baywalk_shapes::svg::svg;
use baywalk_shapes::tag::{Weight, tag};
use baywalk_shapes::{Drawing, Role, hatch, mesh, screw, sign};
use std::collections::BTreeMap;

pub(crate) type Named = Vec<(String, Drawing)>;

/// What a point was found as: each drawing of its own.
pub(crate) fn glyphs() -> Named {
    let mut glyphs: Named = vec![
        ("held".into(), screw::held()),
        ("moved".into(), screw::moved(None)),
        ("loose".into(), screw::loose()),
        ("apart".into(), screw::apart()),
        ("looked at".into(), sign::look()),
        ("not judged".into(), sign::to_do()),
        ("leave alone".into(), sign::leave_alone()),
        ("ask the maker".into(), sign::ask_maker()),
    ];
    for angle in Angle::ALL {
        glyphs.push((angle.code().into(), screw::moved(Some(*angle))));
    }
    for depth in [Depth::Held, Depth::Moved, Depth::Loose, Depth::Apart] {
        glyphs.push((format!("clamp {depth:?}"), clamp(depth)));
    }
    glyphs
}

/// The patterns of the strip.
pub(crate) fn hatches() -> Named {
    let grades = Grade::ALL.iter();
    grades
        .map(|grade| (grade.code().to_owned(), hatch::swatch(*grade, 64.0, 40.0)))
        .collect()
}

/// The frames of a number.
pub(crate) fn frames() -> Named {
    let frames = Frame::ALL.iter();
    frames
        .map(|kind| (format!("{kind:?}"), frame(*kind, 96.0, 48.0, 0.0)))
        .collect()
}

fn figures() -> Named {
    let marks = [
        PointMark::Held,
        PointMark::Moved,
        PointMark::Loose,
        PointMark::Apart,
        PointMark::LookedAt,
        PointMark::Held,
        PointMark::ToDo,
    ];
    let long = vec![PointMark::Held; 60];
    let proof_of =
        |edges: &[(usize, usize, Pair)], nodes: &[&str], layout| proof(nodes, edges, layout);
    let (done, now, open) = (Pair::Done, Pair::Now, Pair::Open);
    let six = [
        (0, 1, done),
        (0, 2, done),
        (1, 2, done),
        (0, 3, now),
        (1, 3, open),
        (2, 3, open),
    ];
    let source = |supply, state, word: &str| SourceLine {
        supply,
        state,
        word: word.to_owned(),
    };
    let sources = [
        source(SupplyKind::Ac, SourceState::Away, "Shore power, 50 A"),
        source(SupplyKind::Ac, SourceState::Connected, "Generator"),
        source(SupplyKind::Dc, SourceState::Next, "Solar"),
        source(
            SupplyKind::Dc,
            SourceState::Fixed,
            "House battery, its posts stay alive whatever is opened",
        ),
    ];
    let ends = ["L1", "0", "L2"];
    let spot = |across, down, done| Spot { across, down, done };
    let others = [
        spot(120, 200, true),
        spot(480, 200, false),
        spot(0, 1000, false),
    ];
    let named: [(&str, Drawing); 18] = [
        ("places", places(&others, spot(820, 640, false))),
        (
            "dead",
            line(360.0, Power::Dead, "Dead, proved 9:31", &marks, Some(6)),
        ),
        (
            "dead, many",
            line(
                360.0,
                Power::Dead,
                "only bay F dead; bay E live",
                &long,
                Some(30),
            ),
        ),
        (
            "live",
            line(360.0, Power::Live, "Treat as live until proved", &[], None),
        ),
        (
            "to measure",
            line(360.0, Power::Unmeasured, "To be measured", &[], None),
        ),
        (
            "three stretches",
            stretches(
                360.0,
                &[
                    (Power::Live, 1.0),
                    (Power::Dead, 1.0),
                    (Power::Unmeasured, 1.0),
                ],
            ),
        ),
        (
            "split phase",
            proof_of(&six, &["L1", "L2", "N", "G"], Layout::Around),
        ),
        (
            "single phase",
            proof_of(&six[..3], &["L", "N", "G"], Layout::Around),
        ),
        (
            "bond",
            proof_of(&six[..1], &["G", "chassis"], Layout::Around),
        ),
        (
            "two sets",
            proof_of(
                &[(0, 2, done), (0, 3, now), (1, 2, open), (1, 3, open)],
                &["L1", "L2", "L1", "L2"],
                Layout::Facing(2),
            ),
        ),
        (
            "five",
            proof_of(&[(0, 4, now)], &["1", "2", "3", "4", "5"], Layout::Around),
        ),
        ("sources", one_line(&sources, Power::Live, 328.0)),
        (
            "sources away",
            one_line(&sources[..2], Power::Unmeasured, 200.0),
        ),
        ("weak neutral", drift(Some(-8.9), 300.0, ends, Role::Ink)),
        ("beyond", drift(Some(31.0), 300.0, ends, Role::Ink)),
        ("no reading", drift(None, 300.0, ends, Role::Ink)),
        ("mesh", mesh::swatch(36.0, 24.0)),
        ("next", sign::next()),
    ];
    named
        .map(|(name, drawing)| (name.to_owned(), drawing))
        .to_vec()
}

fn labels() -> Named {
    let mut named: Named = Vec::new();
    for weight in [Weight::Plain, Weight::Chosen, Weight::Next] {
        for word in ["F", "F12", "GALLEY88", "WWWWWWWW"] {
            named.push((format!("{word} {weight:?}"), tag(word, weight)));
        }
    }
    for state in [PinState::ToDo, PinState::Done, PinState::Next] {
        for number in ["8", "12", "128"] {
            named.push((format!("{number} {state:?}"), pin(number, state)));
        }
    }
    for kind in Frame::ALL {
        named.push((format!("large {kind:?}"), frame(kind, 328.0, 146.0, 36.0)));
    }
    named
}

/// Strips of all sizes.
pub(crate) fn strips() -> Named {
    let none = BTreeMap::new();
    let (coach, told) = motorhome();
    let words = ["Done", "Moved", "Done", "Moved", "Moved", "To do"];
    let long = [
        "tow plug and tongue box",
        "battery box",
        "roof cable entry",
        "converter bay, six screws",
        "distribution panel",
        "shore inlet",
    ];
    let (short_words, long_words) = (trailer(words), trailer(long));
    let kinds = [RigKind::Motorhome, RigKind::Trailer];
    let mut named: Named = vec![
        ("motorhome 328".into(), strip(&coach, &told, 328.0)),
        ("motorhome 520".into(), strip(&coach, &told, 520.0)),
        (
            "trailer 328".into(),
            strip(&short_words.0, &short_words.1, 328.0),
        ),
        (
            "trailer long 328".into(),
            strip(&long_words.0, &long_words.1, 328.0),
        ),
    ];
    for kind in kinds {
        for count in [0, 3, 9, 15, 40] {
            let book = many(kind, count);
            named.push((format!("{kind:?} {count}"), strip(&book, &none, 328.0)));
        }
    }
    named
}

pub(crate) fn everything() -> Named {
    [glyphs(), hatches(), frames(), figures(), labels(), strips()].concat()
}

#[test]
fn a_page_of_all_drawings_is_kept_to_be_looked_at() {
    let mut page = String::from(
        "<!DOCTYPE html><meta charset=utf-8><title>Shapes</title><body style='font-family:sans-serif;width:760px'>",
    );
    for (name, drawing) in everything() {
        let times = if drawing.width < 50.0 { 2.0 } else { 1.0 };
        let (width, height) = (drawing.width * times, drawing.height * times);
        let text = svg(&drawing, &Palette::PAPER, None);
        page += &format!(
            "<figure style='display:inline-block;margin:6px'><div style='width:{width}px;height:{height}px;outline:1px dotted #c88'>{text}</div><figcaption>{name}</figcaption></figure>"
        );
    }
    let file = std::path::Path::new(env!("CARGO_TARGET_TMPDIR")).join("shapes.html");
    std::fs::write(file, &page).unwrap();
    assert!(page.matches("<svg").count() > 60);
}
