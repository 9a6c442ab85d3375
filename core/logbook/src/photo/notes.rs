//! What a camera wrote beside the pixels: which way is up, and when; the rest is not looked at.
//!
//! Tags as in Exif 2.32 (CIPA DC-008): Orientation 0x0112, Exif IFD 0x8769, DateTimeOriginal
//! 0x9003, OffsetTimeOriginal 0x9011. The block is TIFF 6.0, big-endian.

use chrono::NaiveDateTime;
use exif::{Exif, In, Reader, Tag, Value};
use image::metadata::Orientation;

/// What is taken from a camera's notes.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Notes {
    /// What has to be done to the pixels so that they stand upright.
    pub(super) upright: Orientation,
    /// When the photo was taken.
    pub(super) taken: Option<Taken>,
}

/// When a photo was taken, as the camera's clock had it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Taken {
    /// `YYYY:MM:DD HH:MM:SS`.
    at: String,
    /// `+HH:MM`, where the camera told it.
    offset: Option<String>,
}

/// Reads an Exif block. What can't be read is as if it were not there.
pub(super) fn read(block: Vec<u8>) -> Notes {
    let mut reader = Reader::new();
    let read = reader.continue_on_error(true).read_raw(block);
    let exif = read.or_else(|error| error.distill_partial_result(|_| {}));
    let exif = exif.ok();
    let upright = exif.as_ref().and_then(|exif| {
        let field = exif.get_field(Tag::Orientation, In::PRIMARY)?;
        Orientation::from_exif(u8::try_from(field.value.get_uint(0)?).ok()?)
    });
    Notes {
        upright: upright.unwrap_or(Orientation::NoTransforms),
        taken: exif.as_ref().and_then(taken),
    }
}

fn taken(exif: &Exif) -> Option<Taken> {
    let at = text(exif, Tag::DateTimeOriginal).filter(|at| {
        at.len() == 19 && NaiveDateTime::parse_from_str(at, "%Y:%m:%d %H:%M:%S").is_ok()
    })?;
    let offset = text(exif, Tag::OffsetTimeOriginal).filter(|offset| is_offset(offset));
    Some(Taken { at, offset })
}

/// The first text of a field; only plain letters, figures and signs are taken.
fn text(exif: &Exif, tag: Tag) -> Option<String> {
    let Value::Ascii(texts) = &exif.get_field(tag, In::PRIMARY)?.value else {
        return None;
    };
    let text = str::from_utf8(texts.first()?).ok()?.trim();
    let plain = text.bytes().all(|byte| (b' '..0x7F).contains(&byte));
    plain.then(|| text.to_owned())
}

fn is_offset(text: &str) -> bool {
    matches!(text.as_bytes(), [b'+' | b'-', a, b, b':', c, d] if [a, b, c, d].iter().all(|byte| byte.is_ascii_digit()))
}

/// Writes an Exif block with the time, and with the orientation where the pixels are not turned;
/// `None` where there is nothing to write.
pub(super) fn write(taken: Option<&Taken>, upright: Orientation) -> Option<Vec<u8>> {
    let turned = upright == Orientation::NoTransforms;
    if turned && taken.is_none() {
        return None;
    }
    let mut block = b"MM\0*\0\0\0\x08".to_vec();
    block.extend(
        u16::from(!turned)
            .saturating_add(u16::from(taken.is_some()))
            .to_be_bytes(),
    );
    if !turned {
        field(
            &mut block,
            0x0112,
            SHORT,
            1,
            u32::from(upright.to_exif()) << 16,
        );
    }
    if let Some(taken) = taken {
        let next = u32::try_from(block.len()).ok()? + FIELD + 4;
        field(&mut block, 0x8769, LONG, 1, next);
        block.extend([0; 4]);
        let texts: Vec<(u16, &String)> =
            [(0x9003, Some(&taken.at)), (0x9011, taken.offset.as_ref())]
                .into_iter()
                .filter_map(|(tag, text)| Some((tag, text?)))
                .collect();
        times(&mut block, next, &texts)?;
    } else {
        block.extend([0; 4]);
    }
    Some(block)
}

const ASCII: u16 = 2;
const SHORT: u16 = 3;
const LONG: u16 = 4;

/// Bytes of a field.
const FIELD: u32 = 12;

fn field(block: &mut Vec<u8>, tag: u16, kind: u16, count: u32, value: u32) {
    block.extend(tag.to_be_bytes());
    block.extend(kind.to_be_bytes());
    block.extend(count.to_be_bytes());
    block.extend(value.to_be_bytes());
}

/// Writes the directory of the texts, and the texts behind it.
fn times(block: &mut Vec<u8>, start: u32, texts: &[(u16, &String)]) -> Option<()> {
    let count = u16::try_from(texts.len()).ok()?;
    block.extend(count.to_be_bytes());
    let mut at = start + 2 + u32::from(count) * FIELD + 4;
    for (tag, text) in texts {
        let length = u32::try_from(text.len()).ok()? + 1;
        field(block, *tag, ASCII, length, at);
        at += length;
    }
    block.extend([0; 4]);
    for (_, text) in texts {
        block.extend(text.as_bytes());
        block.push(0);
    }
    Some(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_written_is_read_again() {
        for code in 1..=8 {
            let upright = Orientation::from_exif(code).unwrap();
            for offset in [None, Some("-07:00".to_owned())] {
                let at = "2027:03:20 09:31:25".to_owned();
                let taken = Some(Taken { at, offset });
                let block = write(taken.as_ref(), upright).unwrap();
                assert_eq!(read(block), Notes { upright, taken });
            }
        }
        assert_eq!(write(None, Orientation::NoTransforms), None);
    }

    #[test]
    fn a_time_that_is_none_is_not_taken() {
        for at in [
            "2027:02:30 09:31:25",
            "    :  :     :  :  ",
            "10 N 20 W at the lake",
        ] {
            let taken = Taken {
                at: at.to_owned(),
                offset: None,
            };
            let block = write(Some(&taken), Orientation::NoTransforms).unwrap();
            assert_eq!(read(block).taken, None, "{at}");
        }
        assert!(is_offset("+05:30") && !is_offset("+5:30") && !is_offset("Z"));
    }
}
