//! The past, charts, tables and lines by the command; an export killed at any moment.

use super::{Shell, WREN, said};
use std::process::Stdio;
use std::time::Duration;

fn walked() -> Shell {
    let shell = Shell::new();
    let script = shell.write("wren.jsonl", WREN);
    let output = shell.replay(&script);
    assert!(output.status.success(), "{}", said(&output));
    shell
}

fn text(path: &std::path::Path) -> &str {
    path.to_str().unwrap()
}

#[test]
fn the_past_is_told_of_a_rig_and_of_a_point_in_both_languages() {
    let shell = walked();
    let rig = shell.ok(&["past"]);
    for told in [
        "Kinds that loosen",
        "Minutes in each bay",
        "Service voltage",
        "F8, N in, shore: moved once",
        "Next walk due 20 March 2028",
        "Label and local code come first.",
    ] {
        assert!(rig.contains(told), "{told}: {rig}");
    }
    let point = shell.ok(&["past", "f8"]);
    assert!(
        point.contains("at 41230 miles") && point.contains("Set to 45"),
        "{point}"
    );
    let spanish = shell.ok(&["--language", "es", "past", "L2"]);
    assert!(
        spanish.contains("a través de los años") && spanish.contains("Cable fuera"),
        "{spanish}"
    );
    let data: serde_json::Value = serde_json::from_str(&shell.ok(&["past", "--json"])).unwrap();
    assert_eq!(data["charts"].as_array().unwrap().len(), 3);
    assert_eq!(data["moved"][0]["code"], "F8");
}

#[test]
fn a_chart_is_a_file_with_its_numbers_beside_it() {
    let shell = walked();
    let (svg, csv) = (shell.path("volts.svg"), shell.path("volts.csv"));
    let told = shell.ok(&[
        "chart",
        "volts",
        "--to",
        text(&svg),
        "--numbers",
        text(&csv),
    ]);
    assert!(told.contains("measured in one walk, 121.3 V"), "{told}");
    let svg = std::fs::read_to_string(svg).unwrap();
    assert!(svg.starts_with("<?xml") && svg.ends_with("</svg>\n"));
    let numbers = std::fs::read_to_string(csv).unwrap();
    assert!(
        numbers.contains("2027-03-20,leg_1,120.9,110,127\r\n"),
        "{numbers}"
    );
}

#[test]
fn what_is_asked_wrongly_is_told_with_what_was_expected() {
    let shell = walked();
    let told = |args: &[&str], code| shell.fails(args, code);
    assert!(told(&["chart", "pie"], 2).contains("point, kinds, minutes or volts"));
    assert!(told(&["chart", "point"], 2).contains("such as F8"));
    assert!(told(&["chart", "kinds", "F8"], 2).contains("Leave it out"));
    assert!(told(&["chart", "point", "Z99"], 4).contains("Z99"));
    assert!(told(&["past", "no code"], 2).contains("no code"));
    assert!(told(&["export"], 2).contains("--csv"));
    let empty = Shell::new();
    assert!(!empty.fails(&["past"], 4).is_empty());
    let tables = shell.path("tables");
    shell.ok(&["export", "--csv", text(&tables)]);
    std::fs::remove_file(tables.join("walks.csv")).unwrap();
    assert!(told(&["export", "--csv", text(&tables)], 2).contains("not written over"));
    assert!(!tables.join("walks.csv").exists());
    assert!(told(&["import", text(&shell.path("none"))], 2).contains("none"));
}

#[test]
fn an_export_killed_at_any_moment_is_no_whole_file_and_hurts_no_logbook() {
    let shell = walked();
    let head = shell.head();
    let mut cut = 0;
    for round in 0..12_u64 {
        let to = shell.path(&format!("lines-{round}.jsonl"));
        let mut child = shell
            .command(&["export", "--to", text(&to)])
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .spawn()
            .unwrap();
        std::thread::sleep(Duration::from_millis(3 * round));
        child.kill().unwrap();
        child.wait().unwrap();
        let taken = Shell::new();
        if to.exists() && taken.run(&["import", text(&to)]).status.success() {
            assert_eq!(taken.head(), head);
        } else {
            cut += 1;
        }
    }
    assert!(cut > 0, "none was cut off");
    assert_eq!(shell.head(), head);
}
