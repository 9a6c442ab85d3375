//! What stands in sources: lengths, clocks, text for people, suppressions.

use super::tree::{code, files, shipped};

/// The most lines of a file, its tests and documentation counted.
const MOST_LINES: usize = 400;
/// The share of files that may be longer than 150 lines, in percent.
const LONG_SHARE: usize = 30;
/// The most lines of a function.
const MOST_OF_FUNCTION: usize = 60;

#[test]
fn files_are_short() {
    let files = files("", ".rs");
    let mut long = 0;
    for file in &files {
        let lines = file.text.lines().count();
        assert!(lines <= MOST_LINES, "{} has {lines} lines", file.path);
        long += usize::from(lines > 150);
    }
    assert!(
        long * 100 <= files.len() * LONG_SHARE,
        "{long} of {} files are over 150 lines",
        files.len()
    );
}

#[test]
fn functions_are_short() {
    for file in shipped("core").into_iter().chain(shipped("bindings")) {
        let lines = code(&file);
        for (place, (number, line)) in lines.iter().enumerate() {
            let indent = line.len() - line.trim_start().len();
            let opens = line.trim_start().starts_with("fn ") || line.contains(" fn ");
            if !opens || line.trim_end().ends_with(';') {
                continue;
            }
            let end = format!("{}}}", " ".repeat(indent));
            let length = lines[place..]
                .iter()
                .position(|(_, line)| *line == end)
                .unwrap_or(0);
            assert!(
                length <= MOST_OF_FUNCTION,
                "{}:{number} has {length} lines",
                file.path
            );
        }
    }
}

#[test]
fn the_clock_is_read_in_one_place() {
    for file in shipped("core").into_iter().chain(shipped("bindings")) {
        for (number, line) in code(&file) {
            let reads = [
                "SystemTime::now",
                "Instant::now",
                "Utc::now",
                "Local::now",
                "now_v7",
                "new_v4",
            ];
            let reads = reads.iter().any(|word| line.contains(word));
            assert!(
                !reads || file.path.ends_with("logbook/src/logbook/system_clock.rs"),
                "{}:{number}",
                file.path
            );
        }
    }
}

#[test]
fn text_for_people_stands_in_the_catalogue_alone() {
    let shells = shipped("bindings")
        .into_iter()
        .filter(|file| !file.path.contains("/calc/"));
    for file in shipped("core/screens")
        .into_iter()
        .chain(shipped("core/paper"))
        .chain(shells)
    {
        for (number, line) in code(&file) {
            let attribute =
                line.trim_start().starts_with("#[") || line.trim_start().starts_with('"');
            for literal in line.split('"').skip(1).step_by(2) {
                let words = literal
                    .split(' ')
                    .filter(|word| word.len() > 1 && word.chars().all(char::is_alphabetic));
                assert!(
                    attribute || words.count() < 3,
                    "{}:{number}: {literal}",
                    file.path
                );
            }
        }
    }
}

#[test]
fn nothing_is_allowed_in_silence() {
    for file in files("", ".rs") {
        for (place, line) in file.text.lines().enumerate() {
            let silent = line.trim_start().starts_with("#[allow(")
                || line.trim_start().starts_with("#![allow(");
            assert!(
                !silent,
                "{}:{}: an expectation with its reason is expected",
                file.path,
                place + 1
            );
        }
    }
}

#[test]
fn the_project_speaks_of_itself_alone() {
    // Each in two halves, so that this file can be read as any other.
    let words = [
        concat!("you", "tube"),
        concat!("tran", "script"),
        concat!("seed ", "document"),
        concat!("../", "shared"),
        concat!("/wo", "rk/"),
    ];
    for ending in [
        ".rs", ".md", ".toml", ".ftl", ".py", ".html", ".sql", ".csv", ".jsonl", ".swift", ".kt",
        ".yml",
    ] {
        for file in files("", ending) {
            let low = file.text.to_lowercase();
            for word in words {
                assert!(!low.contains(word), "{} says {word}", file.path);
            }
        }
    }
}
