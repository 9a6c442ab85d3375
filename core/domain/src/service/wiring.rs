//! Each fault as a circuit: which conductor feeds which terminal, what is open, weak or bonded.

use super::pair::{G, L1, L2, N};
use super::{Conductor, Fault};

/// What stands behind the two lines.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Supply {
    /// One line of 120 V.
    Single,
    /// Two lines in opposite phase, 120/240 V.
    Split,
    /// Two lines of a three-phase supply, 208Y/120 V.
    Wye,
    /// Two lines on one hot conductor.
    OneLeg,
}

/// How the conductors of a supply reach the terminals.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Wiring {
    /// What this wiring is called.
    pub(super) fault: Fault,
    /// Where it sits.
    pub(super) at: Option<Conductor>,
    /// What the supply is.
    pub(super) supply: Supply,
    /// The conductor at L1, L2, N and G.
    pub(super) from: [usize; 4],
    /// The conductors that are open.
    pub(super) open: [bool; 4],
    /// The conductor with a bad joint.
    pub(super) weak: Option<usize>,
    /// Whether neutral and ground are bonded at the terminals.
    pub(super) bonded: bool,
    /// Whether small loads in the coach tie what is open; else it floats.
    pub(super) tied: bool,
    /// Whether a load between the lines feeds the open one back from the other.
    pub(super) back_fed: bool,
}

/// Every conductor where it belongs.
const STRAIGHT: [usize; 4] = [L1, L2, N, G];

impl Wiring {
    /// A wiring with nothing wrong.
    const fn sound(fault: Fault, supply: Supply) -> Self {
        Self {
            fault,
            at: None,
            supply,
            from: STRAIGHT,
            open: [false; 4],
            weak: None,
            bonded: false,
            tied: false,
            back_fed: false,
        }
    }

    const fn at(fault: Fault, at: Conductor, supply: Supply) -> Self {
        Self {
            at: Some(at),
            ..Self::sound(fault, supply)
        }
    }

    /// The same fault behind another supply.
    pub(super) const fn behind(self, supply: Supply) -> Self {
        Self { supply, ..self }
    }

    /// Whether load current runs in the ground conductor.
    pub(super) fn loads_ground(&self) -> bool {
        self.bonded || self.from.last() != Some(&G)
    }

    /// The same with what is open tied by small loads in the coach.
    const fn tied(self) -> Self {
        Self { tied: true, ..self }
    }

    /// The same with the open line fed back through a load between the lines.
    const fn back_fed(self) -> Self {
        Self {
            back_fed: true,
            ..self
        }
    }

    /// Whether it needs a second line.
    const fn needs_line_2(&self) -> bool {
        matches!(self.at, Some(Conductor::Line2 | Conductor::BothLines))
    }
}

/// Every wiring that differs from a sound one, for a supply; in a coach also those in which small
/// loads tie what is open, or a 240 V load feeds an open line back.
pub(super) fn faulty(supply: Supply, coach: bool) -> Vec<Wiring> {
    let one_line = supply == Supply::Single;
    let all = || joints(supply).into_iter().chain(exchanged(supply));
    let may_be_tied =
        |wiring: &Wiring| coach && matches!(wiring.fault, Fault::OpenNeutral | Fault::OpenLeg);
    let may_be_fed = |wiring: &Wiring| {
        let one = matches!(wiring.at, Some(Conductor::Line1 | Conductor::Line2));
        coach && !one_line && one && wiring.fault == Fault::OpenLeg
    };
    all()
        .chain(all().filter(may_be_tied).map(Wiring::tied))
        .chain(all().filter(may_be_fed).map(Wiring::back_fed))
        .filter(|wiring| !(one_line && wiring.needs_line_2()))
        .collect()
}

/// Conductors that are weak or open.
fn joints(supply: Supply) -> [Wiring; 8] {
    use Conductor::{BothLines, Ground, Line1, Line2, Neutral};
    use Fault::{OpenGround, OpenLeg, OpenNeutral, WeakLeg, WeakNeutral};
    let weak = |fault, on, conductor| Wiring {
        weak: Some(conductor),
        ..Wiring::at(fault, on, supply)
    };
    let open = |fault, on, open| Wiring {
        open,
        ..Wiring::at(fault, on, supply)
    };
    [
        weak(WeakNeutral, Neutral, N),
        open(OpenNeutral, Neutral, [false, false, true, false]),
        weak(WeakLeg, Line1, L1),
        weak(WeakLeg, Line2, L2),
        open(OpenLeg, Line1, [true, false, false, false]),
        open(OpenLeg, Line2, [false, true, false, false]),
        open(OpenLeg, BothLines, [true, true, false, false]),
        open(OpenGround, Ground, [false, false, false, true]),
    ]
}

/// Conductors that have changed places, or meet where they may not.
fn exchanged(supply: Supply) -> [Wiring; 6] {
    use Conductor::{Ground, Line1, Line2};
    use Fault::{LineGroundSwapped, LineNeutralSwapped, NeutralGroundMixed};
    let swapped = |fault, on, from| Wiring {
        from,
        ..Wiring::at(fault, on, supply)
    };
    [
        swapped(LineNeutralSwapped, Line1, [N, L2, L1, G]),
        swapped(LineNeutralSwapped, Line2, [L1, N, L2, G]),
        swapped(LineGroundSwapped, Line1, [G, L2, N, L1]),
        swapped(LineGroundSwapped, Line2, [L1, G, N, L2]),
        swapped(NeutralGroundMixed, Ground, [L1, L2, G, N]),
        Wiring {
            bonded: true,
            ..Wiring::at(NeutralGroundMixed, Ground, supply)
        },
    ]
}

/// The sound wirings of a supply, by the level of its service.
pub(super) fn sound(supply: Supply) -> [Wiring; 3] {
    [Fault::Healthy, Fault::LowService, Fault::HighService]
        .map(|fault| Wiring::sound(fault, supply))
}

/// A supply of the wrong kind, soundly wired.
pub(super) const fn odd(supply: Supply) -> Wiring {
    let fault = match supply {
        Supply::Wye => Fault::Supply208,
        _ => Fault::OneLegAdapter,
    };
    Wiring::sound(fault, supply)
}
