//! Photos: taken in by a script, kept under their digest, and nothing else taken for one.

use super::{Shell, WREN};

/// A PNG of one pixel.
const PIXEL: &[u8] = &[
    0x89, b'P', b'N', b'G', 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, b'I', b'H', b'D', b'R', 0, 0, 0,
    1, 0, 0, 0, 1, 8, 0, 0, 0, 0, 0x3a, 0x7e, 0x9b, 0x55, 0, 0, 0, 10, b'I', b'D', b'A', b'T',
    0x78, 0x9c, 0x63, 0x60, 0, 0, 0, 2, 0, 1, 0x48, 0xaf, 0xa4, 0x71, 0, 0, 0, 0, b'I', b'E', b'N',
    b'D',
];

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
    let kept: Vec<_> = std::fs::read_dir(shell.store().join("photos"))
        .unwrap()
        .map(Result::unwrap)
        .collect();
    assert_eq!(kept.len(), 1);
    assert_eq!(std::fs::read(kept[0].path()).unwrap(), PIXEL);
    let report = shell.path("report.html");
    shell.ok(&["report", report.to_str().unwrap()]);
    let digest = kept[0]
        .path()
        .file_stem()
        .unwrap()
        .to_str()
        .unwrap()
        .to_owned();
    assert!(std::fs::read_to_string(report).unwrap().contains(&digest));
}

#[test]
fn what_is_no_photo_or_not_there_is_refused() {
    let shell = Shell::new();
    std::fs::write(shell.path("letter.jpg"), "dear aunt").unwrap();
    for file in ["letter.jpg", "missing.jpg"] {
        let script = script(&shell, file);
        let said = shell.fails(&["walk", "--script", script.to_str().unwrap()], 2);
        assert!(said.contains("file"), "{said}");
    }
    let photos = std::fs::read_dir(shell.store().join("photos"));
    assert_eq!(photos.map_or(0, Iterator::count), 0);
}
