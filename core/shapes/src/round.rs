//! Polylines with round corners.

use crate::{Path, Point};

impl Path {
    /// A line through places, each corner rounded by a radius; a radius that does not fit is made
    /// smaller. The first and the last place have no corner.
    ///
    /// # Example
    /// ```
    /// use baywalk_shapes::Path;
    /// let corner = Path::rounded(&[((0.0, 0.0), 0.0), ((10.0, 0.0), 4.0), ((10.0, 10.0), 0.0)]);
    /// assert_eq!(corner.segments().len(), 4);
    /// ```
    #[must_use]
    pub fn rounded(places: &[((f64, f64), f64)]) -> Self {
        let Some(((x, y), _)) = places.first() else {
            return Self::default();
        };
        let mut path = Self::from((*x, *y));
        for window in places.windows(3) {
            if let [(before, _), (corner, radius), (after, _)] = window {
                path = around(
                    path,
                    (*before).into(),
                    (*corner).into(),
                    (*after).into(),
                    *radius,
                );
            }
        }
        match places.last() {
            Some(((x, y), _)) if places.len() > 1 => path.to(*x, *y),
            _ => path,
        }
    }
}

/// Goes on to a corner and around it, by an arc that touches both lines.
fn around(path: Path, before: Point, corner: Point, after: Point, radius: f64) -> Path {
    let (back, ahead) = (towards(corner, before), towards(corner, after));
    let (Some((back, near)), Some((ahead, far))) = (back, ahead) else {
        return path.to(corner.x, corner.y);
    };
    let half = (back.x * ahead.x + back.y * ahead.y)
        .clamp(-1.0, 1.0)
        .acos()
        / 2.0;
    let reach = (radius / half.tan()).min(near / 2.0).min(far / 2.0);
    let radius = reach * half.tan();
    if radius < 0.01 || half.cos() < 0.001 {
        return path.to(corner.x, corner.y);
    }
    let from = Point::new(corner.x + back.x * reach, corner.y + back.y * reach);
    let turn = back.x * ahead.y - back.y * ahead.x;
    // A square to the line, on the side of the corner's inside.
    let side = if turn > 0.0 { 1.0 } else { -1.0 };
    let centre = Point::new(
        from.x - back.y * radius * side,
        from.y + back.x * radius * side,
    );
    let start = (from.y - centre.y).atan2(from.x - centre.x).to_degrees();
    let sweep = (180.0 - half.to_degrees() * 2.0) * -side;
    path.to(from.x, from.y)
        .arc((centre.x, centre.y), radius, start, sweep)
}

/// The direction from one place to another, and how far it is.
fn towards(from: Point, to: Point) -> Option<(Point, f64)> {
    let (x, y) = (to.x - from.x, to.y - from.y);
    let length = x.hypot(y);
    (length > 0.0).then(|| (Point::new(x / length, y / length), length))
}
