//! What happens on the sample walk: invented, as everything in it.

use super::line;
use baywalk_domain::coded::Coded;
use baywalk_domain::finding::{Decision, Finding, FindingKind, FollowUp};
use baywalk_domain::ids::ToolId;
use baywalk_domain::rig::{Book, SupplyKind};
use baywalk_domain::supply::ReadingStep;
use baywalk_domain::units::{Stated, TorqueUnit, VoltageUnit};
use baywalk_domain::walk::{Angle, AsFound, AsLeft, Damage, Movement, NotJudgedWhy, Test};
use chrono::NaiveDate;
use serde_json::{Value, json};

/// A meter's last digit is never quite still.
pub(super) fn dead_reading(act: u128, supply: SupplyKind) -> Stated<VoltageUnit> {
    let text = match (act % 5, supply) {
        (0, SupplyKind::Ac) => "0.2",
        (1, SupplyKind::Ac) => "0.1",
        (2, SupplyKind::Dc) => "0.01",
        _ => "0.0",
    };
    Stated::parse(text, VoltageUnit::Volts).unwrap()
}

/// What is ordinary: held at the check, held at the tug, or looked at where there is no figure.
pub(super) fn ordinary(tool: Option<(Stated<TorqueUnit>, ToolId)>, tug: bool) -> AsFound {
    match tool {
        Some((at, tool)) => AsFound::Held(Test::Torque { at, tool }),
        None if tug => AsFound::Held(Test::Tug),
        None => AsFound::LookedAt { tugged: true },
    }
}

/// What is found out of the ordinary; a mark that is off stands for a turn where a tool checks it.
pub(super) fn found(code: &str) -> Option<AsFound> {
    let turned = |angle| AsFound::Moved(Movement::MarkOff { angle });
    Some(match code {
        "F8" => turned(Angle::Eighth),
        "F11" | "H6" => turned(Angle::Hair),
        "H14" => turned(Angle::Quarter),
        "M2" => turned(Angle::Half),
        "H11" => AsFound::Loose,
        "L2" => AsFound::Apart,
        "J2" => AsFound::Loose,
        "C3" => not_judged(
            NotJudgedWhy::NotReached,
            "behind the muffler shield; needs a ramp",
        ),
        _ => return None,
    })
}

fn not_judged(why: NotJudgedWhy, note: &str) -> AsFound {
    AsFound::NotJudged {
        why,
        note: note.to_owned(),
    }
}

/// Damage that is seen before the point is judged.
pub(super) fn damage(code: &str) -> Vec<(Damage, &'static str)> {
    match code {
        "J2" => vec![
            (Damage::Heat, "brown ring around the screw"),
            (Damage::Melted, "insulation glazed for 10 mm"),
        ],
        "A5" => vec![(Damage::Corrosion, "white crust, stud sound")],
        _ => Vec::new(),
    }
}

/// What is left otherwise than set to the figure.
pub(super) fn left(code: &str) -> Option<AsLeft> {
    (code == "J2").then(|| AsLeft::OutOfService {
        how: "breaker position 9 off, taped and tagged".to_owned(),
    })
}

/// What is seen at a look.
pub(super) fn seen(code: &str) -> Option<&'static str> {
    match code {
        "C10" => Some("old mouse nest behind the muffler, one gnawed sleeve"),
        "K10" => Some("sleeve worn bright where the chain turns, copper not seen"),
        _ => None,
    }
}

/// What the readings show while power comes back.
pub(super) fn reading(step: ReadingStep) -> Option<&'static str> {
    match step {
        ReadingStep::DcBus => Some("12.9"),
        ReadingStep::SupplyL1N => Some("121.3"),
        ReadingStep::SupplyL2N => Some("120.8"),
        ReadingStep::SupplyL1L2 => Some("242.0"),
        ReadingStep::SupplyLG => Some("121.2"),
        ReadingStep::SupplyNG => Some("0.2"),
        ReadingStep::HotSkin => Some("0.4"),
        ReadingStep::Leg1 => Some("120.9"),
        ReadingStep::Leg2 => Some("120.3"),
        ReadingStep::OutletLG => Some("120.8"),
        ReadingStep::OutletNG => Some("0.6"),
        ReadingStep::Load1Leg1 => Some("117.8"),
        ReadingStep::Load1Leg2 => Some("120.9"),
        ReadingStep::Load2Leg1 => Some("121.4"),
        ReadingStep::Load2Leg2 => Some("117.1"),
        ReadingStep::InverterAlone => Some("119.6"),
        _ => None,
    }
}

/// Where a reading is taken: a place that needs no cover off.
pub(super) fn place(step: ReadingStep) -> &'static str {
    match step {
        ReadingStep::DcBus => "monitor on the wall",
        ReadingStep::HotSkin => "door frame to a rod in damp soil",
        ReadingStep::Leg1 | ReadingStep::Load1Leg1 | ReadingStep::Load2Leg1 => {
            "outlet in the galley"
        }
        ReadingStep::Leg2 | ReadingStep::Load1Leg2 | ReadingStep::Load2Leg2 => "outlet by the bed",
        ReadingStep::OutletLG | ReadingStep::OutletNG | ReadingStep::InverterAlone => {
            "outlet in the galley"
        }
        ReadingStep::SupplyL1L2 => "display at the post",
        step if step.is_before_shore() => "supply outlet at the post",
        _ => "",
    }
}

/// What is decided about a finding, and the act as a script writes it.
pub(super) fn follow_up(book: &Book, finding: &Finding) -> Option<(FollowUp, Value)> {
    let (decision, by, note) = match finding.raised.kind {
        FindingKind::OutOfService => (
            Decision::Licensed,
            NaiveDate::from_ymd_opt(2027, 4, 10),
            "outlet circuit, heat at the receptacle",
        ),
        FindingKind::LookTrouble => (
            Decision::Ourselves,
            NaiveDate::from_ymd_opt(2027, 4, 30),
            "",
        ),
        FindingKind::WasApart => (Decision::Mended, None, "remade on the spot"),
        _ => return None,
    };
    let mut written = json!({
        "act": "decide",
        "finding": finding.raised.kind.code(),
        "about": line::about(book, finding.raised.about),
        "decision": decision.code(),
        "note": note,
    });
    if let Some(by) = by {
        written["by"] = json!(by.to_string());
    }
    let follow_up = FollowUp {
        decision,
        by,
        note: note.to_owned(),
    };
    Some((follow_up, written))
}
