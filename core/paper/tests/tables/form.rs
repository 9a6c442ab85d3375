//! Rows, columns and line ends; hostile text in every free field.

use crate::facts::facts;
use baywalk_paper::table::guard::plain;
use baywalk_paper::table::{archive, tables};

fn read(file: &str) -> Vec<Vec<String>> {
    let mut reader = csv::ReaderBuilder::new()
        .has_headers(false)
        .from_reader(file.as_bytes());
    let records = reader.records().map(|record| record.unwrap());
    records
        .map(|record| record.iter().map(plain).collect())
        .collect()
}

#[test]
fn every_table_has_a_header_and_rows_of_its_length() {
    let told: Vec<(&str, usize)> = tables(&[facts(str::to_owned)])
        .iter()
        .map(|table| {
            let file = table.csv();
            assert!(file.ends_with("\r\n") && !file.replace("\r\n", "").contains(['\r', '\n']));
            let read = read(&file);
            assert!(read.iter().all(|row| row.len() == table.columns.len()));
            assert_eq!(read[0], table.columns);
            (table.name, read.len() - 1)
        })
        .collect();
    let expected = [
        ("walks", 1),
        ("points", 0),
        ("readings", 1),
        ("findings", 1),
        ("lives", 0),
        ("usage", 2),
        ("photos", 1),
    ];
    assert_eq!(told, expected);
}

#[test]
fn figures_have_a_point_and_codes_stand_as_they_are() {
    let made = tables(&[facts(str::to_owned)]);
    let of = |name: &str| made.iter().find(|table| table.name == name).unwrap().csv();
    assert!(of("readings").contains(",leg_1,galley,volts,121.30,,"));
    assert!(of("usage").contains("event,40,mi,rough_road,rig,,,,gravel"));
    assert!(of("usage").contains("rule,,,,rig,,,months:18 chance:5,in a hall"));
    assert!(of("findings").contains(",worn,soon,rig,,false,accepted,2027-03-20,kept"));
}

#[test]
fn hostile_text_stays_in_its_cell_and_comes_back() {
    let long = "W".repeat(10_000);
    let nasty =
        format!("=HYPERLINK(\"x\")\r\n\"; -1,\u{202e}\u{5d0}\u{1f469}\u{200d}\u{1f527}{long}");
    let pen = |text: &str| format!("{nasty}{text}");
    let plain_tables = tables(&[facts(str::to_owned)]);
    for (table, other) in tables(&[facts(pen)]).iter().zip(plain_tables) {
        let (rows, expected) = (read(&table.csv()), read(&other.csv()));
        for (row, expected) in rows.iter().zip(&expected) {
            for (cell, text) in row.iter().zip(expected) {
                assert!(cell == text || *cell == pen(text), "{}: {text}", table.name);
            }
        }
        assert_eq!(rows.len(), expected.len());
    }
}

#[test]
fn the_same_tables_give_the_same_archive() {
    let files = [("a.csv".to_owned(), b"one\r\n".to_vec())];
    let made = || {
        let mut to = std::io::Cursor::new(Vec::new());
        archive(&files, &mut to).unwrap();
        to.into_inner()
    };
    assert_eq!(made(), made());
    assert!(made().starts_with(b"PK\x03\x04"));
}
