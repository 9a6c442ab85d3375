//! Which way each kind of fastening is checked and set right.

use super::{Action, FoundBy, LeftBy, Past};
use crate::rig::{
    FasteningKind, Landing, Locking, Material, Nut, Recheck, Terminal, ThreadState, Washer,
};

/// What to do, how to look first, how to set right.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Way(pub(super) Action, pub(super) FoundBy, pub(super) LeftBy);

/// Chooses the way for a terminal; `figure` tells whether a full value can be trusted.
pub(super) fn way(terminal: &Terminal, past: Past, figure: bool) -> Way {
    let way = if terminal.fastening.kind.takes_torque() {
        threaded(terminal, past, figure)
    } else {
        clamped(terminal.fastening.kind)
    };
    if past.asks_remake() && way.0 != Action::Refer {
        Way(Action::Remake, FoundBy::Look, remade(terminal, way.2))
    } else {
        way
    }
}

/// Fastenings without a thread for a torque tool.
const fn clamped(kind: FasteningKind) -> Way {
    use FasteningKind as K;
    match kind {
        K::PushIn | K::SpringClamp | K::Lever => {
            Way(Action::LookAndTug, FoundBy::PullEach, LeftBy::StripAnew)
        }
        K::Blade | K::Plug | K::PlugOnBreaker => {
            Way(Action::LookAndTug, FoundBy::SeatAndHeat, LeftBy::Replace)
        }
        K::WireConnector | K::Crimp | K::Piercing => {
            Way(Action::LookAndTug, FoundBy::Tug, LeftBy::RemakeSplice)
        }
        _ => Way(Action::Refer, FoundBy::Look, LeftBy::Refer),
    }
}

/// Fastenings with a thread, the strongest reason first.
fn threaded(terminal: &Terminal, past: Past, figure: bool) -> Way {
    let fastening = &terminal.fastening;
    let recheck = terminal.maker.as_ref().map(|maker| maker.recheck);
    let set = setting(terminal);
    if fastening.kind == FasteningKind::CellLink {
        return Way(Action::Refer, FoundBy::Look, LeftBy::Refer);
    }
    if fastening.kind == FasteningKind::ShearBolt {
        return Way(Action::LeaveAlone, FoundBy::Look, LeftBy::Replace);
    }
    if !figure {
        return without_figure(terminal);
    }
    if recheck == Some(Recheck::FullValue) {
        return Way(Action::CheckThenSet, FoundBy::FullValue, set);
    }
    if recheck == Some(Recheck::Never) {
        return Way(Action::LeaveAlone, FoundBy::Look, set);
    }
    if presses_on_aluminium(terminal) {
        return Way(Action::LeaveAlone, FoundBy::Look, LeftBy::CutBackAluminium);
    }
    if fastening.locking == Locking::ThreadLocker || fastening.nut == Nut::Nylon {
        return Way(Action::LookAndTug, FoundBy::LugByFinger, LeftBy::NewNut);
    }
    if fastening.locking == Locking::WitnessMark && !past.mark_offset {
        return Way(Action::LookAndTug, FoundBy::Mark, set);
    }
    Way(Action::CheckThenSet, checking(terminal), set)
}

/// A thread for which no full value can be trusted.
fn without_figure(terminal: &Terminal) -> Way {
    use FasteningKind as K;
    if terminal.thread_state == ThreadState::Dry {
        match terminal.fastening.kind {
            K::ChassisScrew => {
                return Way(Action::LookAndTug, FoundBy::Tug, LeftBy::RemakeChassis);
            }
            K::BoardScrew => return Way(Action::AskMaker, FoundBy::Look, LeftBy::Refer),
            _ => {}
        }
    }
    let found = match terminal.fastening.kind {
        K::BatteryPost => FoundBy::TwistClamp,
        K::Stud | K::Bolt | K::BoltOnBreaker | K::WingNut => FoundBy::LugByFinger,
        K::BoardScrew => FoundBy::Look,
        _ if terminal.wire.material == Material::Aluminium => FoundBy::Look,
        _ => FoundBy::Tug,
    };
    Way(Action::AskMaker, found, LeftBy::OutOfService)
}

/// How a thread with a figure is looked at.
fn checking(terminal: &Terminal) -> FoundBy {
    use FasteningKind as K;
    match terminal.fastening.kind {
        K::BatteryPost => FoundBy::CheckPost,
        _ if terminal.fastening.washer == Washer::Spring => FoundBy::CheckSpringWasher,
        K::Stud | K::Bolt | K::BoltOnBreaker | K::WingNut => FoundBy::CheckLug,
        _ if under_lug(terminal) => FoundBy::CheckLug,
        _ => FoundBy::CheckScrew,
    }
}

/// How a thread with a figure is set.
fn setting(terminal: &Terminal) -> LeftBy {
    use FasteningKind as K;
    match terminal.fastening.kind {
        K::BatteryPost => LeftBy::SetPost,
        _ if terminal.fastening.washer == Washer::Spring => LeftBy::SetSpringWasher,
        K::Stud | K::Bolt | K::BoltOnBreaker | K::WingNut => LeftBy::SetStud,
        _ if under_lug(terminal) => LeftBy::SetStud,
        _ => LeftBy::SetOnce,
    }
}

/// How a joint is made anew.
fn remade(terminal: &Terminal, otherwise: LeftBy) -> LeftBy {
    use FasteningKind as K;
    match terminal.fastening.kind {
        K::ChassisScrew => LeftBy::RemakeChassis,
        K::BoltOnBreaker => LeftBy::Replace,
        K::Stud | K::Bolt | K::BatteryPost | K::WingNut => LeftBy::RemakeLug,
        K::PressureScrew | K::SplitBolt | K::DeviceScrew | K::BlockScrew | K::BoardScrew => {
            if presses_on_aluminium(terminal) {
                LeftBy::CutBackAluminium
            } else if under_lug(terminal) {
                LeftBy::RemakeLug
            } else {
                LeftBy::CutBack
            }
        }
        _ => otherwise,
    }
}

/// Whether the fastening bears on an aluminium conductor itself, not on a lug.
pub(super) fn presses_on_aluminium(terminal: &Terminal) -> bool {
    use FasteningKind as K;
    terminal.wire.material == Material::Aluminium
        && matches!(
            terminal.fastening.kind,
            K::PressureScrew | K::SplitBolt | K::DeviceScrew | K::BlockScrew | K::BoardScrew
        )
        && !under_lug(terminal)
}

/// Whether a lug lies under the head.
pub(super) const fn under_lug(terminal: &Terminal) -> bool {
    matches!(terminal.fastening.landing, Landing::Ring | Landing::Fork)
}
