//! Where the search for an admissible point starts, and how far its unknowns may go.

use super::Span;
use super::fit::{Point, Problem};
use super::model::{self, UNKNOWNS, Values};

/// Where the search for a bad joint starts, in ohms.
const JOINT_STARTS: [f64; 4] = [0.15, 1.5, 15.0, 300.0];

/// Where the search for a load between the lines starts, in siemens: 3,000, 600 and 150 W at 240 V.
const LINE_STARTS: [f64; 3] = [0.052, 0.0104, 0.0026];

/// Where the search for the neutral's offset starts, as shares of its bounds: 1 V to either side.
const OFFSET_STARTS: [f64; 2] = [0.25, 0.75];
/// Where it starts for conductors and small loads, as a share of their bounds.
const WAY_START: f64 = 0.2;
/// Meter errors within which a fault is worth another search.
const NEAR: f64 = 5.0;
/// Where the other searches start: offset, conductors and load on leg 1 (that on leg 2 the other
/// way), as shares of their bounds.
const MORE_STARTS: [(f64, f64, f64); 10] = [
    (0.4, 0.4, 0.5),
    (0.6, 0.4, 0.5),
    (0.5, 0.2, 0.15),
    (0.5, 0.2, 0.85),
    (0.05, 0.1, 0.5),
    (0.95, 0.1, 0.5),
    (0.4, 0.05, 0.5),
    (0.6, 0.05, 0.5),
    (0.05, 0.6, 0.5),
    (0.95, 0.6, 0.5),
];
/// Where a thorough search starts for a bad joint, in ohms.
const THOROUGH_JOINTS: [f64; 6] = [0.5, 5.0, 30.0, 100.0, 400.0, 2000.0];
/// Where it starts for the small loads on leg 1 and leg 2, as shares of their bounds: a joint of many
/// ohms lets them divide the voltage of the lines.
const THOROUGH_BESIDE: [(f64, f64); 5] = [
    (0.1, 0.9),
    (0.9, 0.1),
    (0.02, 0.5),
    (0.5, 0.02),
    (0.05, 0.05),
];
/// Steps in which the edge of a range is sought.
const EDGE_STEPS: usize = 12;
/// How near the edge of a range is found, as a share of the bounds.
const SETTLED: f64 = 5e-3;
/// Meter errors beyond which the other sign of an offset changes nothing.
const OUT_OF_REACH: f64 = 25.0;

/// The best admissible point.
///
/// A meter shows no sign, so the neutral's offset is sought on both sides of 0, unless the first
/// side is out of reach. What comes near without being met is sought from more places: the neutral
/// may pass 0 from one load state to the next.
pub(super) fn best(problem: &Problem) -> Option<Point> {
    let (joint, places): (_, &[f64]) = match problem.wiring.weak {
        Some(conductor) => (Some(model::joint_of(conductor)), &JOINT_STARTS),
        None if problem.wiring.back_fed => (Some(model::LINES), &LINE_STARTS),
        None => (None, &[1.0]),
    };
    let (mut best, mut near): (Option<Point>, Option<(Point, f64)>) = (None, None);
    for ohms in places {
        if best.is_some() {
            break;
        }
        for offset in OFFSET_STARTS {
            let found = problem.search(start(problem, joint, *ohms, (offset, WAY_START, 0.5)));
            if found.is_admissible() && best.is_none_or(|best| found.squares() < best.squares()) {
                best = Some(found);
            }
            if near.is_none_or(|(near, _)| found.worst() < near.worst()) {
                near = Some((found, *ohms));
            }
            if found.worst() > OUT_OF_REACH {
                break;
            }
        }
    }
    let near = near.filter(|(near, _)| best.is_none() && near.worst() < NEAR);
    best.or_else(|| again(problem, joint, near?.1))
}

/// The first admissible point from more starts.
fn again(problem: &Problem, joint: Option<usize>, ohms: f64) -> Option<Point> {
    let starts = MORE_STARTS.iter();
    starts
        .map(|place| problem.search(start(problem, joint, ohms, *place)))
        .find(Point::is_admissible)
}

/// The first admissible point of a bad joint from many starts: for readings that nothing explains.
pub(super) fn thorough(problem: &Problem) -> Option<Point> {
    let joint = Some(model::joint_of(problem.wiring.weak?));
    let places = THOROUGH_JOINTS
        .iter()
        .flat_map(|ohms| THOROUGH_BESIDE.iter().map(move |beside| (*ohms, *beside)));
    places
        .map(|(ohms, (leg_1, leg_2))| {
            let mut shares = start(problem, joint, ohms, (0.5, WAY_START, 0.5));
            set(&mut shares, model::BESIDE, leg_1);
            set(&mut shares, model::BESIDE + 1, leg_2);
            problem.search(shares)
        })
        .find(Point::is_admissible)
}

/// Where a search starts: the middle of all bounds, with the level that the readings suggest.
fn start(
    problem: &Problem,
    joint: Option<usize>,
    ohms: f64,
    (offset, way, load): (f64, f64, f64),
) -> Values {
    let mut shares = [0.5; UNKNOWNS];
    set(&mut shares, model::OFFSET, offset);
    for at in model::SMALL {
        set(&mut shares, at, way);
    }
    for (leg_1, leg_2) in model::LOAD_PAIRS {
        set(&mut shares, leg_1, load);
        set(&mut shares, leg_2, 1.0 - load);
    }
    if let (Some(at), Some(bound)) = (joint, joint.and_then(|at| problem.bounds.get(at))) {
        set(&mut shares, at, bound.share(ohms));
    }
    problem.level(shares)
}

fn set(shares: &mut Values, at: usize, share: f64) {
    if let Some(cell) = shares.get_mut(at) {
        *cell = share;
    }
}

impl Problem<'_> {
    /// The range of one unknown in which the readings are still met.
    pub(super) fn span(&self, best: &Point, unknown: usize) -> Span {
        let bound = self.bounds.get(unknown).copied();
        let share = best.shares.get(unknown).copied().unwrap_or(0.0);
        let value = |share| bound.map_or(0.0, |bound| bound.value(share));
        Span {
            least: value(self.edge(best, unknown, share, -1.0)),
            most: value(self.edge(best, unknown, share, 1.0)),
        }
    }

    /// The furthest share towards one side at which the readings are still met.
    fn edge(&self, best: &Point, unknown: usize, from: f64, side: f64) -> f64 {
        let (mut inside, mut point, mut stride) = (from, *best, 0.02);
        let mut outside = None;
        for _ in 0..EDGE_STEPS {
            let next = match outside {
                Some(outside) => (inside + outside) / 2.0,
                None => (inside + side * stride).clamp(0.0, 1.0),
            };
            match self
                .held(unknown, next)
                .admits(with(point.shares, unknown, next))
            {
                Some(met) => {
                    inside = next;
                    point = met;
                    stride *= 2.0;
                }
                None => outside = Some(next),
            }
            let settled = outside.is_some_and(|outside: f64| (outside - inside).abs() < SETTLED);
            if settled || inside <= 0.0 && side < 0.0 || inside >= 1.0 && side > 0.0 {
                break;
            }
        }
        inside
    }

    /// The same problem with one unknown held.
    fn held(&self, unknown: usize, share: f64) -> Self {
        let mut held = self.clone();
        if let Some(bound) = held.bounds.get_mut(unknown) {
            *bound = bound.fixed(share);
        }
        held
    }
}

fn with(mut shares: Values, unknown: usize, share: f64) -> Values {
    set(&mut shares, unknown, share);
    shares
}
