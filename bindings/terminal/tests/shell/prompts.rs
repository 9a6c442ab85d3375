//! The walk by prompts, as a newcomer would try it.

use super::{Shell, said};

#[test]
fn a_rig_from_a_starter_layout_is_walked_stopped_and_gone_on_with() {
    let shell = Shell::new();
    shell.ok(&["rig", "start", "starter-trailer-30a", "Our trailer"]);
    let output = shell.typed(&["walk", "--person", "me"], "1\n1\nSo it\n");
    let text = said(&output);
    assert!(output.status.success(), "{text}");
    assert!(text.contains("Before you start  4/10"), "{text}");
    assert!(text.contains("Everything entered is kept"), "{text}");
    let again = said(&shell.typed(&["walk"], ""));
    assert!(again.contains("Before you start  4/10"), "{again}");
}

#[test]
fn undo_strikes_and_a_wrong_key_is_told() {
    let shell = Shell::new();
    shell.ok(&["rig", "start", "starter-van-dc", "Van"]);
    let text = said(&shell.typed(&["walk"], "1\n77\nundo\n"));
    assert!(text.contains("There is no key “77” on this card"), "{text}");
    assert!(text.contains("Undone."), "{text}");
    assert!(text.trim_end().contains("Before you start  1/10"), "{text}");
}

#[test]
fn a_walk_ended_early_says_what_is_alive_and_not_judged() {
    let shell = Shell::new();
    shell.ok(&["rig", "start", "starter-van-dc", "Van"]);
    let text = said(&shell.typed(&["walk"], "1\nend_early\nit rains\n"));
    assert!(text.contains("Ended early: it rains"), "{text}");
    assert!(text.contains("Alive now"), "{text}");
    assert!(text.contains("Not judged (31)"), "{text}");
    assert!(shell.ok(&["due"]).contains("Due now"));
}

#[test]
fn the_book_is_changed_point_by_point_and_codes_are_never_given_again() {
    let shell = Shell::new();
    shell.ok(&["rig", "start", "starter-trailer-30a", "Our trailer"]);
    let listed: serde_json::Value =
        serde_json::from_str(&shell.ok(&["rig", "--rig", "our trailer", "--json"])).unwrap();
    let points = |listed: &serde_json::Value| listed["points"].as_str().unwrap().to_owned();
    assert_eq!(points(&listed), "34 points");
    let folder = shell.path("files");
    shell.ok(&["rig", "write", folder.to_str().unwrap()]);
    let csv = std::fs::read_to_string(folder.join("points.csv")).unwrap();
    let device = csv
        .lines()
        .nth(1)
        .unwrap()
        .split(',')
        .nth(1)
        .unwrap()
        .to_owned();
    let device = format!("device={device}");
    let fields = [
        "rig",
        "add",
        "point",
        "code=A90",
        device.as_str(),
        "name=spare bond",
        "role=ground",
        "fastening=chassis_screw",
    ];
    shell.ok(&fields);
    assert!(shell.fails(&fields, 2).contains("A90"));
    shell.ok(&["rig", "change", "A90", "name=frame bond"]);
    shell.ok(&["rig", "retire", "A90"]);
    assert!(shell.fails(&fields, 2).contains("A90"));
    shell.fails(&["rig", "change", "A91", "name=x"], 4);
    let listed: serde_json::Value =
        serde_json::from_str(&shell.ok(&["rig", "--rig", "our trailer", "--json"])).unwrap();
    assert_eq!(points(&listed), "34 points");
}
