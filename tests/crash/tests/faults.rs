//! Each call to the system failed in turn.

use baywalk_crash::faults::every_call;
use baywalk_crash::work::Work;

#[test]
fn a_failing_call_loses_nothing_and_is_told_in_a_sentence() {
    let work = Work::opening(8);
    let root = tempfile::tempdir().unwrap();
    let done = work.record(root.path());
    let tally = every_call(&work, &done);
    assert!(tally.is_sound(), "{tally:?}");
    assert!(tally.errors > tally.runs / 2, "{tally:?}");
}
