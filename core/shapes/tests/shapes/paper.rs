//! The SVG writer and the palette of paper.

use crate::gallery::everything;
use baywalk_shapes::palette::Palette;
use baywalk_shapes::svg::{Told, svg};
use baywalk_shapes::tag::{Weight, tag};
use baywalk_shapes::{Role, screw};

#[test]
fn text_stays_text() {
    let nasty = "\"'><script>alert(1)</script>&amp;\0";
    let told = Told {
        title: nasty,
        description: nasty,
    };
    let text = svg(&tag(nasty, Weight::Plain), &Palette::PAPER, Some(told));
    assert!(!text.contains("<script") && !text.contains("&amp;") && !text.contains('\0'));
    assert_eq!(text.matches('<').count(), text.matches('>').count());
    assert!(text.contains("<title>&#34;&#39;&#62;&#60;script"));
}

#[test]
fn a_drawing_with_words_is_read_aloud_and_one_without_is_passed_over() {
    let held = screw::held();
    let told = Told {
        title: "Held",
        description: "",
    };
    let (aloud, silent) = (
        svg(&held, &Palette::PAPER, Some(told)),
        svg(&held, &Palette::PAPER, None),
    );
    assert!(aloud.contains("role=\"img\"><title>Held</title>") && !aloud.contains("<desc>"));
    assert!(silent.contains("aria-hidden=\"true\"") && !silent.contains("<title>"));
}

#[test]
fn nothing_outside_is_named_and_nothing_needs_a_mask() {
    for (name, drawing) in everything() {
        let text = svg(&drawing, &Palette::PAPER, None);
        for word in [
            "clip", "mask", "pattern", "url(", "href", "NaN", "inf", "id=",
        ] {
            assert!(!text.contains(word), "{name}: {word}");
        }
    }
}

/// Relative luminance of a colour by WCAG 2.2.
fn luminance(colour: &str) -> f64 {
    let channel = |from: usize| {
        let value =
            f64::from(u8::from_str_radix(colour.get(from..from + 2).unwrap(), 16).unwrap()) / 255.0;
        if value <= 0.04045 {
            value / 12.92
        } else {
            ((value + 0.055) / 1.055).powf(2.4)
        }
    };
    0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5)
}

fn contrast(one: Role, other: Role) -> f64 {
    let (one, other) = (Palette::PAPER.colour(one), Palette::PAPER.colour(other));
    let (one, other) = (luminance(one), luminance(other));
    (one.max(other) + 0.05) / (one.min(other) + 0.05)
}

#[test]
fn paper_keeps_seven_to_one_without_colour() {
    // WCAG 2.2, success criterion 1.4.6: 7:1 for text; 1.4.11: 3:1 for lines that divide.
    let pairs = [
        (Role::Ink, Role::Plate),
        (Role::Ink, Role::Face),
        (Role::Detail, Role::Plate),
        (Role::Next, Role::Plate),
        (Role::OnNext, Role::Next),
        (Role::OnCaution, Role::Caution),
    ];
    for (text, ground) in pairs {
        assert!(contrast(text, ground) >= 7.0, "{text:?} on {ground:?}");
    }
    assert!(contrast(Role::Hair, Role::Plate) >= 3.0);
    // A check of the formula itself: black on white is 21:1 by definition.
    assert!((1.0_f64 + 0.05) / 0.05 - 21.0 < 1e-9 && (luminance("#ffffff") - 1.0).abs() < 1e-9);
    assert!(
        Role::ALL
            .iter()
            .all(|role| Palette::PAPER.colour(*role).starts_with('#'))
    );
}
