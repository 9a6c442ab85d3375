//! The cell of a screw's drives: `square 3/16 in; slotted width 0.05 in length 1/4 in`.

use super::FaultKind;
use baywalk_domain::coded::Coded;
use baywalk_domain::rig::{Drive, DriveKind};
use baywalk_domain::units::StatedLength;

/// Reads the drives of a cell, parted by semicolons.
///
/// Each is a kind, then as far as known: the size across flats, `width` and `length` of a slot.
pub(super) fn read(text: &str) -> Result<Vec<Drive>, FaultKind> {
    text.split(';').map(drive).collect()
}

/// Writes drives as [`read`] takes them.
pub(super) fn write(drives: &[Drive]) -> String {
    let drives: Vec<String> = drives.iter().map(written).collect();
    drives.join("; ")
}

fn drive(text: &str) -> Result<Drive, FaultKind> {
    let text = text.trim();
    let (kind, sizes) = text.split_once(char::is_whitespace).unwrap_or((text, ""));
    let (sizes, slot_length) = split(sizes, "length");
    let (across, slot_width) = split(sizes, "width");
    Ok(Drive {
        kind: DriveKind::from_code(kind)?,
        across: length(Some(across).filter(|text| !text.trim().is_empty()))?,
        slot_width: length(slot_width)?,
        slot_length: length(slot_length)?,
    })
}

/// Splits what stands behind a word off.
fn split<'a>(text: &'a str, word: &str) -> (&'a str, Option<&'a str>) {
    match text.split_once(word) {
        Some((before, behind)) => (before, Some(behind)),
        None => (text, None),
    }
}

fn length(text: Option<&str>) -> Result<Option<StatedLength>, FaultKind> {
    Ok(text.map(str::trim).map(StatedLength::parse).transpose()?)
}

fn written(drive: &Drive) -> String {
    let mut text = drive.kind.code().to_owned();
    let sizes = [
        ("", &drive.across),
        (" width", &drive.slot_width),
        (" length", &drive.slot_length),
    ];
    for (word, size) in sizes {
        if let Some(size) = size {
            text = format!("{text}{word} {}", size.text());
        }
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_and_writes_what_a_person_types() {
        for text in [
            "slotted",
            "hex 7/16 in",
            "square 3/16 in; slotted width 0.05 in length 1/4 in",
            "cross; slotted length 6,5 mm",
        ] {
            let drives = read(text).unwrap();
            assert_eq!(write(&drives), text);
        }
    }

    #[test]
    fn refuses_with_what_is_wrong() {
        assert!(matches!(read("torx"), Err(FaultKind::Unknown(_))));
        assert!(matches!(read("hex;"), Err(FaultKind::Unknown(_))));
        assert!(matches!(read("hex 7/16"), Err(FaultKind::Length(_))));
        assert!(matches!(read("slotted width"), Err(FaultKind::Length(_))));
    }
}
