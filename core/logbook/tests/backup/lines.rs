//! Export and import as JSON Lines.

use crate::script::{open, rig};
use crate::store::{Place, clock};
use baywalk_logbook::backup::{ArchiveFault, RestoreFault};
use baywalk_logbook::ledger::Head;
use baywalk_logbook::lines::LineFault;

fn exported(place: &Place, open_walk: bool) -> (Head, Vec<u8>) {
    let logbook = place.store("one", open_walk);
    let mut text = Vec::new();
    let head = logbook.export(&mut text).unwrap();
    assert_eq!(head, logbook.digest());
    (head, text)
}

#[test]
fn imported_lines_give_the_same_digests_and_the_same_lines_again() {
    let place = Place::new();
    let (head, text) = exported(&place, false);
    let mut other = open(&place.at("two"));
    assert_eq!(other.import(text.as_slice()), Ok(head));
    assert_eq!(other.digest(), head);
    assert_eq!(other.verify().unwrap().broken, None);
    assert_eq!(
        other.fingerprint().unwrap(),
        open(&place.at("one")).fingerprint().unwrap()
    );
    let mut again = Vec::new();
    other.export(&mut again).unwrap();
    assert!(again == text);
    for line in String::from_utf8(text).unwrap().lines() {
        let value: serde_json::Value = serde_json::from_str(line).unwrap();
        assert_eq!(serde_json_canonicalizer::to_string(&value).unwrap(), line);
    }
    let held = other.import(again.as_slice()).unwrap_err();
    assert!(matches!(held, RestoreFault::WouldReplace(_)));
}

#[test]
fn an_open_walk_needs_a_new_proof_after_an_import() {
    let place = Place::new();
    let (head, text) = exported(&place, true);
    let mut other = open(&place.at("two"));
    other.import(text.as_slice()).unwrap();
    assert_eq!(other.digest().seq, head.seq + 1);
    let walk = other.open_walk(rig()).unwrap().unwrap();
    assert!(
        walk.bays
            .values()
            .flat_map(|work| &work.proofs)
            .all(|proof| proof.lapsed.is_some())
    );
}

#[test]
fn every_byte_changed_and_every_length_cut_is_told_and_nothing_is_taken() {
    let place = Place::new();
    let (_, text) = exported(&place, false);
    let mut other = open(&place.at("two"));
    let step = 61;
    for at in (0..text.len()).step_by(step) {
        let mut changed = text.clone();
        changed[at] ^= 1;
        assert!(other.import(changed.as_slice()).is_err(), "byte {at}");
        assert!(other.import(&text[..at]).is_err(), "length {at}");
    }
    assert_eq!(other.digest(), Head::START);
    assert!(other.import(text.as_slice()).is_ok());
}

#[test]
fn what_does_not_fit_is_told_with_its_line() {
    let place = Place::new();
    let (_, text) = exported(&place, false);
    let text = String::from_utf8(text).unwrap();
    let lines: Vec<&str> = text.lines().collect();
    let told = |lines: &[&str]| {
        let text: String = lines.iter().map(|line| format!("{line}\n")).collect();
        let mut other = open(&place.at("two"));
        match other.import(text.as_bytes()).unwrap_err() {
            RestoreFault::Archive(ArchiveFault::Lines(fault)) => (fault.line, fault.why),
            other => panic!("{other}"),
        }
    };
    let (last, before) = (lines.len(), lines.len() as u64 - 1);
    assert_eq!(told(&lines[..last - 1]), (before + 1, LineFault::Cut));
    let (line, why) = told(&[&lines[..3], &lines[4..]].concat());
    assert!(
        line == 4 && matches!(why, LineFault::Digest { .. }),
        "{why}"
    );
    assert_eq!(
        told(&[&lines[..last], &lines[..1]].concat()).1,
        LineFault::Behind
    );
    let short = [&lines[..9], &lines[last - 1..]].concat();
    assert_eq!(told(&short), (10, LineFault::End));
    assert_eq!(told(&["{}"]), (1, LineFault::Form));
    assert_eq!(
        told(&["\u{1f511}".repeat(40).as_str()]),
        (1, LineFault::Form)
    );
}

#[test]
fn a_line_edited_by_hand_is_told_with_its_field_and_what_is_wrong() {
    let place = Place::new();
    let (_, text) = exported(&place, false);
    let text = String::from_utf8(text).unwrap();
    let told = |from: &str, to: &str| {
        assert!(text.contains(from), "{from}");
        let mut other = open(&place.at("two"));
        let edited = text.replacen(from, to, 1);
        other.import(edited.as_bytes()).unwrap_err().to_string()
    };
    let field = told(r#""version":1"#, r#""version":"one""#);
    assert!(field.contains("version"), "{field}");
    let unit = told(r#""unit":"lbf.in""#, r#""unit":"lbf.inch""#);
    assert!(unit.contains("unit") && unit.contains("lbf.inch"), "{unit}");
    let name = told(r#""rig":""#, r#""rig":"x"#);
    assert!(name.contains("at rig") && name.contains("UUID"), "{name}");
    let extra = told(r#""kind":"start""#, r#""kind":"start","lid":1"#);
    assert!(extra.contains("lid"), "{extra}");
    // A change that could be an entry is told by its digest.
    let digest = told(r#""person":""#, r#""person":"x"#);
    assert!(digest.contains("digest"), "{digest}");
}
