//! The measures of the rig's body, by the width of the strip.

use baywalk_domain::rig::RigKind;

/// The measures of a strip. The body is drawn for a width of 328; wider strips draw it higher too,
/// up to 1.6 times, so that it keeps the look of a vehicle.
#[derive(Debug, Clone, Copy)]
pub(super) struct Scale {
    /// Width of the strip.
    pub(super) width: f64,
    /// How many times larger than at 328 the body is drawn.
    pub(super) times: f64,
    /// Height of the tags above it.
    head: f64,
}

impl Scale {
    /// The measures for a width and a height of the tags above.
    pub(super) fn new(width: f64, head: f64) -> Self {
        let times = (width / 328.0).clamp(1.0, 1.6);
        Self { width, times, head }
    }

    /// Height of the roof.
    pub(super) fn roof(self) -> f64 {
        self.head + 27.0 * self.times
    }

    /// Height of the floor of the living space.
    pub(super) fn floor(self) -> f64 {
        self.roof() + 46.0 * self.times
    }

    /// Height of the lower edge of the body.
    pub(super) fn sill(self) -> f64 {
        self.roof() + 98.0 * self.times
    }

    /// Height under the wheels.
    pub(super) fn foot(self) -> f64 {
        self.sill() + self.wheel() + 4.0
    }

    /// Radius of a wheel.
    pub(super) fn wheel(self) -> f64 {
        14.0 * self.times
    }

    /// Radius of the arch above a wheel.
    pub(super) fn arch(self) -> f64 {
        18.0 * self.times
    }

    /// Left edge of the lower bays.
    pub(super) fn nose(self, kind: RigKind) -> f64 {
        match kind {
            RigKind::Motorhome => 5.0,
            RigKind::Trailer => 38.0 * self.times,
        }
    }

    /// Middles of the wheels. A book tells nothing of axles: these are the usual places, ours.
    pub(super) fn axles(self, kind: RigKind) -> [f64; 2] {
        let stations = match kind {
            RigKind::Motorhome => [0.19, 0.70],
            RigKind::Trailer => [0.58, 0.70],
        };
        stations.map(|station: f64| station * self.width)
    }
}
