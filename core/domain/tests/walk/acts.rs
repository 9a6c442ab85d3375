//! Acts as the tests write them, short.

use crate::rehearsal::{AC_BAY, DRIVER, LINE, Walker, id, torque, volts};
use baywalk_domain::ids::{BayId, PointId, ToolId};
use baywalk_domain::supply::{Measured, Reading, ReadingStep};
use baywalk_domain::walk::{Act, Angle, AsFound, AsLeft, Counted, Movement, Phase, Test};

pub(crate) fn point(n: u128) -> PointId {
    PointId::new(id(n))
}

pub(crate) fn bay(n: u128) -> BayId {
    BayId::new(id(n))
}

pub(crate) fn driver() -> ToolId {
    ToolId::new(id(DRIVER))
}

pub(crate) fn held() -> AsFound {
    AsFound::Held(Test::Torque {
        at: torque("36 lbf.in"),
        tool: driver(),
    })
}

pub(crate) fn moved(angle: Angle) -> AsFound {
    AsFound::Moved(Movement::Turned {
        angle,
        below: torque("36 lbf.in"),
        tool: driver(),
    })
}

pub(crate) fn found(n: u128, found: AsFound) -> Act {
    Act::Found {
        point: point(n),
        found,
    }
}

pub(crate) fn set(n: u128, to: &str) -> Act {
    Act::Left {
        point: point(n),
        left: AsLeft::Set {
            torque: torque(to),
            tool: driver(),
        },
    }
}

pub(crate) fn powering_up() -> Walker {
    let mut walker = Walker::at_ac_bay();
    walker.act(found(LINE, held())).unwrap();
    walker
        .act(Act::Close {
            bay: bay(AC_BAY),
            counted: Counted::ALL,
        })
        .unwrap();
    walker.act(Act::PowerUp).unwrap();
    assert_eq!(walker.state().unwrap().phase, Phase::PoweringUp);
    walker
}

pub(crate) fn measure(step: ReadingStep, reading: &str) -> Act {
    let measured = if step.is_voltage() {
        Measured::Volts(volts(reading))
    } else {
        Measured::Works
    };
    Act::Measure(Reading {
        step,
        place: "outlet by the door".into(),
        measured,
    })
}

pub(crate) fn good(step: ReadingStep) -> &'static str {
    match step {
        ReadingStep::SupplyL1L2 => "240",
        ReadingStep::SupplyNG | ReadingStep::OutletNG | ReadingStep::HotSkin => "0.4",
        ReadingStep::DcBus => "13.1",
        ReadingStep::Load1Leg1 | ReadingStep::Load2Leg2 => "117.5",
        _ => "120",
    }
}
