//! Torque tools: classes and calibration by ISO 6789, settings on the tool's scale.

use baywalk_domain::ids::ToolId;
use baywalk_domain::rig::{Code, Tool, ToolKind};
use baywalk_domain::torque::{
    Calibration, SettingFault, calibration, choose, class_percent, rounds, setting,
};
use baywalk_domain::units::{Stated, Torque, TorqueUnit};
use chrono::NaiveDate;
use proptest::prelude::*;

fn stated(text: &str) -> Stated<TorqueUnit> {
    Stated::parse_pair(text).unwrap()
}

fn tool(code: &str, kind: ToolKind, least: &str, most: &str, step: &str) -> Tool {
    Tool {
        id: ToolId::new(uuid::Uuid::nil()),
        code: Code::parse(code).unwrap(),
        name: "driver".to_owned(),
        kind,
        least: stated(least),
        most: stated(most),
        step: stated(step),
        calibrated: NaiveDate::from_ymd_opt(2026, 3, 1),
        cycles: 120,
        retired: false,
    }
}

fn driver() -> Tool {
    tool(
        "T1",
        ToolKind::ClickDriver,
        "10 lbf.in",
        "50 lbf.in",
        "1 lbf.in",
    )
}

#[test]
fn classes_of_iso_6789_second_hand_and_from_memory() {
    let torque = |value| Torque::from_newton_metres(value).unwrap();
    let percent = |kind, value| format!("{:.0}", class_percent(kind, torque(value)));
    assert_eq!(percent(ToolKind::ClickWrench, 10.1), "4");
    assert_eq!(percent(ToolKind::ClickWrench, 10.0), "6");
    assert_eq!(percent(ToolKind::ClickDriver, 4.0), "6");
    let set = setting(&driver(), &stated("45 lbf.in"), None).unwrap();
    let share = set.band.highest.newton_metres() / set.joint.newton_metres();
    assert!((share - 1.06).abs() < 1e-12);
}

#[test]
fn calibration_of_iso_6789_from_memory() {
    let day = |y, m, d| NaiveDate::from_ymd_opt(y, m, d).unwrap();
    let mut tool = driver();
    let due = day(2027, 3, 1);
    let holds = Calibration::Holds {
        due,
        cycles_left: 4880,
    };
    assert_eq!(calibration(&tool, day(2027, 2, 28)), holds);
    let by_time = Calibration::Due {
        since: due,
        by_cycles: false,
    };
    assert_eq!(calibration(&tool, due), by_time);
    tool.cycles = 5_000;
    assert!(matches!(
        calibration(&tool, day(2026, 4, 1)),
        Calibration::Due {
            by_cycles: true,
            ..
        }
    ));
    tool.calibrated = None;
    assert_eq!(calibration(&tool, due), Calibration::Unknown);
}

#[test]
fn a_torque_outside_the_range_is_refused_and_the_tool_that_would_do_named() {
    let small = driver();
    let large = tool("T2", ToolKind::ClickWrench, "5 N.m", "25 N.m", "0.1 N.m");
    let wanted = stated("120 lbf.in");
    let refused = setting(&small, &wanted, None);
    assert!(matches!(refused, Err(SettingFault::OutsideRange(_))));
    let tools = [small, large];
    let choice = choose(&tools, &wanted, None);
    let (fit, set) = choice.fit.first().unwrap();
    assert_eq!(
        (fit.code.as_str(), set.at.pair()),
        ("T2", "13.5 N.m".to_owned())
    );
    assert_eq!(choice.unfit.len(), 1);
}

#[test]
fn a_scale_that_misses_by_over_a_tenth_is_too_coarse() {
    let coarse = tool("T3", ToolKind::ClickWrench, "2 N.m", "20 N.m", "2 N.m");
    let refused = setting(&coarse, &stated("3.5 N.m"), None);
    assert!(matches!(refused, Err(SettingFault::TooCoarse(_))));
}

#[test]
fn a_bay_is_gone_through_with_few_changes_of_setting() {
    let points = [
        ("A", stated("45 lbf.in")),
        ("B", stated("20 lbf.in")),
        ("C", stated("45.0 lbf.in")),
        ("D", stated("120 lbf.in")),
    ];
    let grouped = rounds(&driver(), &points);
    let found: Vec<_> = grouped
        .rounds
        .iter()
        .map(|round| (round.at.pair(), round.points.clone()))
        .collect();
    assert_eq!(
        found,
        [
            ("20 lbf.in".to_owned(), vec!["B"]),
            ("45 lbf.in".to_owned(), vec!["A", "C"])
        ]
    );
    let refused: Vec<_> = grouped
        .refused
        .iter()
        .map(|refused| refused.point)
        .collect();
    assert_eq!(refused, ["D"]);
}

proptest! {
    #[test]
    fn a_setting_is_a_step_of_the_scale_and_never_above_what_is_wanted(
        wanted in 10_u32..2_000,
        step in 1_u32..20,
        in_newton_metres in proptest::bool::ANY,
    ) {
        let unit = if in_newton_metres { "N.m" } else { "lbf.in" };
        let step_text = format!("{}.{} {unit}", step / 10, step % 10);
        let tool = tool("T1", ToolKind::ClickDriver, &format!("1 {unit}"), &format!("60 {unit}"), &step_text);
        let wanted = stated(&format!("{}.{} lbf.in", wanted / 10, wanted % 10));
        if let Ok(set) = setting(&tool, &wanted, None) {
            let (at, limit) = (set.at.quantity().newton_metres(), wanted.quantity().newton_metres());
            prop_assert!(at <= limit * (1.0 + 1e-9), "{} for {}", set.at.pair(), wanted.pair());
            prop_assert!(at >= limit * 0.9 * (1.0 - 1e-9));
            let steps = (set.at.value() - 1.0) / tool.step.value();
            prop_assert!((steps - steps.round()).abs() < 1e-6, "{} by {step_text}", set.at.pair());
        }
    }
}
