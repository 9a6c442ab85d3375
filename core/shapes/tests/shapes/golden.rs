//! The strip of a motorhome in the middle of a walk, as SVG text.
//!
//! After a wanted change, run the tests once with `BAYWALK_BLESS=1` and look at what changed.

use crate::rig::motorhome;
use baywalk_shapes::palette::Palette;
use baywalk_shapes::strip::strip;
use baywalk_shapes::svg::{Told, svg};
use std::path::Path;

#[test]
fn the_strip_of_a_motorhome_is_drawn_as_it_was() {
    let (book, standings) = motorhome();
    let told = Told {
        title: "Alder, nose left",
        description: "Twelve bays, bay F open.",
    };
    let text = svg(
        &strip(&book, &standings, 328.0),
        &Palette::PAPER,
        Some(told),
    );
    let text = text.replace("/><", "/>\n<") + "\n";
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/shapes/golden/motorhome.svg");
    if std::env::var_os("BAYWALK_BLESS").is_some() {
        std::fs::write(&file, &text).unwrap();
    }
    let expected = std::fs::read_to_string(&file).unwrap();
    for (place, (now, then)) in text.lines().zip(expected.lines()).enumerate() {
        assert_eq!(now, then, "line {}", place + 1);
    }
    assert_eq!(text, expected);
}
