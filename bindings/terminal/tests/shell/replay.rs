//! Replaying: the same script gives the same bytes, whole or piece by piece.

use super::{Shell, WREN};

#[test]
fn two_replays_give_the_same_ledger_byte_for_byte() {
    let (one, two) = (Shell::new(), Shell::new());
    for shell in [&one, &two] {
        let script = shell.write("wren.jsonl", WREN);
        assert!(shell.replay(&script).status.success());
    }
    assert_eq!(one.head(), two.head());
    let lines = u64::try_from(
        WREN.lines()
            .filter(|line| !line.contains("\"refused\":true"))
            .count(),
    )
    .unwrap();
    assert_eq!(
        one.head().0,
        lines - 1,
        "every line but the head and the refused ones is an entry"
    );
}

#[test]
fn a_replay_on_what_is_there_records_nothing_new() {
    let shell = Shell::new();
    let script = shell.write("wren.jsonl", WREN);
    assert!(shell.replay(&script).status.success());
    let before = shell.head();
    assert!(shell.replay(&script).status.success());
    assert_eq!(shell.head(), before);
}

#[test]
fn the_main_job_writes_a_report_and_the_next_due_date() {
    let shell = Shell::new();
    let folder = shell.path("try");
    let printed = shell.ok(&["try", "--folder", folder.to_str().unwrap()]);
    assert!(printed.contains("Next walk due 20 March 2028"), "{printed}");
    assert!(printed.contains("Stays out of service"));
    assert!(printed.contains("is refused, as it should be"));
    let report = std::fs::read_to_string(folder.join("report.html")).unwrap();
    assert!(report.contains("N in, shore"));
    assert!(
        !report.contains("&#60;report-"),
        "a text is missing in the report"
    );
}
