//! A place in a drawing.

/// A place in a drawing: x to the right, y down.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    /// To the right.
    pub x: f64,
    /// Down.
    pub y: f64,
}

impl Point {
    /// A place.
    #[must_use]
    pub const fn new(x: f64, y: f64) -> Self {
        Self { x, y }
    }

    /// The place on a circle at an angle in degrees, clockwise from three o'clock.
    ///
    /// # Example
    /// ```
    /// use baywalk_shapes::Point;
    /// let below = Point::new(10.0, 10.0).at(2.0, 90.0);
    /// assert!((below.x - 10.0).abs() < 1e-12 && (below.y - 12.0).abs() < 1e-12);
    /// ```
    #[must_use]
    pub fn at(self, radius: f64, degrees: f64) -> Self {
        let (sin, cos) = degrees.to_radians().sin_cos();
        Self::new(self.x + radius * cos, self.y + radius * sin)
    }

    /// The place turned around the origin, clockwise, in degrees.
    pub(crate) fn turned(self, degrees: f64) -> Self {
        let (sin, cos) = degrees.to_radians().sin_cos();
        Self::new(self.x * cos - self.y * sin, self.x * sin + self.y * cos)
    }
}

impl From<(f64, f64)> for Point {
    fn from((x, y): (f64, f64)) -> Self {
        Self::new(x, y)
    }
}
