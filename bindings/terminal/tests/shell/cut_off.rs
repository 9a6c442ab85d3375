//! Cut off at any act, gone on with: the same result. Killed for good at any moment: nothing that
//! was acknowledged is lost.

use super::{Shell, WREN};
use std::io::{BufRead, BufReader};
use std::process::Stdio;
use std::time::Duration;

fn whole() -> (u64, String) {
    let shell = Shell::new();
    let script = shell.write("wren.jsonl", WREN);
    assert!(shell.replay(&script).status.success());
    shell.head()
}

#[test]
fn stopped_between_any_two_acts_and_gone_on_with_gives_the_same_ledger() {
    let whole = whole();
    let lines: Vec<&str> = WREN.lines().collect();
    let shell = Shell::new();
    let mut at = 2;
    while at < lines.len() {
        let part = shell.write("part.jsonl", &(lines[..at].join("\n") + "\n"));
        let output = shell.replay(&part);
        assert!(
            output.status.success(),
            "line {at}: {}",
            super::said(&output)
        );
        at += 3;
    }
    let script = shell.write("wren.jsonl", WREN);
    assert!(shell.replay(&script).status.success());
    assert_eq!(shell.head(), whole);
}

#[test]
fn killed_at_any_moment_and_gone_on_with_gives_the_same_ledger() {
    let whole = whole();
    let shell = Shell::new();
    let script = shell.write("wren.jsonl", WREN);
    let mut before = 0;
    for round in 0..25 {
        let mut child = shell
            .command(&["walk", "--script", script.to_str().unwrap()])
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .spawn()
            .unwrap();
        std::thread::sleep(Duration::from_millis(3 + (round * 13) % 60));
        child.kill().unwrap();
        child.wait().unwrap();
        let now = shell.head().0;
        assert!(now >= before, "entries went from {before} to {now}");
        before = now;
    }
    assert!(shell.replay(&script).status.success());
    assert_eq!(shell.head(), whole);
}

#[test]
fn what_was_printed_before_a_kill_is_in_the_ledger() {
    let shell = Shell::new();
    let script = shell.write("wren.jsonl", WREN);
    let mut child = shell
        .command(&["walk", "--script", script.to_str().unwrap()])
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let printed = BufReader::new(child.stdout.take().unwrap());
    let opened = printed
        .lines()
        .map_while(Result::ok)
        .filter(|line| line.starts_with("Open: bay"))
        .nth(3);
    child.kill().unwrap();
    child.wait().unwrap();
    assert!(opened.is_some());
    let listed: serde_json::Value =
        serde_json::from_str(&shell.ok(&["rig", "--rig", "Wren", "--json"])).unwrap();
    let stages = listed["bays"]
        .as_array()
        .unwrap()
        .iter()
        .map(|bay| bay["stage"]["code"].as_str().unwrap());
    assert!(stages.filter(|stage| *stage != "shut").count() >= 4);
}
