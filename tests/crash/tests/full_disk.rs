//! A disk that is really full: a small file system in memory is filled while acts and photos are
//! recorded. What was acknowledged is there, each refusal is a whole sentence, and the logbook works
//! again when room is made. Mounting needs the rights of root; without them it fails, and says so.

#![expect(
    clippy::unwrap_used,
    reason = "a test that can't go on stops with the reason"
)]

use baywalk_crash::words::is_sentence;
use baywalk_crash::work::{Camera, STORE, Work, open, stands};
use std::path::Path;
use std::process::Command;

/// A file system of its own on a folder, taken away at the end.
struct Small<'a>(&'a Path);

impl<'a> Small<'a> {
    fn on(folder: &'a Path, kilobytes: u32) -> Self {
        let size = format!("size={kilobytes}k");
        let mounted = Command::new("mount")
            .args(["-t", "tmpfs", "-o", &size, "tmpfs"])
            .arg(folder)
            .output()
            .unwrap();
        assert!(
            mounted.status.success(),
            "a small file system can't be mounted: {}",
            String::from_utf8_lossy(&mounted.stderr)
        );
        Self(folder)
    }
}

impl Drop for Small<'_> {
    fn drop(&mut self) {
        let _gone = Command::new("umount").arg("-l").arg(self.0).status();
    }
}

/// Fills all room but so many bytes with a file.
fn fill(folder: &Path, spare: usize) {
    let ballast = folder.join("ballast");
    let _gone = std::fs::remove_file(&ballast);
    let mut bytes = vec![0_u8; 0];
    let mut step = 1 << 20;
    while step > 0 {
        bytes.resize(bytes.len() + step, 7);
        if std::fs::write(&ballast, &bytes).is_err() {
            bytes.truncate(bytes.len() - step);
            step /= 2;
        }
    }
    bytes.truncate(bytes.len().saturating_sub(spare));
    let _written = std::fs::write(&ballast, &bytes);
}

#[test]
fn a_full_disk_keeps_what_was_acknowledged_and_works_again_with_room() {
    let folder = tempfile::tempdir().unwrap();
    let disk = Small::on(folder.path(), 6_000);
    let work = Work::walks("sample-trailer", 1, 6);
    let elsewhere = tempfile::tempdir().unwrap();
    let done = work.record(elsewhere.path());
    let camera = Camera::new();
    let store = folder.path().join(STORE);
    let mut logbook = open(&store).unwrap();
    let (mut told, mut photos_told) = (0, 0);
    for (number, (call, at, photo)) in work.acts.iter().enumerate() {
        // Room runs out again and again, each time at another place of the act.
        if number % 12 == 5 {
            fill(folder.path(), (number * 700) % 40_000);
        }
        let mut tries = 0;
        if let Some(bytes) = photo {
            while let Err(fault) = camera.hand_over(&mut logbook, bytes) {
                is_sentence(&fault).unwrap();
                photos_told += 1;
                make_room(folder.path(), &mut tries);
            }
        }
        while let Err(fault) = logbook.call(call, at) {
            let baywalk_logbook::ActFault::Storage(fault) = fault else {
                panic!("{fault}");
            };
            is_sentence(&fault).unwrap();
            told += 1;
            if number % 24 == 5 {
                // Killed for want of room, and begun anew: what was acknowledged is there.
                drop(logbook);
                make_room(folder.path(), &mut tries);
                logbook = open(&store).unwrap();
                assert_eq!(Some(&stands(&logbook)), done.stands.get(number));
            } else {
                make_room(folder.path(), &mut tries);
            }
        }
        assert_eq!(Some(&stands(&logbook)), done.stands.get(number + 1));
    }
    assert!(told >= 3, "the disk was full {told} times: the run is void");
    assert_eq!(logbook.check_photos().unwrap().missing, []);
    assert!(logbook.verify().unwrap().broken.is_none());
    assert!(photos_told + told >= 3);
    drop(logbook);
    drop(disk);
}

fn make_room(folder: &Path, tries: &mut u32) {
    *tries += 1;
    assert!(*tries < 4, "it does not work again with room");
    let _gone = std::fs::remove_file(folder.join("ballast"));
}
