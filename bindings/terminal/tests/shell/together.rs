//! Two commands on one logbook at once: one waits its turn or is told, and no act is lost.

use super::{Shell, WREN};
use std::io::{BufRead, BufReader};
use std::process::Stdio;
use std::time::{Duration, Instant};

/// The exit code where another process holds the logbook.
const HELD: i32 = 6;
const EACH: u64 = 40;
/// The longest that all may take: a deadlock would take for ever.
const PATIENCE: Duration = Duration::from_secs(120);

#[test]
fn two_processes_take_turns_and_lose_no_act() {
    let shell = Shell::new();
    let opening: Vec<&str> = WREN.lines().take(3).collect();
    let script = shell.write("part.jsonl", &(opening.join("\n") + "\n"));
    assert!(shell.replay(&script).status.success());
    let before = shell.head().0;
    let begun = Instant::now();
    let work = || {
        let (mut noted, mut held) = (0, 0);
        while noted < EACH {
            assert!(
                begun.elapsed() < PATIENCE,
                "{noted} of {EACH} after {held} refusals"
            );
            let output = shell.run(&["note", "odometer", "60000 mi"]);
            match output.status.code() {
                Some(0) => noted += 1,
                Some(HELD) => {
                    let said = String::from_utf8_lossy(&output.stderr).into_owned();
                    assert!(said.trim_end().ends_with('.'), "{said}");
                    held += 1;
                }
                _ => assert!(output.status.success(), "{}", super::said(&output)),
            }
        }
    };
    std::thread::scope(|scope| {
        scope.spawn(work);
        work();
    });
    assert_eq!(shell.head().0, before + 2 * EACH);
}

#[test]
fn who_comes_second_to_an_open_walk_is_told_who_has_it() {
    let shell = Shell::new();
    let opening: Vec<&str> = WREN.lines().take(8).collect();
    let script = shell.write("part.jsonl", &(opening.join("\n") + "\n"));
    assert!(shell.replay(&script).status.success());
    let mut first = shell
        .command(&["walk"])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    // It has the logbook once it shows its first line.
    let mut shown = BufReader::new(first.stdout.take().unwrap());
    assert!(shown.read_line(&mut String::new()).unwrap() > 0);
    let said = shell.fails(&["note", "odometer", "60000 mi"], HELD);
    assert!(said.contains(&first.id().to_string()), "{said}");
    first.kill().unwrap();
    first.wait().unwrap();
    shell.ok(&["note", "odometer", "60000 mi"]);
}
