//! Backup, restore, recovery and lines by the command; restores killed at any moment.

use super::{Shell, WREN, said};
use std::process::Stdio;
use std::time::Instant;

/// A store with the first acts of the sample walk.
fn with_acts(acts: usize) -> Shell {
    let shell = Shell::new();
    let lines: Vec<&str> = WREN.lines().take(acts).collect();
    let script = shell.write("part.jsonl", &(lines.join("\n") + "\n"));
    let output = shell.replay(&script);
    assert!(output.status.success(), "{}", said(&output));
    shell
}

/// Writes over a page in the middle of the database.
pub(super) fn spoil(shell: &Shell) {
    let path = shell.store().join("baywalk.db");
    let mut bytes = std::fs::read(&path).unwrap();
    let middle = bytes.len() / 2;
    bytes[middle..middle + 4096].fill(0x55);
    std::fs::write(&path, bytes).unwrap();
}

fn text(path: &std::path::Path) -> &str {
    path.to_str().unwrap()
}

#[test]
fn a_walk_reminds_of_a_backup_until_one_is_made() {
    let shell = with_acts(WREN.lines().count());
    assert!(shell.ok(&["due"]).contains("No backup yet"));
    let to = shell.path("wren.zip");
    let told = shell.ok(&["backup", text(&to)]);
    assert!(
        told.contains("read back") && told.contains("no passphrase"),
        "{told}"
    );
    assert!(!shell.ok(&["due"]).contains("ackup"));
    shell.ok(&["note", "odometer", "43000 mi"]);
    assert!(
        shell
            .ok(&["due"])
            .contains("one entry and 0 walks are on this device alone")
    );
    let again = shell.fails(&["backup", text(&to)], 2);
    assert!(again.contains("not written over"), "{again}");
}

#[test]
fn a_backup_is_restored_only_over_what_may_be_replaced() {
    let shell = with_acts(300);
    let to = shell.path("part.zip");
    let head = shell.head();
    shell.ok(&["backup", text(&to)]);
    shell.ok(&["note", "odometer", "43000 mi"]);
    let look = shell.ok(&["restore", text(&to), "--look"]);
    assert!(look.contains("one entry here is not in it"), "{look}");
    let refused = shell.fails(&["restore", text(&to)], 3);
    assert!(refused.contains("--replace"), "{refused}");
    assert_eq!(shell.head().0, head.0 + 1);
    let done = shell.ok(&["restore", text(&to), "--replace"]);
    assert!(
        done.contains("kept in") && done.contains("proved dead anew"),
        "{done}"
    );
    let verified = shell.ok(&["verify"]);
    assert!(verified.contains(&head.1), "{verified}");
    // One for the logbook and one for the open walk.
    assert_eq!(shell.head().0, head.0 + 2);
}

#[test]
fn a_passphrase_comes_from_standard_input_alone() {
    let shell = with_acts(40);
    let to = shell.path("part.age");
    let made = shell.typed(&["backup", text(&to), "--passphrase"], "four tired owls\n");
    assert!(made.status.success(), "{}", said(&made));
    let other = Shell::new();
    let none = other.fails(&["restore", text(&to)], 2);
    assert!(none.contains("has a passphrase"), "{none}");
    let wrong = other.typed(&["restore", text(&to), "--passphrase"], "five\n");
    assert_eq!(wrong.status.code(), Some(2), "{}", said(&wrong));
    let empty = other.typed(&["restore", text(&to), "--passphrase"], "\n");
    assert_eq!(empty.status.code(), Some(2));
    let right = other.typed(&["restore", text(&to), "--passphrase"], "four tired owls\n");
    assert!(right.status.success(), "{}", said(&right));
}

#[test]
fn lines_go_out_and_into_an_empty_logbook_with_the_same_digest() {
    let shell = with_acts(WREN.lines().count());
    let to = shell.path("wren-entries.jsonl");
    shell.ok(&["export", "--to", text(&to)]);
    let other = Shell::new();
    other.ok(&["import", text(&to)]);
    assert_eq!(other.head(), shell.head());
    let refused = other.fails(&["import", text(&to)], 3);
    assert!(refused.contains("can't be joined"), "{refused}");
    shell.fails(&["export", "--to", text(&to)], 2);
}

#[test]
fn a_damaged_logbook_is_recovered_and_a_whole_one_left_alone() {
    let shell = with_acts(300);
    assert!(shell.fails(&["recover"], 3).contains("Nothing is damaged"));
    let to = shell.path("part.zip");
    shell.ok(&["backup", text(&to)]);
    spoil(&shell);
    let told = shell.ok(&["recover", "--backup", text(&to)]);
    assert!(
        told.contains("No entry is missing") && told.contains("kept in"),
        "{told}"
    );
    shell.head();
}

#[test]
fn a_restore_killed_at_any_moment_leaves_the_old_logbook_or_the_new_one() {
    let shell = with_acts(120);
    shell.ok(&["backup", text(&shell.path("short.zip"))]);
    let long = with_acts(WREN.lines().count());
    long.ok(&["backup", text(&shell.path("long.zip"))]);
    let (short_head, long_head) = (shell.head().0, long.head().0);
    let begun = Instant::now();
    shell.ok(&["restore", text(&shell.path("long.zip")), "--replace"]);
    let whole = begun.elapsed();
    let (mut old, mut new) = (0, 0);
    for round in 0..40_u32 {
        let before = shell.head();
        let to_long = before.0 < long_head;
        let name = if to_long { "long.zip" } else { "short.zip" };
        let mut child = shell
            .command(&["restore", text(&shell.path(name)), "--replace"])
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .spawn()
            .unwrap();
        std::thread::sleep(whole * (round * 29 % 40) / 32);
        child.kill().unwrap();
        child.wait().unwrap();
        let now = shell.head();
        if now == before {
            old += 1;
        } else {
            new += 1;
            let expected = if to_long { long_head } else { short_head };
            assert!((expected + 1..=expected + 2).contains(&now.0), "{now:?}");
        }
    }
    assert_eq!(old + new, 40);
    assert!(old > 0 && new > 0, "old {old}, new {new}");
}
