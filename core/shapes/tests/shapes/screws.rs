//! The geometry of the screw, and that no two grades look alike without colour.

use crate::gallery::{Named, frames, glyphs, hatches};
use crate::raster::{difference, dots, pieces};
use baywalk_domain::coded::Coded;
use baywalk_domain::walk::Angle;
use baywalk_shapes::{Drawing, Path, Segment, Shape, screw};

fn fills(drawing: &Drawing) -> Vec<&Path> {
    let fills = drawing.parts.iter().filter_map(|part| match &part.shape {
        Shape::Fill { path } => Some(path),
        _ => None,
    });
    fills.collect()
}

/// The radius, start and sweep of the arc that tells how far, where there is one.
fn arc(drawing: &Drawing) -> Option<(f64, f64, f64, f64)> {
    drawing.parts.iter().find_map(|part| match &part.shape {
        Shape::Stroke { path, width, .. } => path.segments().iter().find_map(|it| match it {
            Segment::Arc {
                radius,
                from,
                sweep,
                ..
            } => Some((*width, *radius, *from, *sweep)),
            _ => None,
        }),
        _ => None,
    })
}

/// By how many degrees the slot leans anticlockwise, read off the straight edges of the head.
fn lean(drawing: &Drawing) -> f64 {
    let head = fills(drawing)[0];
    let (from, to) = pieces(head)
        .into_iter()
        .max_by(|one, other| {
            let length = |(a, b): &(baywalk_shapes::Point, baywalk_shapes::Point)| {
                (a.x - b.x).hypot(a.y - b.y)
            };
            length(one).total_cmp(&length(other))
        })
        .unwrap();
    // Upright is 0; leaning to the left at the top is positive.
    let (top, foot) = if from.y < to.y {
        (from, to)
    } else {
        (to, from)
    };
    let lean = (foot.x - top.x).atan2(foot.y - top.y).to_degrees();
    // A slot looks the same after half a turn.
    (lean + 180.0) % 180.0
}

#[test]
fn the_slot_is_two_circle_segments_cut_by_five_point_two() {
    // x = ±2.6, y = ±√(15² − 2.6²), around (24, 25).
    let held = screw::held();
    let reach = (15.0_f64.powi(2) - 2.6_f64.powi(2)).sqrt();
    let starts: Vec<_> = fills(&held)[0]
        .segments()
        .iter()
        .filter_map(|segment| match segment {
            Segment::Move(to) => Some(*to),
            _ => None,
        })
        .collect();
    assert_eq!(starts.len(), 2);
    for (start, (x, y)) in starts
        .iter()
        .zip([(26.6, 25.0 - reach), (21.4, 25.0 + reach)])
    {
        assert!(
            (start.x - x).abs() < 1e-9 && (start.y - y).abs() < 1e-9,
            "{start:?}"
        );
    }
}

#[test]
fn the_slot_leans_anticlockwise_by_the_angle_it_moved() {
    for (angle, degrees) in Angle::ALL.iter().zip([15.0, 45.0, 90.0, 180.0, 270.0, 0.0]) {
        let moved = lean(&screw::moved(Some(*angle)));
        assert!((moved - degrees % 180.0).abs() < 1e-6, "{angle:?}: {moved}");
    }
    assert!((lean(&screw::moved(None)) - 40.0).abs() < 1e-6);
}

#[test]
fn the_arc_goes_from_beside_the_mark_to_the_angle_and_a_whole_turn_all_but_round() {
    for (angle, end) in Angle::ALL
        .iter()
        .zip([15.0, 45.0, 90.0, 180.0, 270.0, 345.0])
    {
        let (width, radius, from, sweep) = arc(&screw::moved(Some(*angle))).unwrap();
        assert!((width - 3.4).abs() < 1e-9 && (radius - 20.5).abs() < 1e-9);
        // Twelve o'clock is at −90°, anticlockwise is negative.
        assert!((from - (-90.0 - 9.0)).abs() < 1e-9, "{angle:?}");
        assert!((from + sweep - (-90.0 - end)).abs() < 1e-9, "{angle:?}");
    }
    assert_eq!(arc(&screw::moved(None)), None);
}

#[test]
fn the_loose_head_does_not_touch_its_seat() {
    // Middle of the head 3.9 from that of the seat; 3.9 + 8.6 < 15.5 − 1.3.
    let loose = screw::loose();
    for (from, to) in pieces(fills(&loose)[0]) {
        for at in [from, to] {
            assert!((at.x - 24.0).hypot(at.y - 25.0) < 14.2 - 1.0, "{at:?}");
        }
    }
}

/// That each two differ by at least so many dots.
fn all_differ(named: &Named, least: usize) {
    let dotted: Vec<_> = named.iter().map(|(name, one)| (name, dots(one))).collect();
    for (place, (name, one)) in dotted.iter().enumerate() {
        for (other_name, other) in dotted.iter().skip(place + 1) {
            let differ = difference(one, other);
            assert!(differ >= least, "{name} and {other_name}: {differ} dots");
        }
    }
}

#[test]
fn every_grade_and_angle_differs_from_every_other_by_its_shape() {
    // Of 2,304 dots; an unknown angle (40°, no arc) and an eighth (45°, arc) lie nearest.
    all_differ(&glyphs(), 80);
}

#[test]
fn every_pattern_and_every_frame_differs_from_every_other_by_its_shape() {
    all_differ(&hatches(), 100);
    all_differ(&frames(), 50);
}
