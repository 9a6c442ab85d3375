//! The readers that files of others reach, and hostile inputs for each.

use crate::mutate::Kind;
use baywalk_domain::ids::ActId;
use baywalk_logbook::photo::make;
use baywalk_logbook::rigfile::{self, NamedText};
use uuid::Uuid;

/// Sound photos, the last of which is of a form that is refused; `core/logbook/tests/photos/README.md`
/// says what each is.
pub const PHOTOS: [&[u8]; 11] = [
    include_bytes!("../core/logbook/tests/photos/located.jpg"),
    include_bytes!("../core/logbook/tests/photos/steps.jpg"),
    include_bytes!("../core/logbook/tests/photos/grey.jpg"),
    include_bytes!("../core/logbook/tests/photos/halved.jpg"),
    include_bytes!("../core/logbook/tests/photos/layers.jpg"),
    include_bytes!("../core/logbook/tests/photos/clear.png"),
    include_bytes!("../core/logbook/tests/photos/palette.png"),
    include_bytes!("../core/logbook/tests/photos/deep.png"),
    include_bytes!("../core/logbook/tests/photos/laced.png"),
    include_bytes!("../core/logbook/tests/photos/moving.png"),
    include_bytes!("../core/logbook/tests/photos/inks.jpg"),
];

/// How many of [`PHOTOS`] are JPEG and read; PNG stand behind them.
pub const JPEGS: usize = 5;

/// What parts the two files of a rig in one hostile input.
const PART: &[u8] = b"\0points\0";

/// Hostile photos.
#[must_use]
pub fn photos() -> Kind {
    Kind {
        sound: PHOTOS.iter().map(|photo| photo.to_vec()).collect(),
        telling: &[
            b"\xFF\xD8",
            b"\xFF\xD9",
            b"\xFF\xC0",
            b"\xFF\xC2",
            b"\xFF\xC4",
            b"\xFF\xDA",
            b"\xFF\xDB",
            b"\xFF\xDD",
            b"\xFF\xE1",
            b"\xFF\xE2",
            b"\xFF\xFF",
            b"\0\0\0\0",
            b"\x7F\xFF\xFF\xFF",
            b"IDAT",
            b"eXIf",
            b"iCCP",
            b"acTL",
            b"MM\0*\0\0\0\x08",
        ],
    }
}

/// Takes a photo in as the logbook does; tells whether it is taken.
#[must_use]
pub fn takes_photo(bytes: Vec<u8>) -> bool {
    make(bytes, true).is_ok()
}

/// Rigs of more bytes are left out: a million of them would take days.
const MOST_OF_RIG: usize = 16_000;

/// Hostile rig files: both files of a rig, made from the smaller layouts that come with the tool.
#[must_use]
pub fn rigs() -> Kind {
    let mut sound: Vec<Vec<u8>> = Vec::new();
    let ids = ActId::new(Uuid::from_u128(1));
    for layout in rigfile::layouts() {
        let files = rigfile::write(&layout.book(ids).unwrap());
        let (toml, csv) = files.named();
        sound.push([toml.text.as_bytes(), PART, csv.text.as_bytes()].concat());
    }
    sound.retain(|files| files.len() < MOST_OF_RIG);
    Kind {
        sound,
        telling: &[
            b"[[",
            b"]]",
            b"=",
            b"\"",
            b"\"\"\"",
            b"\n",
            b",",
            b"{",
            b"}",
            b"[",
            b"-",
            b"9999999999",
            b"1e999",
            b"\xEF\xBB\xBF",
            b"\xFF",
            b"format = 3\n",
            b"lbf.in",
            b"N.m",
            b"0",
            b"a.b.c",
        ],
    }
}

/// Reads rig files, and what they hold back from what is written of it; tells whether they are
/// taken.
///
/// # Panics
/// Where what is written of a rig does not read as the same rig.
#[must_use]
pub fn reads_rig(bytes: &[u8]) -> bool {
    let at = bytes.windows(PART.len()).position(|part| part == PART);
    let (toml, csv) = at.map_or((bytes, &[][..]), |at| {
        (&bytes[..at], &bytes[at + PART.len()..])
    });
    let ids = ActId::new(Uuid::from_u128(1));
    let texts = (
        NamedText::from_bytes("rig.toml", toml),
        NamedText::from_bytes("points.csv", csv),
    );
    let (Ok(toml), Ok(csv)) = texts else {
        return false;
    };
    let Ok(book) = rigfile::read(&toml, &csv, ids) else {
        return false;
    };
    let files = rigfile::write(&book);
    let (toml, csv) = files.named();
    assert_eq!(rigfile::read(&toml, &csv, ids).as_ref(), Ok(&book));
    true
}
