//! One writer at a time.

use crate::script::{TestClock, open, rig_noted};
use baywalk_logbook::Logbook;
use baywalk_logbook::store::StoreFault;
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};
use tempfile::tempdir;

const FOLDER: &str = "BAYWALK_TEST_HELD_FOLDER";

#[test]
fn a_second_one_waits_a_little_and_is_told_who_holds_it() {
    let folder = tempdir().unwrap();
    let _held = open(folder.path());
    let began = Instant::now();
    let fault = Logbook::open(folder.path(), Box::new(TestClock::default())).unwrap_err();
    assert!((2..6).contains(&began.elapsed().as_secs()));
    let StoreFault::Held { pid, since } = fault else {
        panic!("{fault:?}")
    };
    assert_eq!(pid, Some(std::process::id()));
    assert_eq!(since.unwrap().to_rfc3339(), "2027-03-20T09:12:30-07:00");
}

#[test]
fn a_second_one_goes_on_when_the_first_one_ends_in_time() {
    let folder = tempdir().unwrap();
    let held = open(folder.path());
    std::thread::scope(|scope| {
        let second = scope.spawn(|| open(folder.path()).digest().seq);
        std::thread::sleep(Duration::from_millis(400));
        drop(held);
        assert_eq!(second.join().unwrap(), 0);
    });
}

/// Run by the test below in a process of its own; does nothing otherwise.
#[test]
fn holder() {
    let Ok(folder) = std::env::var(FOLDER) else {
        return;
    };
    let mut logbook = open(folder.as_ref());
    rig_noted().play(&mut logbook);
    std::fs::write(format!("{folder}/ready"), b"").unwrap();
    std::thread::sleep(Duration::from_secs(60));
}

#[test]
fn a_holder_that_is_killed_holds_nothing_and_loses_nothing() {
    let folder = tempdir().unwrap();
    let mut holder = Command::new(std::env::current_exe().unwrap())
        .args(["--exact", "held::holder"])
        .env(FOLDER, folder.path())
        .stdout(Stdio::null())
        .spawn()
        .unwrap();
    while !folder.path().join("ready").exists() {
        std::thread::sleep(Duration::from_millis(20));
    }
    let fault = Logbook::open(folder.path(), Box::new(TestClock::default())).unwrap_err();
    assert!(matches!(fault, StoreFault::Held { pid, .. } if pid == Some(holder.id())));
    holder.kill().unwrap();
    holder.wait().unwrap();
    assert_eq!(open(folder.path()).digest().seq, 2);
}
