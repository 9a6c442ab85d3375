//! Wrong input: a clear sentence, an exit code that is not 0, and the store as it was.

use super::{Shell, WREN};
use std::process::Stdio;
use std::time::Duration;

/// A store with the first lines of the sample walk.
fn begun() -> Shell {
    let shell = Shell::new();
    let head: Vec<&str> = WREN.lines().take(60).collect();
    let script = shell.write("head.jsonl", &(head.join("\n") + "\n"));
    assert!(shell.replay(&script).status.success());
    shell
}

#[track_caller]
fn refused(line: &str, code: i32, words: &str) {
    let shell = begun();
    let before = shell.head();
    let text = format!("{{\"script\":1,\"seed\":\"other\"}}\n{line}\n");
    let script = shell.write("bad.jsonl", &text);
    let said = shell.fails(&["walk", "--script", script.to_str().unwrap()], code);
    assert!(said.contains(words), "{said}");
    assert!(said.trim_end().ends_with('.'), "{said}");
    assert_eq!(shell.head(), before);
}

const LATER: &str = "\"at\":\"2027-03-20T15:00:00-07:00\"";

#[test]
fn a_line_earlier_than_the_last_entry() {
    let line = "{\"at\":\"2020-01-01T00:00:00Z\",\"act\":\"odometer\",\"reading\":\"50000 mi\"}";
    refused(line, 2, "earlier than the newest entry");
}

#[test]
fn lines_out_of_order() {
    let line = format!(
        "{{{LATER},\"act\":\"odometer\",\"reading\":\"50000 mi\"}}\n{{\"at\":\"2027-03-20T14:00:00-07:00\",\"act\":\"pause\"}}"
    );
    refused(&line, 2, "before that of an earlier line");
}

#[test]
fn an_unknown_unit_and_a_negative_torque() {
    refused(
        &format!("{{{LATER},\"act\":\"odometer\",\"reading\":\"50000 furlongs\"}}"),
        2,
        "furlongs",
    );
    let found = "\"found\":{\"grade\":\"held\",\"at\":\"-36 lbf.in\",\"tool\":\"T1\"}";
    refused(
        &format!("{{{LATER},\"act\":\"found\",\"point\":\"F8\",{found}}}"),
        2,
        "-36",
    );
    let found = "\"found\":{\"grade\":\"held\",\"at\":\"NaN lbf.in\",\"tool\":\"T1\"}";
    refused(
        &format!("{{{LATER},\"act\":\"found\",\"point\":\"F8\",{found}}}"),
        2,
        "NaN",
    );
}

#[test]
fn an_act_that_the_rules_refuse() {
    refused(
        &format!("{{{LATER},\"act\":\"close\",\"bay\":\"F\"}}"),
        3,
        "bay",
    );
    refused(
        &format!("{{{LATER},\"act\":\"open\",\"bay\":\"ZZ\"}}"),
        2,
        "ZZ",
    );
    refused(&format!("{{{LATER},\"act\":\"dance\"}}"), 2, "no act");
}

#[test]
fn a_script_of_a_newer_version_or_none_at_all() {
    let shell = begun();
    let before = shell.head();
    for (text, words) in [
        ("{\"script\":9,\"seed\":\"x\"}\n", "version 9"),
        ("hello\n", "no head of a script"),
        ("", "no head of a script"),
    ] {
        let script = shell.write("bad.jsonl", text);
        let said = shell.fails(&["walk", "--script", script.to_str().unwrap()], 2);
        assert!(said.contains(words), "{said}");
    }
    assert_eq!(shell.head(), before);
}

#[test]
fn rig_files_with_faults_tell_all_of_them_and_store_nothing() {
    let shell = Shell::new();
    let toml = shell.write("rig.toml", "format = 1\n[rig]\nname = \"x\"\nkind = \"boat\"\nservice = \"none\"\n[yearly]\nmonths = 99\n");
    let csv = shell.write("points.csv", "code,device,name\nA1,NONE,thing\n");
    let said = shell.fails(
        &["rig", "load", toml.to_str().unwrap(), csv.to_str().unwrap()],
        2,
    );
    for words in [
        "line 4",
        "boat",
        "line 7",
        "99",
        "NONE",
        "nothing is stored",
    ] {
        assert!(said.contains(words), "{words}: {said}");
    }
    assert_eq!(shell.head().0, 0);
}

#[test]
fn a_store_that_is_no_store_is_refused_and_untouched() {
    let shell = Shell::new();
    std::fs::create_dir_all(shell.store()).unwrap();
    let file = shell.store().join("baywalk.db");
    std::fs::write(&file, "this is a letter to my aunt, and no database at all").unwrap();
    let said = shell.fails(&["rig"], 8);
    assert!(said.contains("no logbook"), "{said}");
    let kept = std::fs::read_to_string(&file).unwrap();
    assert!(kept.starts_with("this is a letter"));
}

#[test]
fn a_second_process_waits_a_little_and_is_told_who_holds_it() {
    let shell = begun();
    let mut holder = shell
        .command(&["walk"])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    std::thread::sleep(Duration::from_millis(500));
    let said = shell.fails(&["rig"], 6);
    assert!(said.contains(&holder.id().to_string()), "{said}");
    drop(holder.stdin.take());
    holder.wait().unwrap();
    shell.ok(&["rig"]);
}
