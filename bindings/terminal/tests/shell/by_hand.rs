//! Torque by hand, without a rig and for a point of one.

use super::Shell;

#[test]
fn a_label_wins_and_says_its_basis() {
    let shell = Shell::new();
    let text = shell.ok(&[
        "torque",
        "role=power",
        "fastening=pressure_screw",
        "drives=slotted",
        "wire=6 AWG",
        "torque=45 lbf.in",
        "torque_basis=label",
        "torque_source=inside the cover",
    ]);
    for words in [
        "45 inch-pounds",
        "5.1 N·m",
        "inside the cover",
        "36 inch-pounds",
        "80 %",
        "local code",
    ] {
        assert!(text.contains(words), "{words}: {text}");
    }
}

#[test]
fn a_table_value_names_the_table_and_its_row() {
    // NEC Annex I table I.1, second hand: 6 AWG, slot wider than 0.047 in, 45 lbf.in.
    let shell = Shell::new();
    let text = shell.ok(&[
        "torque",
        "role=power",
        "fastening=pressure_screw",
        "drives=slotted width 0.06 in length 5/16 in",
        "wire=6 AWG",
        "thread=#10-32",
        "--json",
    ]);
    let value: serde_json::Value = serde_json::from_str(&text).unwrap();
    assert_eq!(value["figure"]["number"], "45");
    assert_eq!(value["figure"]["frame"], "table");
    assert!(
        value["figure"]["basis"].as_str().unwrap().contains("I.1"),
        "{text}"
    );
}

#[test]
fn a_battery_post_without_a_figure_gets_none() {
    let shell = Shell::new();
    let text = shell.ok(&[
        "torque",
        "role=power",
        "fastening=battery_post",
        "thread=M8",
        "grade=iso8.8",
        "--json",
    ]);
    let value: serde_json::Value = serde_json::from_str(&text).unwrap();
    assert_eq!(value["action"]["code"], "ask_maker");
    assert_eq!(value["figure"]["number"], "");
}

#[test]
fn what_is_wrong_is_told_and_nothing_guessed() {
    let shell = Shell::new();
    assert!(shell.fails(&["torque", "fastening"], 4).contains("No rig"));
    assert!(
        shell
            .fails(&["torque", "fastening=glue", "role=power"], 2)
            .contains("glue")
    );
    assert!(
        shell
            .fails(
                &[
                    "torque",
                    "role=power",
                    "fastening=pressure_screw",
                    "torque=0 lbf.in"
                ],
                2
            )
            .contains('0')
    );
    assert!(shell.fails(&["torque", "colour=red"], 2).contains("colour"));
}

#[test]
fn the_share_of_the_check_is_ours_and_adjustable_within_bounds() {
    let shell = Shell::new();
    let slotted = [
        "torque",
        "role=power",
        "fastening=pressure_screw",
        "drives=slotted",
        "wire=6 AWG",
        "torque=40 lbf.in",
        "torque_basis=label",
        "torque_source=cover",
    ];
    assert!(
        shell
            .ok(&slotted)
            .contains("Set the tool to 32 inch-pounds")
    );
    assert!(shell.ok(&["check-share", "90"]).contains("90 %"));
    assert!(
        shell
            .ok(&slotted)
            .contains("Set the tool to 36 inch-pounds")
    );
    let both = shell.ok(&["check-share"]);
    assert!(both.contains("Against:") && both.contains("For:"), "{both}");
    shell.fails(&["check-share", "95"], 2);
    shell.fails(&["check-share", "79"], 2);
}
