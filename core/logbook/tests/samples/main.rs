//! A frozen sample of every kind and version of entry: each is read for ever as what it was.
#![expect(
    clippy::unwrap_used,
    unused_imports,
    dead_code,
    reason = "a test that can't go on stops with the reason; the small rig is shared"
)]

mod expected;
#[path = "../../../domain/tests/rehearsal/mod.rs"]
mod rehearsal;
mod timing;

use baywalk_domain::walk::Entry;
use baywalk_logbook::ledger::{EntryFault, KINDS, Numbered, current, read};
use baywalk_logbook::stored;
use expected::expected;
use std::collections::BTreeMap;
use std::path::PathBuf;

fn folder() -> PathBuf {
    [env!("CARGO_MANIFEST_DIR"), "samples", "entries"]
        .iter()
        .collect()
}

/// What each sample must be read as, by the name of its file.
fn by_name() -> BTreeMap<String, Numbered> {
    let numbered = (1..).zip(expected());
    numbered
        .map(|(seq, (version, entry)): (u64, (u32, Entry))| {
            let name = format!("{}-{version}.json", entry.act.kind());
            (name, Numbered { seq, entry })
        })
        .collect()
}

/// The bytes of an entry as it is written now.
fn written(sample: &Numbered) -> String {
    let version = current(sample.entry.act.kind()).unwrap();
    let shape = stored::Entry::of(sample.seq, version, &sample.entry);
    serde_json_canonicalizer::to_string(&shape).unwrap()
}

#[test]
fn every_sample_is_read_as_exactly_what_it_was() {
    for (name, sample) in by_name() {
        let path = folder().join(&name);
        assert!(
            path.exists(),
            "{name} is missing; it holds\n{}",
            written(&sample)
        );
        let text = std::fs::read_to_string(path).unwrap();
        assert_eq!(read(&text), Ok(sample), "{name}");
    }
}

#[test]
fn every_kind_has_a_sample_of_each_of_its_versions_and_no_sample_is_of_no_kind() {
    let mut names: Vec<String> = std::fs::read_dir(folder())
        .unwrap()
        .map(|file| file.unwrap().file_name().into_string().unwrap())
        .collect();
    let mut wanted: Vec<String> = KINDS
        .iter()
        .flat_map(|(kind, version)| (1..=*version).map(move |n| format!("{kind}-{n}.json")))
        .collect();
    names.sort();
    wanted.sort();
    assert_eq!(names, wanted);
}

#[test]
fn what_is_written_now_has_the_bytes_of_the_newest_sample() {
    for (name, sample) in by_name() {
        let (kind, version) = (sample.entry.act.kind(), current(sample.entry.act.kind()));
        if version.is_some_and(|version| name == format!("{kind}-{version}.json")) {
            let text = std::fs::read_to_string(folder().join(&name)).unwrap();
            assert_eq!(written(&sample), text.trim_end(), "{name}");
        }
    }
}

#[test]
fn what_is_newer_or_not_of_the_form_is_told() {
    let pause = std::fs::read_to_string(folder().join("pause-1.json")).unwrap();
    let newer = pause.replace("\"version\":1", "\"version\":2");
    let kind = "pause".to_owned();
    assert_eq!(read(&newer), Err(EntryFault::TooNew { kind, version: 2 }));
    let strange = pause.replace("\"kind\":\"pause\"", "\"kind\":\"hover\"");
    assert!(matches!(read(&strange), Err(EntryFault::TooNew { .. })));
    let other = pause.replace("\"kind\":\"pause\"", "\"kind\":\"resume\"");
    assert!(matches!(read(&other), Err(EntryFault::Kind { .. })));
    let more = pause.replace("\"version\":1", "\"extra\":0,\"version\":1");
    assert!(matches!(read(&more), Err(EntryFault::Form(_))));
    let float = pause.replace("\"seconds\":", "\"seconds\":0.5e");
    assert!(matches!(read(&float), Err(EntryFault::Form(_))));
}
