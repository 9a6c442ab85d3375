//! Scripts that say when to look again, and what a walk goes by.

use super::{Shell, WREN, said};
use serde_json::Value;

/// Rules, notes and what is put off, then the sample walk up to the first bay, with a plan followed,
/// left and followed again.
fn script(version: u32) -> String {
    let mut lines = vec![format!("{{\"script\":{version},\"seed\":\"timing\"}}")];
    let mut add = |time: &str, act: &str| lines.push(format!("{{\"at\":\"2027-{time}Z\",{act}}}"));
    add(
        "01-02T10:00:00",
        r#""act":"layout","layout":"sample-motorhome""#,
    );
    for (time, act) in [
        ("01-02T10:01:00", r#""act":"odometer","reading":"40000 mi""#),
        ("01-02T10:02:00", r#""act":"hours","reading":"812 h""#),
        ("01-02T10:03:00", r#""act":"trip","distance":"120 mi""#),
        (
            "02-20T10:00:00",
            r#""act":"restart","reading":"12 mi","why":"replaced""#,
        ),
        (
            "02-21T10:00:00",
            r#""act":"rule","fields":{"about":"battery_post","months":"6","distance":"3000 mi"}"#,
        ),
        (
            "02-21T10:01:00",
            r#""act":"rule","fields":{"hard_impact":"2"}"#,
        ),
        (
            "02-21T10:02:00",
            r#""act":"rule","in_place":1,"fields":{"about":"battery_post","months":"4"}"#,
        ),
        (
            "02-21T10:03:00",
            r#""act":"rule","fields":{"about":"F","months":"3"}"#,
        ),
        ("02-21T10:04:00", r#""act":"drop_rule","number":3"#),
        (
            "03-01T10:00:00",
            r#""act":"event","event":"hard_impact","about":"A","note":"curb, left front""#,
        ),
        (
            "03-01T10:01:00",
            r#""act":"put_off","number":1,"until":"2027-03-20","why":"the hall is locked""#,
        ),
    ] {
        add(time, act);
    }
    let walk = WREN
        .lines()
        .skip(3)
        .take_while(|line| !line.contains("\"act\":\"open\""));
    lines.extend(walk.map(str::to_owned));
    let mut add =
        |time: &str, act: &str| lines.push(format!("{{\"at\":\"2027-03-20T{time}-07:00\",{act}}}"));
    for (time, act) in [
        ("09:15:00", r#""act":"leave_plan","refused":true"#),
        ("09:15:01", r#""act":"follow","minutes":10"#),
        ("09:15:02", r#""act":"leave_plan""#),
        ("09:15:20", r#""act":"follow""#),
    ] {
        add(time, act);
    }
    lines.join("\n") + "\n"
}

fn json(shell: &Shell, args: &[&str]) -> Value {
    serde_json::from_str(&shell.ok(&[args, &["--json"]].concat())).unwrap()
}

#[test]
fn rules_notes_and_plans_are_replayed_alike() {
    let (one, two) = (Shell::new(), Shell::new());
    for shell in [&one, &two] {
        let path = shell.write("timing.jsonl", &script(2));
        let output = shell.replay(&path);
        assert!(output.status.success(), "{}", said(&output));
    }
    assert_eq!(one.head(), two.head());
    let path = one.write("timing.jsonl", &script(2));
    assert!(one.replay(&path).status.success());
    assert_eq!(one.head(), two.head(), "what is there already is gone over");
    let rules = json(&one, &["rule"]);
    let said: Vec<&str> = rules["rules"]
        .as_array()
        .unwrap()
        .iter()
        .map(|rule| rule["words"].as_str().unwrap())
        .collect();
    assert_eq!(said.len(), 2, "{said:?}");
    assert!(
        said[0].contains("battery") && said[0].contains("every 4 months"),
        "{said:?}"
    );
    assert!(said[1].contains("2 days after"), "{said:?}");
    let due = json(&one, &["due"]);
    let items = due["items"].as_array().unwrap();
    let reasons: Vec<&str> = items
        .iter()
        .map(|item| item["reason"].as_str().unwrap())
        .collect();
    assert!(reasons.contains(&"hard_impact"), "{reasons:?}");
    assert!(
        items.iter().any(|item| item["put_off"]
            .as_str()
            .is_some_and(|put| put.contains("locked"))),
        "{due}"
    );
    assert_eq!(json(&one, &["plan", "--minutes", "10"])["followed"], true);
}

#[test]
fn an_act_of_version_2_in_a_script_of_version_1_is_told() {
    let shell = Shell::new();
    let path = shell.write("timing.jsonl", &script(1));
    let told = shell.fails(&["walk", "--script", path.to_str().unwrap()], 2);
    assert!(
        told.contains("Line 4: ") && told.contains("version 2"),
        "{told}"
    );
}

#[test]
fn what_names_nothing_is_told_with_its_line() {
    for (act, words) in [
        (
            r#""act":"rule","fields":{"weeks":"6"}"#,
            "“weeks” is no part of a rule",
        ),
        (
            r#""act":"rule","in_place":4,"fields":{"months":"6"}"#,
            "no rule number 4",
        ),
        (
            r#""act":"put_off","number":9,"until":"2027-05-01","why":"x""#,
            "has the number 9",
        ),
        (r#""act":"event","event":"flood""#, "flood"),
        (r#""act":"follow","minutes":0"#, "0"),
        (r#""act":"follow""#, "plan"),
    ] {
        let shell = Shell::new();
        shell.ok(&["rig", "start", "sample-motorhome", "Heron"]);
        let before = shell.head();
        let text =
            format!("{{\"script\":2,\"seed\":\"x\"}}\n{{\"at\":\"2999-01-01T00:00:00Z\",{act}}}\n");
        let path = shell.write("bad.jsonl", &text);
        let output = shell.run(&["walk", "--script", path.to_str().unwrap()]);
        assert!(!output.status.success());
        let told = said(&output);
        assert!(told.contains("Line 2: ") && told.contains(words), "{told}");
        assert_eq!(shell.head(), before);
    }
}
