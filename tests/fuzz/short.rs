//! A short run of hostile inputs; the long one is the example `fuzz`.

use baywalk_tests::hostile::{photos, reads_rig, rigs, takes_photo};

/// How many inputs are tried of each kind.
const INPUTS: u64 = 4_000;

/// Tries inputs; fails where all are taken or all refused, since then nothing was tried.
fn try_all(hostile: impl Fn(u64) -> Vec<u8>, takes: impl Fn(Vec<u8>) -> bool) {
    let taken: u64 = (0..INPUTS).map(|n| u64::from(takes(hostile(n)))).sum();
    assert!(
        (INPUTS / 50..INPUTS - INPUTS / 50).contains(&taken),
        "{taken} of {INPUTS} taken"
    );
}

#[test]
fn hostile_photos_stop_nothing() {
    let kind = photos();
    try_all(|n| kind.hostile(n), takes_photo);
}

#[test]
fn hostile_rig_files_stop_nothing_and_what_is_taken_is_written_as_it_reads() {
    let kind = rigs();
    try_all(|n| kind.hostile(n), |bytes| reads_rig(&bytes));
}
