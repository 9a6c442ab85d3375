//! Every listing, in words and as JSON, in both languages.

use super::{Shell, WREN};

fn walked() -> Shell {
    let shell = Shell::new();
    let script = shell.write("wren.jsonl", WREN);
    assert!(shell.replay(&script).status.success());
    shell
}

#[test]
fn every_listing_speaks_words_and_json_and_misses_no_text() {
    let shell = walked();
    let report = shell.path("report.html");
    let lists: [&[&str]; 10] = [
        &["rig"],
        &["rig", "--rig", "Wren"],
        &["rig", "layouts"],
        &["due"],
        &["findings"],
        &["verify"],
        &["photo"],
        &["photo", "originals"],
        &["photo", "arrived"],
        &["torque", "F8"],
    ];
    for args in lists {
        for language in ["en", "es"] {
            let told = [&["--language", language], args].concat();
            let text = shell.ok(&told);
            assert!(!text.trim().is_empty(), "{told:?}");
            assert!(!text.contains('<'), "a text is missing: {told:?}: {text}");
        }
        let json = [args, &["--json"]].concat();
        serde_json::from_str::<serde_json::Value>(&shell.ok(&json)).unwrap();
    }
    for language in ["en", "es"] {
        shell.ok(&["--language", language, "report", report.to_str().unwrap()]);
        let html = std::fs::read_to_string(&report).unwrap();
        assert!(html.contains(&format!("lang=\"{language}\"")));
    }
}

#[test]
fn help_is_worded_in_both_languages() {
    let shell = Shell::new();
    for language in ["en", "es"] {
        for command in [
            "", "rig", "walk", "torque", "findings", "photo", "report", "calc", "try",
        ] {
            let args: Vec<&str> = ["--language", language, command, "--help"]
                .into_iter()
                .filter(|a| !a.is_empty())
                .collect();
            let text = shell.ok(&args);
            assert!(!text.contains("<terminal-"), "{args:?}: {text}");
        }
    }
}

#[test]
fn a_finding_is_decided_by_its_number_until_a_day() {
    let shell = walked();
    let before: serde_json::Value =
        serde_json::from_str(&shell.ok(&["findings", "--json"])).unwrap();
    let open = before
        .as_array()
        .unwrap()
        .iter()
        .filter(|finding| finding["open"] == true)
        .count();
    shell.ok(&[
        "findings",
        "decide",
        "1",
        "mended",
        "--note",
        "by a licensed shop",
    ]);
    let after: serde_json::Value =
        serde_json::from_str(&shell.ok(&["findings", "--json"])).unwrap();
    let left = after
        .as_array()
        .unwrap()
        .iter()
        .filter(|finding| finding["open"] == true)
        .count();
    assert_eq!(left, open - 1);
    shell.fails(&["findings", "decide", "999", "mended"], 4);
    shell.fails(&["findings", "decide", "1", "forgotten"], 2);
    shell.fails(&["findings", "decide", "1", "licensed", "--by", "soon"], 2);
    shell.fails(&["findings", "decide", "1", "accepted"], 3);
}

#[test]
fn the_odometer_only_goes_up() {
    let shell = walked();
    assert!(
        shell
            .fails(&["note", "odometer", "41000 mi"], 3)
            .contains("below an earlier note")
    );
    shell.ok(&["note", "odometer", "41900 mi"]);
    shell.fails(&["note", "odometer", "42000 leagues"], 2);
}
