//! What the report says, word for word, in each language.
//!
//! After a wanted change, run the tests once with `BAYWALK_BLESS=1` and read what changed.

use crate::scene::{Scene, html, visible};
use baywalk_domain::finding::FindingKind;
use std::path::Path;

fn says_what_it_said(language: &str) {
    let scene = Scene::new(str::to_owned);
    tells(language, "report", &scene.html(language));
    let sheet = scene.follow_up(language, FindingKind::OutOfService);
    tells(language, "follow-up", &html(&sheet));
}

fn tells(language: &str, name: &str, page: &str) {
    let here = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/report/golden");
    let file = here.join(format!("{name}-{language}.txt"));
    let sample = Path::new(env!("CARGO_TARGET_TMPDIR")).join(format!("{name}-{language}.html"));
    std::fs::write(sample, page).unwrap();
    let told = visible(page);
    if std::env::var_os("BAYWALK_BLESS").is_some() {
        std::fs::write(&file, &told).unwrap();
    }
    let expected = std::fs::read_to_string(&file).unwrap();
    for (place, (now, then)) in told.lines().zip(expected.lines()).enumerate() {
        assert_eq!(now, then, "{language}, line {}", place + 1);
    }
    assert_eq!(told.lines().count(), expected.lines().count(), "{language}");
}

#[test]
fn in_english() {
    says_what_it_said("en");
}

#[test]
fn in_spanish() {
    says_what_it_said("es");
}
