//! The second look at what a walk set or remade.

use super::{Shell, WREN, said};

#[test]
fn a_second_look_goes_through_what_was_disturbed_and_nothing_else() {
    let shell = Shell::new();
    shell.fails(&["due"], 4);
    let script = shell.write("wren.jsonl", WREN);
    assert!(shell.replay(&script).status.success());
    assert!(shell.ok(&["due"]).contains("Second look"));
    let text = said(&shell.typed(&["walk", "--second-look", "--person", "me"], ""));
    assert!(text.contains("Before you start  1/10"), "{text}");
    let listed: serde_json::Value =
        serde_json::from_str(&shell.ok(&["rig", "--rig", "Wren", "--json"])).unwrap();
    assert_eq!(listed["points"], "0 of 7 points");
    let again = said(&shell.typed(&["walk"], "end_early\nrain\n"));
    assert!(again.contains("Not judged (7)"), "{again}");
    assert!(
        shell.ok(&["due"]).contains("Second look"),
        "nothing was looked at"
    );
}

#[test]
fn there_is_no_second_look_where_nothing_was_disturbed() {
    let shell = Shell::new();
    shell.ok(&["rig", "start", "starter-van-dc", "Van"]);
    shell.fails(&["walk", "--second-look"], 3);
}
