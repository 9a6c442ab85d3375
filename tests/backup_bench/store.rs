//! A store of ten years: 100,000 entries, 1,500 photos of 300 kB.

use baywalk_domain::rig::BookChange;
use baywalk_domain::walk::Act;
use baywalk_logbook::ledger::{Digest, Head};
use baywalk_logbook::{Logbook, SystemClock, rigfile};
use std::fmt::Write as _;
use std::path::Path;

const PHOTOS: u64 = 1_500;
const ENTRIES: u64 = 100_000;
const BYTES: usize = 300_000;

/// Makes the store; its entries come in as lines, through a folder of their own.
pub(crate) fn make(folder: &Path, first: &Path) {
    let mut logbook = Logbook::open(first, Box::new(SystemClock::new())).unwrap();
    let layout = rigfile::layouts().first().unwrap();
    let id = "0190f0c4-0000-7000-8000-000000000001".parse().unwrap();
    let book = layout.book(id).map_err(|_| "unsound").unwrap();
    let rig = book.rig.id;
    logbook
        .act(rig, Act::Book(BookChange::Whole(Box::new(book))))
        .unwrap();
    let mut lines = Vec::new();
    let mut head = logbook.export(&mut lines).unwrap();
    let mut text = String::from_utf8(lines).unwrap();
    let end = text.trim_end().rfind('\n').unwrap() + 1;
    text.truncate(end);
    let mut store = Logbook::open(folder, Box::new(SystemClock::new())).unwrap();
    for n in 0..PHOTOS {
        let digest = photo(&folder.join("photos"), n);
        let act = format!(r#"{{"photo":{{"about":"rig","caption":"","digest":"{digest}"}}}}"#);
        head = entry(&mut text, head, &rig.to_string(), ("photo", &act));
    }
    for n in PHOTOS..ENTRIES {
        let act = format!(r#"{{"odometer":{{"unit":"mi","value":"{}"}}}}"#, 40_000 + n);
        head = entry(&mut text, head, &rig.to_string(), ("odometer", &act));
    }
    writeln!(
        text,
        r#"{{"end":{{"digest":"{}","seq":{}}}}}"#,
        head.digest, head.seq
    )
    .unwrap();
    store.import(text.as_bytes()).unwrap();
}

/// Adds the line of an entry; gives the new last entry.
fn entry(text: &mut String, head: Head, rig: &str, (kind, act): (&str, &str)) -> Head {
    let seq = head.seq + 1;
    let body = format!(
        concat!(
            r#"{{"at":"2027-03-20T09:31:07-07:00","body":{{"act":{act},"shown":{{}}}},"#,
            r#""boot":{{"id":"3f0c","seconds":607}},"flags":{{}},"#,
            r#""id":"00000000-0000-0000-0000-{seq:012x}","kind":"{kind}","rig":"{rig}","#,
            r#""seq":{seq},"version":1,"walk":null}}"#,
        ),
        act = act,
        seq = seq,
        kind = kind,
        rig = rig,
    );
    let head = head.then(body.as_bytes());
    writeln!(text, r#"{{"digest":"{}","entry":{body}}}"#, head.digest).unwrap();
    head
}

/// Writes a file with the name of its digest, as a photo has it; its bytes do not compress.
fn photo(folder: &Path, n: u64) -> Digest {
    let mut state = n.wrapping_mul(0x9e37_79b9_7f4a_7c15) | 1;
    let mut bytes = vec![0xff, 0xd8, 0xff, 0xe0];
    while bytes.len() < BYTES {
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        bytes.extend_from_slice(&state.to_le_bytes());
    }
    let digest = Digest::of(&bytes);
    std::fs::write(folder.join(format!("{digest}.jpg")), bytes).unwrap();
    digest
}
