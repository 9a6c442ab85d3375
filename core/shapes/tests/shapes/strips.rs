//! The strip over random rigs: no tag over another, order kept, patterns inside their bays.

use crate::rig::{Short, book, id, many, standing, trailer};
use crate::rooms::is_whole;
use baywalk_domain::coded::Coded;
use baywalk_domain::rig::{RigKind, Side};
use baywalk_domain::walk::BayStage;
use baywalk_shapes::line::Power;
use baywalk_shapes::strip::{Standing, strip};
use baywalk_shapes::{Bounds, Drawing, Role, Shape, Size};
use proptest::prelude::*;
use std::collections::BTreeMap;

/// The boxes of tags and of the words under them: nothing else of a strip is plate or text.
fn tags(drawing: &Drawing) -> Vec<Bounds> {
    let tags = drawing.parts.iter().filter(|part| match &part.shape {
        Shape::Fill { .. } => matches!(part.role, Role::Plate | Role::Next),
        Shape::Label(label) => label.size == Size::Least,
        Shape::Stroke { .. } => false,
    });
    tags.map(|part| part.bounds().unwrap()).collect()
}

/// The boxes of the bays.
fn faces(drawing: &Drawing) -> Vec<Bounds> {
    let faces = drawing
        .parts
        .iter()
        .filter(|part| part.role == Role::Face && matches!(part.shape, Shape::Fill { .. }));
    faces.map(|part| part.bounds().unwrap()).collect()
}

fn none_overlap(what: &str, boxes: &[Bounds]) {
    for (place, one) in boxes.iter().enumerate() {
        for other in boxes.iter().skip(place + 1) {
            assert!(!one.overlaps(other), "{what}: {one:?} and {other:?}");
        }
    }
}

/// A leader is a line one wide that ends at a tag; none may run through another tag.
fn no_leader_runs_through_a_tag(drawing: &Drawing) {
    let tags = tags(drawing);
    for part in &drawing.parts {
        let Shape::Stroke { path, width, .. } = &part.shape else {
            continue;
        };
        if (*width - 1.0).abs() > 1e-9 || path.segments().len() < 3 {
            continue;
        }
        for (from, to) in crate::raster::pieces(path) {
            for step in 1..20 {
                let share = f64::from(step) / 20.0;
                let (x, y) = (
                    from.x + (to.x - from.x) * share,
                    from.y + (to.y - from.y) * share,
                );
                let inside = |tag: &Bounds| {
                    x > tag.left && x < tag.right && y > tag.top + 0.1 && y < tag.bottom - 0.1
                };
                assert!(!tags.iter().any(inside), "a leader at {x}, {y}");
            }
        }
    }
}

fn sides() -> impl Strategy<Value = Side> {
    prop::sample::select(Side::ALL.to_vec())
}

type Told = (u16, Side, String, [usize; 5], usize, bool);

fn bays() -> impl Strategy<Value = Vec<Told>> {
    let bay = (
        0..=1000_u16,
        sides(),
        prop_oneof!["", "[A-Za-zé ]{1,24}"],
        prop::array::uniform5(0..4_usize),
        0..30_usize,
        any::<bool>(),
    );
    prop::collection::vec(bay, 0..40)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    #[test]
    fn any_rig_is_drawn_whole_and_no_tag_lies_over_another(
        told in bays(),
        trailer in any::<bool>(),
        long in any::<bool>(),
        width in 200.0..800.0_f64,
    ) {
        let kind = if trailer { RigKind::Trailer } else { RigKind::Motorhome };
        let codes: Vec<String> =
            (0..told.len()).map(|at| format!("{}{at}", if long { "GALLEY" } else { "B" })).collect();
        let short: Vec<Short<'_>> = told.iter().zip(&codes)
            .map(|((station, side, ..), code)| (code.as_str(), *station, *side)).collect();
        let book = book(kind, &short);
        let standings: BTreeMap<_, Standing> = told.iter().enumerate()
            .map(|(place, (_, _, word, counts, more, next))| {
                let stage = BayStage::ALL[place % 3];
                let mut bay = standing(counts.iter().sum::<usize>() + more, *counts, stage);
                bay.word.clone_from(word);
                bay.next = *next && place == 0;
                bay.power = [None, Some(Power::Dead), Some(Power::Unmeasured)][more % 3];
                (id(place), bay)
            }).collect();
        let drawing = strip(&book, &standings, width);
        is_whole("strip", &drawing);
        none_overlap("tags", &tags(&drawing));
        no_leader_runs_through_a_tag(&drawing);
        let plates = drawing.parts.iter()
            .filter(|part| matches!(&part.shape, Shape::Label(label) if label.size == Size::Tag));
        prop_assert_eq!(plates.count(), told.len());
    }

    #[test]
    fn bays_never_overlap_and_stand_in_the_order_of_their_stations(
        stations in prop::collection::vec((0..=1000_u16, sides()), 1..40),
        width in 240.0..800.0_f64,
    ) {
        let codes: Vec<String> = (0..stations.len()).map(|at| format!("B{at}")).collect();
        let short: Vec<Short<'_>> = stations.iter().zip(&codes)
            .map(|((station, side), code)| (code.as_str(), *station, *side)).collect();
        let drawing = strip(&book(RigKind::Motorhome, &short), &BTreeMap::new(), width);
        let faces = faces(&drawing);
        prop_assert_eq!(faces.len(), stations.len());
        none_overlap("bays", &faces);
        prop_assert!(faces.iter().all(|bay| bay.right - bay.left > 0.5));
    }
}

#[test]
fn two_bays_at_one_station_stand_side_by_side() {
    let pair = [("A", 300, Side::Left), ("B", 300, Side::Right)];
    let drawing = strip(&book(RigKind::Motorhome, &pair), &BTreeMap::new(), 328.0);
    none_overlap("bays", &faces(&drawing));
    none_overlap("tags", &tags(&drawing));
}

#[test]
fn bays_of_the_far_side_alone_are_dashed() {
    for side in Side::ALL {
        let book = book(RigKind::Motorhome, &[("A", 400, *side)]);
        let drawing = strip(&book, &BTreeMap::new(), 328.0);
        let dashed = drawing
            .parts
            .iter()
            .any(|part| matches!(part.shape, Shape::Stroke { dash: Some(_), .. }));
        assert_eq!(dashed, *side == Side::Right, "{side:?}");
    }
}

#[test]
fn one_terminal_of_fifty_that_moved_shows() {
    let book = book(RigKind::Motorhome, &[("A", 400, Side::Left)]);
    let draw = |counts| {
        let told = [(id(0), standing(50, counts, BayStage::Closed))];
        strip(&book, &told.into(), 328.0)
    };
    let (held, moved) = (draw([50, 0, 0, 0, 0]), draw([49, 1, 0, 0, 0]));
    let differ =
        crate::raster::difference(&crate::raster::dots(&held), &crate::raster::dots(&moved));
    assert!(differ > 100, "{differ}");
}

#[test]
fn every_standing_of_a_bay_looks_different() {
    let book = book(RigKind::Motorhome, &[("A", 400, Side::Left)]);
    let mut named = vec![("to do", standing(4, [0; 5], BayStage::Shut))];
    for (place, grade) in ["held", "moved", "loose", "apart", "looked at"]
        .iter()
        .enumerate()
    {
        let mut counts = [0; 5];
        counts[place] = 4;
        named.push((*grade, standing(4, counts, BayStage::Shut)));
    }
    named.push(("half held", standing(4, [2, 0, 0, 0, 0], BayStage::Shut)));
    named.push(("open", standing(4, [0; 5], BayStage::Open)));
    named.push(("closed", standing(4, [0; 5], BayStage::Closed)));
    let dotted: Vec<_> = named
        .into_iter()
        .map(|(name, told)| {
            let drawing = strip(&book, &[(id(0), told)].into(), 328.0);
            (name, crate::raster::dots(&drawing))
        })
        .collect();
    for (place, (name, one)) in dotted.iter().enumerate() {
        for (other_name, other) in dotted.iter().skip(place + 1) {
            let differ = crate::raster::difference(one, other);
            assert!(differ > 40, "{name} and {other_name}: {differ}");
        }
    }
}

#[test]
fn the_hitch_of_a_trailer_stands_before_its_body() {
    let drawing = strip(&many(RigKind::Trailer, 0), &BTreeMap::new(), 328.0);
    let hitch = drawing.parts.iter().find(
        |part| matches!(part.shape, Shape::Stroke { width, .. } if (width - 3.0).abs() < 1e-9),
    );
    let room = hitch.unwrap().bounds().unwrap();
    assert!(room.left < 4.0 && room.right < 40.0, "{room:?}");
}

#[test]
fn the_line_beneath_tells_each_bay_by_its_own_power() {
    let (book, mut told) = trailer([""; 6]);
    let plain = strip(&book, &told, 328.0);
    told.get_mut(&id(1)).unwrap().power = Some(Power::Dead);
    let lined = strip(&book, &told, 328.0);
    let words: Vec<&str> = lined
        .parts
        .iter()
        .filter_map(|part| match &part.shape {
            Shape::Label(label) if label.size == Size::Least => Some(label.text.as_str()),
            _ => None,
        })
        .collect();
    assert_eq!(words, ["A", "B", "C D E F"]);
    assert!(lined.height > plain.height);
}
