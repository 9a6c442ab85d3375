//! Files that mean harm, or are no rig files at all: a clear fault, no panic, no long wait.

use crate::tried;
use baywalk_logbook::rigfile::{Fault, FaultKind, Limit, MOST_FAULTS, NamedText, layouts};
use proptest::prelude::*;
use std::time::{Duration, Instant};

/// The faults of two files, found in a time that a person would wait.
fn faults(toml: &str, csv: &str) -> Vec<Fault> {
    let begun = Instant::now();
    let told = tried::faults(toml, csv);
    assert!(begun.elapsed() < Duration::from_secs(20));
    assert!(told.len() <= 2 * (MOST_FAULTS + 1));
    told
}

#[test]
fn empty_files_say_what_is_missing() {
    let told = faults("", "");
    let fields: Vec<&str> = told.iter().map(|fault| fault.field.as_str()).collect();
    for field in ["format", "rig", "yearly", "code", "device", "name"] {
        assert!(fields.contains(&field), "{field}");
    }
    assert!(
        told.iter()
            .all(|fault| (fault.line, fault.column) == (1, 1))
    );
}

#[test]
fn binary_rubbish_is_no_text() {
    let bytes: Vec<u8> = (0..4096_u32)
        .map(|n| n.wrapping_mul(2_654_435_761).to_le_bytes()[3])
        .collect();
    let told = NamedText::from_bytes("rig.toml", &bytes).unwrap_err();
    assert_eq!(told[0].kind, FaultKind::NotUtf8);
    let control: String = (0..4096_u32)
        .map(|n| char::from((n % 32).to_le_bytes()[0]))
        .collect();
    assert!(!faults(&control, &control).is_empty());
}

#[test]
fn a_million_commas_are_too_many_columns() {
    let commas = ",".repeat(1_000_000);
    let told = faults("", &commas);
    assert!(told.iter().any(|f| matches!(
        f.kind,
        FaultKind::TooMany {
            what: Limit::Columns,
            found: 1_000_001,
            ..
        }
    )));
    let below = format!("code,device,name\nA1,B,c{commas}\n");
    let told = faults("", &below);
    assert!(
        told.iter()
            .any(|f| matches!(f.kind, FaultKind::TooManyCells { expected: 3, .. }))
    );
}

#[test]
fn deep_nesting_is_refused() {
    for (open, close) in [("[", "]"), ("{a=", "}")] {
        let deep = format!("rig = {}1{}", open.repeat(200_000), close.repeat(200_000));
        let told = faults(&deep, "code,device,name\n");
        assert!(
            told.iter()
                .any(|f| matches!(f.kind, FaultKind::Syntax { .. }))
        );
    }
    let dotted = format!("{}b = 1", "a.".repeat(200_000));
    assert!(!faults(&dotted, "code,device,name\n").is_empty());
}

#[test]
fn countless_faults_on_one_line_are_cut_off() {
    let keys: Vec<String> = (0..200_000).map(|n| format!("k{n} = 1")).collect();
    let told = faults(
        &format!("rig = {{ {} }}", keys.join(", ")),
        "code,device,name\n",
    );
    assert!(told.iter().any(|f| matches!(
        f.kind,
        FaultKind::TooMany {
            what: Limit::Faults,
            ..
        }
    )));
    let quotes = format!("code,device,name\n{}", "\"\n".repeat(300_000));
    assert!(!faults("", &quotes).is_empty());
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, cases: 300, ..Default::default() })]

    #[test]
    fn no_text_makes_it_panic(toml in "\\PC{0,200}", csv in "[\\PC\n\r,\"]{0,200}") {
        let _ = faults(&toml, &csv);
    }

    #[test]
    fn no_cut_or_swap_of_a_sound_file_makes_it_panic(
        at in 0_usize..60_000, cut in 0_usize..40, put in "[\\PC\n\",\\[\\]{}=]{0,6}", which in 0_usize..5,
    ) {
        let layout = layouts()[which];
        let spoil = |text: &str| {
            let mut characters: Vec<char> = text.chars().collect();
            let from = at % characters.len();
            let to = (from + cut).min(characters.len());
            characters.splice(from..to, put.chars());
            characters.into_iter().collect::<String>()
        };
        let _ = faults(&spoil(layout.toml), layout.csv);
        let _ = faults(layout.toml, &spoil(layout.csv));
    }
}
