//! Photos: taken in by a script, kept under their digest, and nothing else taken for one.

use super::{Shell, WREN};

/// A PNG of one grey pixel.
pub(super) const PIXEL: &[u8] = &[
    0x89, b'P', b'N', b'G', 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, b'I', b'H', b'D', b'R', 0, 0, 0,
    1, 0, 0, 0, 1, 8, 0, 0, 0, 0, 0x3a, 0x7e, 0x9b, 0x55, 0, 0, 0, 10, b'I', b'D', b'A', b'T',
    0x78, 0x9c, 0x63, 0x60, 0, 0, 0, 2, 0, 1, 0x48, 0xaf, 0xa4, 0x71, 0, 0, 0, 0, b'I', b'E', b'N',
    b'D', 0xae, 0x42, 0x60, 0x82,
];

/// The files in the folder of photos, without its folders.
fn kept(shell: &Shell) -> Vec<std::path::PathBuf> {
    let photos = std::fs::read_dir(shell.store().join("photos"));
    let all = photos
        .into_iter()
        .flatten()
        .map(|entry| entry.unwrap().path());
    all.filter(|path| path.is_file()).collect()
}

/// The sample walk up to an open bay.
fn walking() -> Shell {
    let shell = Shell::new();
    std::fs::write(shell.path("bay.png"), PIXEL).unwrap();
    let lines: Vec<&str> = WREN.lines().take(24).collect();
    let script = shell.write("walk.jsonl", &(lines.join("\n") + "\n"));
    assert!(shell.replay(&script).status.success());
    shell
}

/// Up to the open bay of the sample walk, then a photo of a bay.
fn script(shell: &Shell, file: &str) -> std::path::PathBuf {
    let mut lines: Vec<&str> = WREN.lines().take(24).collect();
    let photo = format!(
        "{{\"at\":\"2027-03-20T12:00:00-07:00\",\"act\":\"photo\",\"about\":\"F\",\"file\":\"{file}\",\"caption\":\"as found\"}}"
    );
    lines.push(&photo);
    shell.write("photo.jsonl", &(lines.join("\n") + "\n"))
}

#[test]
fn a_photo_is_kept_under_its_digest_and_stands_in_the_report() {
    let shell = Shell::new();
    std::fs::write(shell.path("bay.png"), PIXEL).unwrap();
    let script = script(&shell, "bay.png");
    let output = shell.replay(&script);
    assert!(output.status.success(), "{}", super::said(&output));
    let kept = kept(&shell);
    assert_eq!(kept.len(), 1);
    assert!(std::fs::read(&kept[0]).unwrap().starts_with(b"\xff\xd8"));
    let report = shell.path("report.html");
    shell.ok(&["report", report.to_str().unwrap()]);
    let digest = kept[0].file_stem().unwrap().to_str().unwrap().to_owned();
    assert!(std::fs::read_to_string(report).unwrap().contains(&digest));
}

#[test]
fn what_is_no_photo_or_not_there_is_refused() {
    let shell = Shell::new();
    std::fs::write(shell.path("letter.jpg"), "dear aunt").unwrap();
    for (file, why) in [
        ("letter.jpg", "neither JPEG nor PNG"),
        ("missing.jpg", "can't be read"),
    ] {
        let script = script(&shell, file);
        let said = shell.fails(&["walk", "--script", script.to_str().unwrap()], 2);
        assert!(said.contains(why), "{said}");
    }
    assert_eq!(kept(&shell).len(), 0);
}

#[test]
fn a_photo_is_added_in_the_open_walk_by_the_code_of_what_it_shows() {
    let shell = walking();
    let file = shell.path("bay.png");
    let file = file.to_str().unwrap();
    shell.ok(&["photo", "add", "F", file, "--caption", "as found"]);
    shell.ok(&["photo", "add", "F8", file]);
    assert_eq!(kept(&shell).len(), 1);
    assert!(shell.ok(&["photo", "check"]).contains("All 2 photos"));
    shell.fails(&["photo", "add", "Z9", file], 4);
    shell.fails(&["photo", "add", "F", "missing.jpg"], 2);
    let idle = Shell::new();
    idle.ok(&["rig", "start", "sample-motorhome", "Heron"]);
    idle.fails(&["photo", "add", "Heron", file], 3);
}

#[test]
fn what_is_missing_or_named_by_no_entry_is_told_and_removed_only_when_asked() {
    let shell = walking();
    let file = shell.path("bay.png");
    shell.ok(&["photo", "add", "F", file.to_str().unwrap()]);
    let photos = shell.store().join("photos");
    let stray = photos.join(format!("{}.jpg", "ab".repeat(32)));
    let half = photos.join("x.jpg.coming");
    let other = photos.join("notes.txt");
    for path in [&stray, &half, &other] {
        std::fs::write(path, "left").unwrap();
    }
    for args in [&["photo", "check"][..], &["verify"]] {
        let told = shell.ok(args);
        assert!(told.contains("2 files are named by no entry"), "{told}");
        assert!(told.contains("not a file of ours"), "{told}");
    }
    assert!(stray.is_file() && half.is_file());
    assert!(shell.ok(&["photo", "clear"]).contains("2 files"));
    assert!(!stray.exists() && !half.exists() && other.exists());
    shell.ok(&["photo", "check"]);

    let kept = kept(&shell);
    let kept = kept
        .iter()
        .find(|path| path.extension().unwrap() == "jpg")
        .unwrap();
    std::fs::write(kept, "changed").unwrap();
    assert!(
        shell
            .fails(&["photo", "check"], 8)
            .contains("not there as it was")
    );
    assert!(shell.fails(&["verify"], 8).contains("not there as it was"));
    std::fs::remove_file(kept).unwrap();
    shell.fails(&["verify"], 8);
    let told = shell.run(&["photo", "check"]);
    assert!(super::said(&told).contains("is gone"), "{told:?}");
}

#[test]
fn an_expected_photo_is_entered_when_the_walk_goes_on_and_an_empty_one_dropped() {
    let shell = walking();
    let camera = shell.path("camera.jpg");
    let path = camera.to_str().unwrap();
    shell.ok(&["photo", "expect", "F8", path]);
    std::fs::write(&camera, "").unwrap();
    assert!(shell.typed(&["walk"], "").status.success());
    assert!(
        shell
            .ok(&["photo", "arrived"])
            .contains("No photo is expected")
    );

    shell.ok(&["photo", "expect", "F8", path]);
    std::fs::write(&camera, &PIXEL[..40]).unwrap();
    assert!(shell.ok(&["photo", "arrived"]).contains("still expected"));
    std::fs::write(&camera, PIXEL).unwrap();
    let told = shell.typed(&["walk"], "");
    assert!(
        super::said(&told).contains("Entered: the photo of F8"),
        "{told:?}"
    );
    assert!(
        shell
            .ok(&["photo", "arrived"])
            .contains("No photo is expected")
    );
    assert!(shell.ok(&["photo", "check"]).contains("The one photo"));
    assert!(camera.exists());

    shell.ok(&["photo", "expect", "F8", path]);
    shell.ok(&["photo", "forget", path]);
    assert!(
        shell
            .ok(&["photo", "arrived"])
            .contains("No photo is expected")
    );
}

#[test]
fn thumbnails_are_made_again_and_originals_kept_by_choice() {
    let shell = walking();
    let file = shell.path("bay.png");
    let file = file.to_str().unwrap();
    assert!(shell.ok(&["photo", "originals"]).contains("is not kept"));
    shell.ok(&["photo", "originals", "yes"]);
    shell.ok(&["photo", "add", "F", file]);
    let photos = shell.store().join("photos");
    let count = |folder: &str| std::fs::read_dir(photos.join(folder)).unwrap().count();
    assert_eq!((count("originals"), count("small")), (1, 1));
    std::fs::remove_dir_all(photos.join("small")).unwrap();
    assert!(shell.ok(&["photo", "thumbnails"]).contains("One thumbnail"));
    assert_eq!(count("small"), 1);
    let original = std::fs::read_dir(photos.join("originals"))
        .unwrap()
        .next()
        .unwrap();
    std::fs::write(original.unwrap().path(), "changed").unwrap();
    shell.fails(&["photo", "check"], 8);
}

#[test]
fn a_pin_stands_on_the_photo_of_its_bay_and_in_the_report() {
    let shell = walking();
    let early = shell.fails(&["photo", "pin", "F8", "420", "310"], 3);
    assert!(early.contains("no photo of"), "{early}");
    let file = shell.path("bay.png");
    shell.ok(&["photo", "add", "F", file.to_str().unwrap()]);
    shell.ok(&["photo", "pin", "F8", "420", "310"]);
    let beside = shell.fails(&["photo", "pin", "F8", "1001", "0"], 2);
    assert!(
        beside.contains("1001") && beside.contains("0 to 1000"),
        "{beside}"
    );
    shell.fails(&["photo", "pin", "F8", "420"], 2);
    shell.fails(&["photo", "pin", "E1", "1", "1"], 3);
    let report = shell.path("report.html");
    let written = || {
        shell.ok(&["report", report.to_str().unwrap()]);
        std::fs::read_to_string(&report).unwrap()
    };
    assert!(written().contains("Pins: F8"));
    shell.ok(&["photo", "show", "F"]);
    assert!(!written().contains("Pins: F8"), "shown anew, pinned anew");
    shell.ok(&["photo", "pin", "F8", "0", "1000"]);
    shell.ok(&["photo", "pin", "F8"]);
    assert!(!written().contains("Pins: F8"));
}
