//! No room left: what was acknowledged is there, nothing else is, and it works again with room.

use crate::script::{open, rig, whole_walk};
use baywalk_logbook::store::StoreFault;
use baywalk_logbook::{ActFault, Logbook};
use std::io::Write;
use std::path::Path;
use std::process::Command;
use tempfile::tempdir;

/// A small storage of its own, let go at the end.
struct Small(tempfile::TempDir);

impl Small {
    fn mount() -> Option<Self> {
        let folder = tempdir().unwrap();
        let done = Command::new("mount")
            .args(["-t", "tmpfs", "-o", "size=4m", "tmpfs"])
            .arg(folder.path())
            .status();
        done.is_ok_and(|status| status.success())
            .then(|| Self(folder))
    }
}

/// Runs a test on a small storage: mounted here, or in a name space of its own where that needs no
/// right. Where neither can be, it is said past the test's own output.
fn on_small(name: &str, test: fn(&Path)) {
    if let Some(small) = Small::mount() {
        return test(small.0.path());
    }
    let inside = std::env::var(INSIDE).is_ok();
    let apart = || {
        Command::new("unshare")
            .args(["--map-root-user", "--mount"])
            .arg(std::env::current_exe().unwrap())
            .args(["--exact", name])
            .env(INSIDE, "1")
            .status()
    };
    assert!(!inside, "no small storage could be mounted");
    if !apart().is_ok_and(|status| status.success()) {
        let said = writeln!(
            std::io::stderr(),
            "NOT RUN: {name} needs the right to mount a tmpfs"
        );
        said.unwrap();
    }
}

const INSIDE: &str = "BAYWALK_TEST_SMALL_STORAGE";

impl Drop for Small {
    fn drop(&mut self) {
        let _done = Command::new("umount").arg(self.0.path()).status();
    }
}

/// Fills what room there is, but for a little.
fn fill(folder: &Path, leave: usize) {
    let path = folder.join("filler");
    let mut size = 0;
    let step = vec![7; 4096];
    let mut filler = std::fs::File::create(&path).unwrap();
    while filler.write_all(&step).is_ok() {
        size += step.len();
    }
    let left = u64::try_from(size.saturating_sub(leave)).unwrap();
    filler.set_len(left).unwrap();
}

#[test]
fn a_full_storage_is_told_and_the_store_is_as_it_was() {
    on_small(
        "full::a_full_storage_is_told_and_the_store_is_as_it_was",
        while_walking,
    );
}

fn while_walking(folder: &Path) {
    let script = whole_walk();
    let mut logbook = open(folder);
    let (first, rest) = script.calls.split_at(20);
    for (call, at) in first {
        logbook.call(call, at).unwrap();
    }
    fill(folder, 20_000);
    let mut done = 20;
    let fault = loop {
        let (call, at) = &rest[done - 20];
        match logbook.call(call, at) {
            Ok(_) => done += 1,
            Err(fault) => break fault,
        }
    };
    assert_eq!(fault, ActFault::Storage(StoreFault::StorageFull));
    let before = logbook.digest();
    assert_eq!(before.seq, done as u64);
    assert!(logbook.open_walk(rig()).is_ok());

    std::fs::remove_file(folder.join("filler")).unwrap();
    for (call, at) in &rest[done - 20..] {
        logbook.call(call, at).unwrap();
    }
    assert_eq!(logbook.digest().seq, script.calls.len() as u64);
    assert_eq!(logbook.verify().unwrap().broken, None);
    let kept = logbook.fingerprint().unwrap();
    logbook.rebuild().unwrap();
    assert_eq!(logbook.fingerprint().unwrap(), kept);
}

#[test]
fn there_is_no_store_where_there_is_no_room_for_one() {
    on_small(
        "full::there_is_no_store_where_there_is_no_room_for_one",
        at_creation,
    );
}

fn at_creation(folder: &Path) {
    fill(folder, 8_000);
    let clock = || Box::new(crate::script::TestClock::default());
    assert_eq!(
        Logbook::open(folder, clock()).err(),
        Some(StoreFault::StorageFull)
    );
    std::fs::remove_file(folder.join("filler")).unwrap();
    assert_eq!(open(folder).digest().seq, 0);
}
