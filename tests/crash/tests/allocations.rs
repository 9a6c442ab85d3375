//! Each allocation of the database engine failed in turn, once and for good.

use baywalk_crash::allocations::{asked, fail, stand_in};
use baywalk_crash::faults::{Tally, caught, under_fault};
use baywalk_crash::work::Work;

#[test]
fn a_failing_allocation_loses_nothing_and_is_told_in_a_sentence() {
    stand_in();
    let work = Work::opening(8);
    let root = tempfile::tempdir().unwrap();
    let done = work.record(root.path());
    fail(0, false);
    let root = tempfile::tempdir().unwrap();
    let mut places = 0;
    under_fault(&work, &done, root.path(), || places = asked()).unwrap();
    let mut tally = Tally {
        places,
        ..Tally::default()
    };
    // Every place in the long run; else every one of the beginning, and each 41st one after.
    let dense = if std::env::var_os("BAYWALK_LONG").is_some() {
        places
    } else {
        300
    };
    for at in (1..=places).filter(|at| *at <= dense || at % 41 == 0) {
        for for_good in [false, true] {
            let root = tempfile::tempdir_in("/dev/shm").unwrap();
            fail(at, for_good);
            let run = caught(|| under_fault(&work, &done, root.path(), || fail(0, false)));
            fail(0, false);
            tally.add(run, &format!("allocation {at}, for good: {for_good}"));
        }
    }
    assert!(tally.is_sound(), "{tally:?}");
    assert!(tally.errors > tally.runs / 2, "{tally:?}");
}
