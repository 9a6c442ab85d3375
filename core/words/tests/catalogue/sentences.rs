//! Every refusal and every fault is told in whole sentences in both languages, by name where the
//! book is at hand.

use crate::sample::{ID, book, pair, refusals};
use baywalk_domain::coded::UnknownCode;
use baywalk_domain::ids::{BayId, DeviceId, PointId};
use baywalk_domain::rig::{Code, Thread, WireSize};
use baywalk_domain::units::{CurrentUnit, Stated, StatedLength, TorqueUnit};
use baywalk_domain::walk::{Needs, Refusal};
use baywalk_words::Words;

/// Whole sentences: begins with a capital or a code, ends with a full stop, and holds no key,
/// placeholder or word for developers.
fn is_told(text: &str) -> bool {
    let begins = text
        .chars()
        .next()
        .is_some_and(|c| c.is_uppercase() || c.is_ascii_digit() || c == '“');
    begins
        && text.ends_with('.')
        && !text.contains(['<', '>', '{', '}', '_'])
        && !text.contains("..")
}

#[test]
fn every_refusal_is_told_in_whole_sentences() {
    let book = book();
    let refusals = refusals();
    for locale in ["en", "es"] {
        let words = Words::for_locales(&[locale]);
        for refusal in &refusals {
            for text in [words.refusal(refusal, &book), words.refusal(refusal, None)] {
                assert!(is_told(&text), "{locale}: {refusal:?}: {text}");
                let other = words.say("refusal-other");
                assert_ne!(text, other, "{locale}: {refusal:?}");
            }
        }
    }
}

/// The kinds of refusal are counted off its own source, so that a new one is not forgotten here.
#[test]
fn no_refusal_is_forgotten() {
    let kinds: std::collections::BTreeSet<String> = refusals()
        .iter()
        .map(|refusal| {
            let text = format!("{refusal:?}");
            text.split(|c: char| !c.is_alphanumeric())
                .next()
                .unwrap_or_default()
                .to_owned()
        })
        .collect();
    let path =
        std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../domain/src/walk/refusal.rs");
    let source = std::fs::read_to_string(path).unwrap();
    let (_, body) = source.split_once("pub enum Refusal {").unwrap();
    let (body, _) = body.split_once("\n}").unwrap();
    let declared: std::collections::BTreeSet<String> = body
        .lines()
        .filter_map(|line| line.strip_prefix("    "))
        .filter(|line| line.starts_with(|c: char| c.is_ascii_uppercase()))
        .filter_map(|line| line.split(|c: char| !c.is_alphanumeric()).next())
        .map(str::to_owned)
        .collect();
    assert_eq!(kinds, declared);
}

#[test]
fn things_are_called_by_code_and_name() {
    let (book, words) = (book(), Words::for_locales(&["en"]));
    let locked = Refusal::Locked {
        point: PointId::new(ID),
        needs: Needs::Pairs {
            device: DeviceId::new(ID),
            left: 12,
            next: pair(),
        },
    };
    assert_eq!(
        words.refusal(&locked, &book),
        "Hands off F8, N in shore. F1, transfer switch: 12 pairs are not proved dead. Read the \
         next: L1 of shore in to L2 of generator in, AC."
    );
    assert_eq!(
        Words::for_locales(&["es"]).refusal(&Refusal::BayOpen(BayId::new(ID)), &book),
        "F, transfer switch bay ya está abierto. Siga en él, o ciérrelo con todo contado; hasta \
         entonces no vuelve la energía."
    );
}

#[test]
fn what_was_typed_is_told_with_what_was_expected() {
    let words = Words::for_locales(&["en"]);
    let range = Stated::parse("0", TorqueUnit::InchPounds).unwrap_err();
    let told = words.stated_fault(&range);
    assert!(told.starts_with("0 inch-pounds is outside what a torque can be here: 0."));
    assert!(told.ends_with(" inch-pounds. Read it again, and its unit."));
    let unit = Stated::<CurrentUnit>::parse_pair("30 W").unwrap_err();
    assert_eq!(
        words.stated_fault(&unit),
        "“W” is not known here. Expected is one of: A, mA."
    );
    let faults = [
        words.length_fault(&StatedLength::parse("3/0 in").unwrap_err()),
        words.length_fault(&StatedLength::parse("99 m").unwrap_err()),
        words.thread_fault(&Thread::parse("x").unwrap_err()),
        words.wire_size_fault(&WireSize::parse("6").unwrap_err()),
        words.code_fault(&Code::parse("F 8").unwrap_err()),
        words.unknown_code(&UnknownCode {
            list: "side",
            found: "port".into(),
            expected: vec!["left", "right"],
        }),
    ];
    for text in faults {
        assert!(is_told(&text), "{text}");
    }
}

/// The figures of NBSIR 76-1011 and NBS Building Science Series 103 (second hand): up to 35 W at 15 A,
/// and 5 W at 0.8 A.
#[test]
fn a_bad_joint_is_told_with_the_published_figures() {
    use baywalk_domain::{joint::GLOW, service::Caution};
    for (locale, figures) in [
        ("en", ["35 W at 15 A", "5 W at 0.8 A"]),
        ("es", ["35 W a 15 A", "5 W a 0,8 A"]),
    ] {
        let text = Words::for_locales(&[locale]).code(Caution::GlowingJoint);
        assert!(figures.iter().all(|figure| text.contains(figure)), "{text}");
    }
    let figures = GLOW.map(|glow| (glow.watts, glow.amperes));
    assert_eq!(figures, [(35.0, 15.0), (5.0, 0.8)]);
}
