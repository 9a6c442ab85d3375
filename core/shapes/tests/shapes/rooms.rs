//! That every drawing lies in its box, and that all of it can be drawn.

use crate::gallery::everything;
use baywalk_shapes::{Drawing, Path, Segment, Shape};

fn numbers(path: &Path) -> Vec<f64> {
    let numbers = path.segments().iter().flat_map(|segment| match segment {
        Segment::Move(at) | Segment::Line(at) => vec![at.x, at.y],
        Segment::Arc {
            centre,
            radius,
            from,
            sweep,
        } => vec![centre.x, centre.y, *radius, *from, *sweep],
        Segment::Close => Vec::new(),
    });
    numbers.collect()
}

/// Sees that all measures of a drawing are finite and begin with a place, and that no part leaves
/// the box.
pub(crate) fn is_whole(name: &str, drawing: &Drawing) {
    assert!(drawing.width > 0.0 && drawing.width.is_finite(), "{name}");
    assert!(drawing.height > 0.0 && drawing.height.is_finite(), "{name}");
    for part in &drawing.parts {
        let (path, width) = match &part.shape {
            Shape::Stroke { path, width, .. } => (Some(path), *width),
            Shape::Fill { path } => (Some(path), 1.0),
            Shape::Label(_) => (None, 1.0),
        };
        assert!(width > 0.0 && width.is_finite(), "{name}: {part:?}");
        if let Some(path) = path {
            assert!(
                numbers(path).iter().all(|it| it.is_finite()),
                "{name}: {part:?}"
            );
            let begins = path.segments().first();
            assert!(matches!(begins, Some(Segment::Move(_))), "{name}: {part:?}");
        }
        let room = part.bounds().unwrap_or_else(|| panic!("{name}: {part:?}"));
        let inside = room.left >= -0.01
            && room.top >= -0.01
            && room.right <= drawing.width + 0.01
            && room.bottom <= drawing.height + 0.01;
        assert!(
            inside,
            "{name}, {} by {}: {room:?} of {part:?}",
            drawing.width, drawing.height
        );
    }
}

#[test]
fn every_drawing_lies_in_its_box_and_all_its_measures_are_finite() {
    let all = everything();
    assert!(all.len() > 60);
    for (name, drawing) in all {
        is_whole(&name, &drawing);
    }
}
