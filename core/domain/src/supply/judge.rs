//! Judges one reading while it is typed. A verdict names the safe act first.

use super::{CUT_OUT, Measured, Reading, ReadingStep, SERVICE_B};
use crate::coded::coded;
use crate::rig::ServiceKind;

coded! {
    /// How a reading stands.
    Verdict as "verdict" {
        /// As expected.
        Expected = "expected",
        /// Near a limit, or of use to someone who follows it up.
        Watch = "watch",
        /// Not safe to go on.
        Stop = "stop",
        /// Nothing was measured, so nothing is known.
        Unknown = "unknown",
    }
}

coded! {
    /// What is done first.
    SafeAct as "safe-act" {
        /// Go on.
        GoOn = "go_on",
        /// Take the supply away, then look.
        SupplyAway = "supply_away",
        /// Do not plug in.
        DontPlugIn = "dont_plug_in",
        /// Keep the hands off the body, supply breaker off.
        DontTouch = "dont_touch",
        /// Leave the battery off.
        BatteryOff = "battery_off",
        /// Leave that part out of service.
        OutOfService = "out_of_service",
        /// Measure it when it can be measured.
        MeasureLater = "measure_later",
        /// Nothing shows so far, and not everything that could show was read: measure on.
        MeasureOn = "measure_on",
        /// A live body is not ruled out yet: hands off it while measuring on.
        DontTouchYet = "dont_touch_yet",
        /// What is wrong at an outlet is not ruled out yet: measure on before plugging in.
        DontPlugInYet = "dont_plug_in_yet",
    }
}

impl SafeAct {
    /// Whether nothing else is done before it.
    #[must_use]
    pub const fn is_grave(self) -> bool {
        matches!(
            self,
            Self::SupplyAway | Self::DontPlugIn | Self::DontTouch | Self::BatteryOff
        )
    }
}

/// A verdict with the limits it was judged by.
#[derive(Debug, Clone, PartialEq)]
pub struct Judged {
    /// How the reading stands.
    pub verdict: Verdict,
    /// What to do first.
    pub act: SafeAct,
    /// The limits, in volts: what is expected lies between. `None` for a test.
    pub limits: Option<(f64, f64)>,
    /// Where the limits come from.
    pub basis: LimitBasis,
}

coded! {
    /// Where the limits of a reading come from.
    LimitBasis as "limit-basis" {
        /// ANSI C84.1 range B at the service, from memory.
        AnsiB = "ansi_c84_1_b",
        /// Common practice, no source.
        Practice = "practice",
        /// A limit of this project.
        Ours = "ours",
    }
}

/// What is expected of a leg.
const LEG: (f64, f64) = SERVICE_B.leg();
/// What is expected between the lines.
const LINES: (f64, f64) = SERVICE_B.lines();
/// Beyond these an outlet on a leg stops the walk.
const STOP: (f64, f64) = CUT_OUT.leg();
/// Neutral to ground under load: below 3 V, common practice, no source.
const NEUTRAL_GROUND: f64 = 3.0;
/// Volts from body metal to soil above which everything stops. Ours.
pub const HOT_SKIN: f64 = 3.0;
/// A leg that goes up by more than two meter errors when the other is loaded. Ours.
const RISE: f64 = 2.0;

/// Judges a reading by itself and, where it tells more, by one taken before.
///
/// `before` gives an earlier reading of this powering up in volts.
#[must_use]
pub fn judge(
    reading: &Reading,
    service: ServiceKind,
    before: impl Fn(ReadingStep) -> Option<f64>,
) -> Judged {
    let volts = match &reading.measured {
        Measured::Volts(stated) => stated.quantity().volts(),
        Measured::Works => return test(Verdict::Expected, SafeAct::GoOn),
        Measured::Fails => return test(Verdict::Stop, fails(reading.step)),
        Measured::Not(_) => return test(Verdict::Unknown, SafeAct::MeasureLater),
    };
    let split = service == ServiceKind::Amp50;
    match reading.step {
        ReadingStep::SupplyL1N | ReadingStep::SupplyL2N | ReadingStep::SupplyLG => {
            within(volts, LEG, STOP, SafeAct::DontPlugIn, LimitBasis::AnsiB)
        }
        ReadingStep::SupplyL1L2 => {
            within(volts, LINES, LINES, SafeAct::DontPlugIn, LimitBasis::AnsiB)
        }
        ReadingStep::SupplyNG => at_most(
            volts,
            NEUTRAL_GROUND,
            SafeAct::DontPlugIn,
            LimitBasis::Practice,
        ),
        ReadingStep::HotSkin => at_most(volts, HOT_SKIN, SafeAct::DontTouch, LimitBasis::Ours),
        ReadingStep::OutletNG => at_most(
            volts,
            NEUTRAL_GROUND,
            SafeAct::SupplyAway,
            LimitBasis::Practice,
        ),
        ReadingStep::Load1Leg2 if split => rise(volts, before(ReadingStep::Leg2)),
        ReadingStep::Load2Leg1 if split => rise(volts, before(ReadingStep::Leg1)),
        ReadingStep::DcBus => within(
            volts,
            (11.5, 58.4),
            (10.5, 60.0),
            SafeAct::BatteryOff,
            LimitBasis::Practice,
        ),
        ReadingStep::InverterAlone => within(
            volts,
            LEG,
            STOP,
            SafeAct::OutOfService,
            LimitBasis::Practice,
        ),
        _ => within(volts, LEG, STOP, SafeAct::SupplyAway, LimitBasis::AnsiB),
    }
}

const fn test(verdict: Verdict, act: SafeAct) -> Judged {
    Judged {
        verdict,
        act,
        limits: None,
        basis: LimitBasis::Practice,
    }
}

const fn fails(step: ReadingStep) -> SafeAct {
    match step {
        ReadingStep::DcPolarity => SafeAct::BatteryOff,
        _ => SafeAct::OutOfService,
    }
}

/// Expected inside the inner limits, watched inside the outer ones, else stopped.
fn within(
    volts: f64,
    inner: (f64, f64),
    outer: (f64, f64),
    act: SafeAct,
    basis: LimitBasis,
) -> Judged {
    let inside = |limits: (f64, f64)| volts >= limits.0 && volts <= limits.1;
    let (verdict, act) = if inside(inner) {
        (Verdict::Expected, SafeAct::GoOn)
    } else if inside(outer) {
        (Verdict::Watch, SafeAct::GoOn)
    } else {
        (Verdict::Stop, act)
    };
    Judged {
        verdict,
        act,
        limits: Some(inner),
        basis,
    }
}

fn at_most(volts: f64, most: f64, act: SafeAct, basis: LimitBasis) -> Judged {
    within(volts.abs(), (0.0, most), (0.0, most), act, basis)
}

/// A leg that rises when the other one is loaded has a weak neutral behind it.
fn rise(volts: f64, unloaded: Option<f64>) -> Judged {
    let most = unloaded.map_or(STOP.1, |before| before + RISE);
    within(
        volts,
        (LEG.0, most),
        (STOP.0, most),
        SafeAct::SupplyAway,
        LimitBasis::Ours,
    )
}
