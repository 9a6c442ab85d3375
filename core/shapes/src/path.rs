//! Paths: move, line, arc of a circle, close.

use crate::Point;

/// One step of a path.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Segment {
    /// Begins anew at a place.
    Move(Point),
    /// A straight line to a place.
    Line(Point),
    /// A straight line to where the arc begins, if the pen is not there yet, then the arc.
    Arc {
        /// The middle of the circle.
        centre: Point,
        /// Its radius.
        radius: f64,
        /// Where the arc begins, in degrees, clockwise from three o'clock.
        from: f64,
        /// How far it goes, in degrees; clockwise where positive.
        sweep: f64,
    },
    /// A straight line to where this run began.
    Close,
}

/// A path: segments in the order in which they are drawn.
///
/// # Example
/// ```
/// use baywalk_shapes::Path;
/// let triangle = Path::from((0.0, 0.0)).to(6.0, 10.0).to(-6.0, 10.0).close();
/// assert_eq!(triangle.segments().len(), 4);
/// ```
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Path(Vec<Segment>);

impl From<(f64, f64)> for Path {
    fn from(start: (f64, f64)) -> Self {
        Self(vec![Segment::Move(start.into())])
    }
}

impl Path {
    /// A straight line from one place to another.
    #[must_use]
    pub fn line(from: (f64, f64), to: (f64, f64)) -> Self {
        Self::from(from).to(to.0, to.1)
    }

    /// A whole circle.
    #[must_use]
    pub fn circle(x: f64, y: f64, radius: f64) -> Self {
        Self::from((x + radius, y))
            .arc((x, y), radius, 0.0, 360.0)
            .close()
    }

    /// A rectangle by its upper left corner, width and height.
    #[must_use]
    pub fn rectangle(x: f64, y: f64, width: f64, height: f64) -> Self {
        Self::from((x, y))
            .to(x + width, y)
            .to(x + width, y + height)
            .to(x, y + height)
            .close()
    }

    /// Goes on with a straight line.
    #[must_use]
    pub fn to(self, x: f64, y: f64) -> Self {
        self.then(Segment::Line(Point::new(x, y)))
    }

    /// Begins anew at a place.
    #[must_use]
    pub fn jump(self, x: f64, y: f64) -> Self {
        self.then(Segment::Move(Point::new(x, y)))
    }

    /// Goes on with an arc; degrees clockwise from three o'clock.
    #[must_use]
    pub fn arc(self, centre: (f64, f64), radius: f64, from: f64, sweep: f64) -> Self {
        self.then(Segment::Arc {
            centre: centre.into(),
            radius,
            from,
            sweep,
        })
    }

    /// Closes the run.
    #[must_use]
    pub fn close(self) -> Self {
        self.then(Segment::Close)
    }

    /// This path, then another.
    #[must_use]
    pub fn and(mut self, other: Self) -> Self {
        self.0.extend(other.0);
        self
    }

    /// Its segments.
    #[must_use]
    pub fn segments(&self) -> &[Segment] {
        &self.0
    }

    /// The path turned around the origin, clockwise, in degrees.
    #[must_use]
    pub fn turned(&self, degrees: f64) -> Self {
        self.changed(|point| point.turned(degrees), 1.0, degrees)
    }

    /// The path with all its measures multiplied, then moved.
    #[must_use]
    pub fn placed(&self, x: f64, y: f64, scale: f64) -> Self {
        let place = |point: Point| Point::new(point.x * scale + x, point.y * scale + y);
        self.changed(place, scale, 0.0)
    }

    fn changed(&self, place: impl Fn(Point) -> Point, scale: f64, turn: f64) -> Self {
        let segments = self.0.iter().map(|segment| match *segment {
            Segment::Move(to) => Segment::Move(place(to)),
            Segment::Line(to) => Segment::Line(place(to)),
            Segment::Close => Segment::Close,
            Segment::Arc {
                centre,
                radius,
                from,
                sweep,
            } => Segment::Arc {
                centre: place(centre),
                radius: radius * scale,
                from: from + turn,
                sweep,
            },
        });
        Self(segments.collect())
    }

    fn then(mut self, segment: Segment) -> Self {
        self.0.push(segment);
        self
    }
}
