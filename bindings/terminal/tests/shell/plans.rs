//! The plan, listed in both languages and as data, with the owner's word in it.

use super::Shell;
use serde_json::Value;

fn plan(shell: &Shell, minutes: &str) -> Value {
    let listed = shell.ok(&["plan", "--minutes", minutes, "--json"]);
    serde_json::from_str(&listed).unwrap()
}

fn codes(plan: &Value) -> Vec<String> {
    let stops = plan["stops"].as_array().unwrap().iter();
    let points = stops.flat_map(|stop| stop["points"].as_array().unwrap());
    points
        .map(|point| point["code"].as_str().unwrap().to_owned())
        .collect()
}

#[test]
fn a_plan_says_what_why_how_sure_and_what_stands_beside() {
    let shell = Shell::new();
    shell.ok(&["rig", "start", "starter-motorhome-50a", "Our rig"]);
    let text = shell.ok(&["plan", "--minutes", "10", "--why"]);
    for said in [
        "within 10 minutes",
        "[G] transfer switch bay",
        "[F] distribution panel",
        "Behind it: all power of shore and generator alike, × 3 (common practice, no source)",
        "Proved: no plan for this time is worth more.",
        "Nose to tail until time is out would have covered",
        "Left out: A, chassis battery. Its minutes are worth more elsewhere",
        "no probability of fire",
        "20 to 30 min more",
    ] {
        assert!(text.contains(said), "{said}:\n{text}");
    }
    let spanish = shell.ok(&["plan", "--minutes", "10", "--language", "es"]);
    assert!(spanish.contains("Demostrado: ningún plan"), "{spanish}");
    assert!(!spanish.contains("Rank "), "{spanish}");
}

#[test]
fn the_owner_raises_lowers_and_pins_a_point() {
    let shell = Shell::new();
    shell.ok(&["rig", "start", "starter-motorhome-50a", "Our rig"]);
    assert!(!codes(&plan(&shell, "10")).contains(&"B6".to_owned()));
    shell.ok(&["rig", "change", "B6", "priority=must"]);
    let pinned = plan(&shell, "10");
    assert!(codes(&pinned).contains(&"B6".to_owned()), "{pinned}");
    let first = codes(&plan(&shell, "60")).len();
    shell.ok(&["rig", "change", "B6", "priority=raise"]);
    assert_eq!(codes(&plan(&shell, "60")).len(), first);
    let folder = shell.path("files");
    shell.ok(&["rig", "write", folder.to_str().unwrap()]);
    let csv = std::fs::read_to_string(folder.join("points.csv")).unwrap();
    assert!(
        csv.lines()
            .any(|line| line.starts_with("B6,") && line.contains(",raise,"))
    );
    assert!(
        shell
            .fails(&["rig", "change", "B6", "priority=soon"], 2)
            .contains("soon")
    );
}

#[test]
fn what_must_be_done_and_does_not_fit_says_by_how_much() {
    let shell = Shell::new();
    shell.ok(&["rig", "start", "starter-motorhome-50a", "Our rig"]);
    shell.ok(&["rig", "change", "A1", "priority=must"]);
    let text = shell.ok(&["plan", "--minutes", "1"]);
    assert!(
        text.contains("! What must be done takes 2 min more"),
        "{text}"
    );
    assert!(
        text.contains("In every plan: you want it in every plan"),
        "{text}"
    );
    assert!(shell.fails(&["plan", "--minutes", "0"], 2).contains("0"));
    shell.fails(&["plan"], 2);
    shell.fails(&["plan", "--minutes", "10", "--follow"], 3);
}

/// The codes behind "this year's" in the note on like outlets.
fn these(plan: &Value) -> Vec<String> {
    let notes = plan["notes"].as_array().unwrap().iter();
    let note = notes
        .filter_map(Value::as_str)
        .find(|note| note.contains("are alike"));
    let (_, rest) = note.unwrap().split_once("this year's: ").unwrap();
    let codes = rest.split_once('.').unwrap().0.split(", ");
    codes.map(str::to_owned).collect()
}

#[test]
fn of_many_outlets_alike_some_are_this_years_and_tell_of_the_rest() {
    let shell = Shell::new();
    shell.ok(&["rig", "start", "starter-motorhome-50a", "Our rig"]);
    let add = |n: u8| {
        let code = format!("OUT{n}");
        let device = [format!("code={code}"), format!("name=outlet {n}")];
        shell.ok(&[
            "rig",
            "add",
            "device",
            &device[0],
            &device[1],
            "bay=F",
            "kind=outlet",
        ]);
        let point = [format!("code=F9{n}"), format!("device={code}")];
        shell.ok(&[
            "rig",
            "add",
            "point",
            &point[0],
            &point[1],
            "name=L",
            "role=power",
            "fastening=device_screw",
        ]);
    };
    (0..7).for_each(add);
    let few = shell.ok(&["plan", "--minutes", "10"]);
    assert!(!few.contains("are alike"), "{few}");
    add(7);
    let made = plan(&shell, "10");
    let codes = these(&made);
    // Eight within four years: two a year; the bound is the hypergeometric one of the sampling tests.
    assert_eq!(codes.len(), 2, "{codes:?}");
    assert!(codes.iter().all(|code| code.starts_with("OUT")));
    assert_eq!(
        these(&plan(&shell, "20")),
        codes,
        "the same whatever the minutes"
    );
    let text = shell.ok(&["plan", "--minutes", "10"]);
    assert!(text.contains("8 devices are alike (outlet, "), "{text}");
    assert!(
        text.contains("at 5 of the others at most, with 95 % confidence"),
        "{text}"
    );
    let spanish = shell.ok(&["plan", "--minutes", "10", "--language", "es"]);
    assert!(spanish.contains("8 dispositivos iguales"), "{spanish}");
}
