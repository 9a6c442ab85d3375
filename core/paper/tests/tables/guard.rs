//! Whatever a person typed, no reader of the file finds a formula in it, and the text comes back.

use baywalk_paper::table::guard::{guarded, plain};
use baywalk_paper::table::{Cell, Table};
use csv::ReaderBuilder;
use proptest::prelude::*;

/// What a spreadsheet runs, written a second time here.
fn runs(cell: &str) -> bool {
    let first = cell.trim_start_matches(|sign: char| {
        sign.is_whitespace() || sign.is_control() || "\"\u{feff}\u{200b}\u{202e}".contains(sign)
    });
    let number = first.parse::<f64>().is_ok();
    !number && first.starts_with(['=', '+', '-', '@', '＝', '＋', '－', '＠'])
}

/// Texts that are rich in what matters here.
fn text() -> impl Strategy<Value = String> {
    let signs = "[=+\\-@＝＋－＠'\";,\t\r\n a-c0-2.\u{200b}\u{202e}\u{5d0}\u{1f527}]{0,24}";
    prop_oneof![signs, ".{0,40}"]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2_000))]

    #[test]
    fn what_was_typed_comes_back(text in text()) {
        prop_assert_eq!(plain(&guarded(&text)), text);
    }

    #[test]
    fn no_reader_of_any_country_finds_a_formula(text in text()) {
        let rows = vec![[Cell::text("a"), Cell::text(&text)]];
        let file = Table::new("notes", &["one", "two"], rows).csv();
        for (separator, quoting) in [(b',', true), (b';', true), (b';', false), (b'\t', false)] {
            let mut reader = ReaderBuilder::new()
                .delimiter(separator)
                .quoting(quoting)
                .flexible(true)
                .has_headers(false)
                .from_reader(file.as_bytes());
            for record in reader.records() {
                for cell in &record.unwrap() {
                    prop_assert!(!runs(cell), "{cell:?} in {file:?} by {separator}");
                }
            }
        }
    }

    #[test]
    fn a_file_is_read_as_it_was_written(texts in proptest::collection::vec(text(), 1..6)) {
        let rows: Vec<[Cell; 2]> = texts.iter().map(|text| [Cell::text(text), Cell::from(7_u32)]).collect();
        let file = Table::new("notes", &["note", "number"], rows).csv();
        let mut reader = csv::Reader::from_reader(file.as_bytes());
        let read: Vec<String> = reader.records().map(|record| plain(&record.unwrap()[0])).collect();
        prop_assert_eq!(read, texts);
    }
}

#[test]
fn a_plain_number_stays_a_number_and_all_else_is_guarded() {
    for number in ["-0.5", "+12", "-3", "45"] {
        assert_eq!(guarded(number), number);
    }
    for formula in [
        "=1",
        "+a",
        "-2+3",
        "@SUM",
        "＝1",
        " =1",
        "\t=1",
        "\u{202e}=1",
        "-1e5",
        "-0.5 V",
    ] {
        assert!(guarded(formula).starts_with('\''), "{formula:?}");
    }
    for first in ["\theld", "\rheld"] {
        assert!(guarded(first).starts_with('\''), "{first:?}");
        assert_eq!(plain(&guarded(first)), first);
    }
    assert_eq!(guarded("held; =1"), "held;' =1");
    assert_eq!(guarded("one\n-two"), "one\n'-two");
}
