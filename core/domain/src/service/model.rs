//! The unknowns of a service, their bounds, and what a meter would show for a choice of them.
#![expect(
    clippy::indexing_slicing,
    reason = "a numeric kernel over fixed arrays, indexed by constants and loops of their length"
)]

use super::circuit::{Circuit, Feed, Phasor, Shown};
use super::pair::{G, L1, L2, N};
use super::survey::{MOST_STATES, NAMEPLATE_VOLTS};
use super::wiring::{Supply, Wiring};
use super::{Meter, Pair, Place, State, Survey};

/// Line to neutral voltage of the supply.
pub(super) const EMF: usize = 0;
/// By how much line 2 differs from line 1.
const UNBALANCE: usize = 1;
/// Voltage of the supply's neutral against its ground, from the neutral current of others.
pub(super) const OFFSET: usize = 2;
/// Resistance of one sound conductor.
const WAY: usize = 3;
/// What the joints of line 1 add; line 2, neutral and ground follow.
const JOINTS: usize = 4;
/// Unknown small loads on leg 1; leg 2 follows.
pub(super) const BESIDE: usize = 8;
/// What lies between the lines, where an open line is fed back through it.
pub(super) const LINES: usize = 10;
/// Drift of the supply from the first state to the second; the others follow.
const DRIFT: usize = 11;
/// By how much the load on leg 1 of the first state is off its nameplate; leg 2 and the other
/// states follow.
const LOADS: usize = DRIFT + MOST_STATES - 1;
/// The unknowns that are usually near their least.
pub(super) const SMALL: [usize; 7] = [
    WAY,
    JOINTS,
    JOINTS + 1,
    JOINTS + 2,
    JOINTS + 3,
    BESIDE,
    BESIDE + 1,
];
/// The loads on leg 1 and leg 2 of each load state.
pub(super) const LOAD_PAIRS: [(usize, usize); MOST_STATES] = [
    (LOADS, LOADS + 1),
    (LOADS + 2, LOADS + 3),
    (LOADS + 4, LOADS + 5),
    (LOADS + 6, LOADS + 7),
];
/// How many unknowns there are.
pub(super) const UNKNOWNS: usize = LOADS + 2 * MOST_STATES;

/// Values of all unknowns.
pub(super) type Values = [f64; UNKNOWNS];

/// How one unknown is bounded.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Bound {
    /// The least value.
    pub(super) least: f64,
    /// The most.
    pub(super) most: f64,
    /// Whether it spans decades and is followed by its logarithm.
    pub(super) decades: bool,
}

impl Bound {
    const fn new(least: f64, most: f64) -> Self {
        Self {
            least,
            most,
            decades: false,
        }
    }

    /// The value at a share of the span, 0 to 1.
    pub(super) fn value(&self, share: f64) -> f64 {
        if self.decades {
            self.least * (self.most / self.least).powf(share)
        } else {
            self.least + (self.most - self.least) * share
        }
    }

    /// A bound that holds the value at a share.
    pub(super) fn fixed(&self, share: f64) -> Self {
        Self::new(self.value(share), self.value(share))
    }

    /// The share of the span at which a value lies, held within it.
    pub(super) fn share(&self, value: f64) -> f64 {
        let held = value.clamp(self.least, self.most);
        if self.most <= self.least {
            0.0
        } else if self.decades {
            (held / self.least).ln() / (self.most / self.least).ln()
        } else {
            (held - self.least) / (self.most - self.least)
        }
    }
}

/// Ohms of one sound conductor from the transformer to the terminal: 5 mΩ to 0.25 Ω. Ours.
const SOUND_WAY: Bound = Bound::new(0.005, 0.25);
/// Ohms that the joints of one sound conductor may add. Ours.
pub(super) const SOUND_JOINTS: f64 = 0.05;
/// Ohms that a thinner ground conductor and its joints may add. Ours.
const GROUND_JOINTS: f64 = 0.2;
/// Ohms of a bad joint that can still be told from an open conductor. Ours.
const MOST_WEAK: f64 = 5000.0;
/// Watts of small loads on a leg that nobody knows of. Ours.
const BESIDE_WATTS: f64 = 20.0;
/// The least of them that ties a conductor which is open elsewhere. Ours.
const TYING_WATTS: f64 = 0.2;
/// Watts at 240 V of the loads between the lines that can feed an open line back. Ours.
const LINE_WATTS: (f64, f64) = (100.0, 10_000.0);
/// The share by which the supply may drift between two load states. Ours.
const DRIFTS: f64 = 0.01;
/// The share by which the lines of one transformer may differ. Ours.
const UNBALANCED: f64 = 0.01;
/// The least share of all bad joints that a range counts for. Ours.
const LEAST_SHARE: f64 = 0.01;
/// Volts between the neutral and ground of a sound supply: below 2 to 3 V, common practice, no
/// source.
const OFFSETS: f64 = 2.0;
/// Conductance of a second bond of neutral and ground, in siemens.
const BOND: f64 = 50.0;

/// The bounds of all unknowns for a wiring, with the service voltage in a window.
pub(super) fn bounds(survey: &Survey, wiring: &Wiring, window: (f64, f64)) -> [Bound; UNKNOWNS] {
    let mut all = [Bound::new(0.0, 0.0); UNKNOWNS];
    all[EMF] = Bound::new(window.0, window.1);
    if matches!(wiring.supply, Supply::Split | Supply::Wye) {
        all[UNBALANCE] = Bound::new(-UNBALANCED, UNBALANCED);
    }
    all[OFFSET] = Bound::new(-OFFSETS, OFFSETS);
    bound_ways(&mut all, wiring);
    if survey.place() == Place::Coach {
        all[BESIDE] = beside(wiring);
        all[BESIDE + 1] = all[BESIDE];
    }
    if wiring.back_fed {
        let [least, most] =
            [LINE_WATTS.0, LINE_WATTS.1].map(|watts| watts / (2.0 * NAMEPLATE_VOLTS).powi(2));
        all[LINES] = Bound {
            least,
            most,
            decades: true,
        };
    }
    bound_states(&mut all, survey);
    all
}

/// The bounds of conductors and their joints.
fn bound_ways(all: &mut [Bound; UNKNOWNS], wiring: &Wiring) {
    all[WAY] = SOUND_WAY;
    for conductor in [L1, L2, N] {
        all[JOINTS + conductor] = Bound::new(0.0, SOUND_JOINTS);
    }
    if wiring.loads_ground() {
        all[JOINTS + G] = Bound::new(0.0, GROUND_JOINTS);
    }
    if let Some(conductor) = wiring.weak {
        all[JOINTS + conductor] = Bound {
            least: SOUND_JOINTS,
            most: MOST_WEAK,
            decades: true,
        };
    }
}

/// The bounds of the small loads on a leg of a coach.
fn beside(wiring: &Wiring) -> Bound {
    let least = if wiring.tied { TYING_WATTS } else { 0.0 };
    let [least, most] = [least, BESIDE_WATTS].map(|watts| watts / NAMEPLATE_VOLTS.powi(2));
    Bound {
        least,
        most,
        decades: wiring.tied,
    }
}

/// The bounds of drift and loads, state by state.
fn bound_states(all: &mut [Bound; UNKNOWNS], survey: &Survey) {
    for (at, state) in survey.states().iter().enumerate() {
        if at > 0 {
            all[DRIFT + at - 1] = Bound::new(-DRIFTS, DRIFTS);
        }
        for (leg, load) in [state.load_1, state.load_2].into_iter().enumerate() {
            if let Some(load) = load {
                all[LOADS + 2 * at + leg] = Bound::new(-load.off(), load.off());
            }
        }
    }
}

/// The same service at another time: no drift, loads as on their nameplates.
pub(super) fn at_rest(mut values: Values) -> Values {
    values[DRIFT..].fill(0.0);
    values
}

/// The unknown that holds the resistance of a bad joint.
pub(super) const fn joint_of(conductor: usize) -> usize {
    JOINTS + conductor
}

/// The share of all bad joints, by decades, that a range of ohms covers.
pub(super) fn share_of_joints(ohms: super::Span) -> f64 {
    ((ohms.most / ohms.least).ln() / (MOST_WEAK / SOUND_JOINTS).ln()).max(LEAST_SHARE)
}

/// Whether an unknown plays a part in a load state.
pub(super) const fn matters(unknown: usize, state: usize) -> bool {
    if unknown < DRIFT {
        true
    } else if unknown < LOADS {
        unknown - DRIFT + 1 == state
    } else {
        (unknown - LOADS) / 2 == state
    }
}

/// The circuit of one load state.
pub(super) fn circuit(wiring: &Wiring, at: usize, state: &State, values: &Values) -> Circuit {
    let drift = if at == 0 { 0.0 } else { values[DRIFT + at - 1] };
    let emfs = emfs(wiring.supply, values[EMF] * (1.0 + drift), values);
    let feeds = wiring.from.map(|conductor| {
        let absent = conductor == L2 && wiring.supply == Supply::Single;
        let joints = values[JOINTS + conductor];
        let siemens = if wiring.open[conductor] || absent {
            0.0
        } else {
            1.0 / (values[WAY] + joints)
        };
        Feed {
            emf: emfs[conductor],
            siemens,
        }
    });
    let load = |leg: usize, load: Option<super::Load>| {
        let known = load.map_or(0.0, super::Load::siemens);
        known * (1.0 + values[LOADS + 2 * at + leg]) + values[BESIDE + leg]
    };
    Circuit {
        feeds,
        leg_1: load(0, state.load_1),
        leg_2: load(1, state.load_2),
        lines: values[LINES],
        bond: if wiring.bonded { BOND } else { 0.0 },
        tied: [state.load_1, state.load_2].map(|load| load.is_some() || wiring.tied),
    }
}

fn emfs(supply: Supply, line: f64, values: &Values) -> [Phasor; 4] {
    let second = line * (1.0 + values[UNBALANCE]);
    let second = match supply {
        Supply::Single => [0.0, 0.0],
        Supply::Split => [-second, 0.0],
        Supply::Wye => [-second / 2.0, second * 0.75_f64.sqrt()],
        Supply::OneLeg => [second, 0.0],
    };
    [[line, 0.0], second, [values[OFFSET], 0.0], [0.0, 0.0]]
}

/// What a meter shows at every pair of a load state.
pub(super) fn shown((meter, place): (&Meter, Place), circuit: &Circuit) -> [Shown; 6] {
    let solved = circuit.solve();
    let part = meter.ghost();
    // Small loads in a coach may tie a line or the neutral, never the ground.
    let inside = if place == Place::Coach { 1.0 } else { part };
    let ghost = [inside, inside, inside, part];
    let input = meter.input();
    [
        Pair::L1N,
        Pair::L2N,
        Pair::L1L2,
        Pair::L1G,
        Pair::L2G,
        Pair::NG,
    ]
    .map(|pair| solved.shown(pair, input, ghost))
}
