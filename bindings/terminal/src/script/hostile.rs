//! Hostile scripts: each is read, and what reads is turned into acts; nothing stops the command.
//! `BAYWALK_LONG=1` tries a million.

use super::line::Script;
use super::run::{prepare, run};
use baywalk_screens::Core;
use baywalk_tests::mutate::Kind;
use baywalk_words::Words;
use std::path::Path;
use std::time::{Duration, Instant};

const WREN: &str = include_str!("../../scripts/wren.jsonl");
/// Acts that came with version 2.
const TIMING: &str = r#"{"script":2,"seed":"wren-2027"}
{"at":"2027-03-20T15:00:00Z","act":"rule","fields":{"about":"battery_post","months":"6","rough_road":"3","rough_distance":"40 mi"}}
{"at":"2027-03-20T15:00:01Z","act":"drop_rule","number":1}
{"at":"2027-03-20T15:00:02Z","act":"hours","reading":"812 h"}
{"at":"2027-03-20T15:00:03Z","act":"event","event":"rough_road","about":"A","distance":"140 mi","note":"washboard"}
{"at":"2027-03-20T15:00:04Z","act":"put_off","number":1,"until":"2027-05-01","why":"snow"}
{"at":"2027-03-20T15:00:05Z","act":"follow","minutes":10}
"#;
/// How many lines of the sample walk stand in one input.
const LINES: usize = 5;

/// Pieces of the sample walk, each behind its head.
fn pieces() -> Kind {
    let mut lines = WREN.lines();
    let head = lines.next().unwrap();
    let rest: Vec<&str> = lines.filter(|line| line.len() < 1500).collect();
    let piece = |lines: &[&str]| [head, &lines.join("\n")].join("\n").into_bytes();
    let mut sound: Vec<Vec<u8>> = rest.chunks(LINES).map(piece).collect();
    sound.extend([TIMING.as_bytes().to_vec(), TIMING.as_bytes().to_vec()]);
    Kind {
        sound,
        telling: &[
            b"\"at\":",
            b"\"act\":",
            b"\"file\":\"../../../x\"",
            b"null",
            b"-1",
            b"1e999",
            b"[[[[[[[[",
            b"{",
            b"}",
            b"\\u0000",
            b"\xFF",
            b"9999-12-31T23:59:60+23:59",
            b"\n",
            b"\"boot\":4294967295",
            b"\"refused\":true",
            b"18446744073709551616",
            b"lbf.in",
            b"\"\"",
            b",",
            b"\xE2\x80\xAE",
        ],
    }
}

#[test]
#[expect(
    clippy::print_stdout,
    reason = "the long run's figures are read from what it prints"
)]
fn hostile_scripts_stop_nothing() {
    let inputs: u64 = match std::env::var_os("BAYWALK_LONG") {
        Some(_) => 1_000_000,
        None => 4_000,
    };
    let folder = tempfile::tempdir().unwrap();
    let mut core = Core::open(&folder.path().join("store"), Words::for_locales(&["en"])).unwrap();
    let opening: Vec<&str> = WREN.lines().take(30).collect();
    let opening = Script::read(&opening.join("\n"), folder.path()).unwrap();
    let rig = run(&mut core, &opening, None, |_, _| {}).unwrap();
    let kind = pieces();
    let (mut read, mut turned, mut refused, mut slowest) = (0_u64, 0_u64, 0_u64, Duration::ZERO);
    for number in 0..inputs {
        let bytes = kind.hostile(number);
        let text = String::from_utf8_lossy(&bytes);
        let begun = Instant::now();
        if let Ok(script) = Script::read(&text, Path::new("no-such-folder")) {
            read += 1;
            for (line, act) in &script.lines {
                match prepare(&mut core, &script, (*line, act), Some(rig), false) {
                    Ok(_) => turned += 1,
                    Err(problem) => {
                        assert!(!problem.sentence.is_empty());
                        refused += 1;
                    }
                }
            }
        }
        slowest = slowest.max(begun.elapsed());
    }
    println!("{inputs} inputs, {read} read, {turned} acts, {refused} refused, slowest {slowest:?}");
    assert!(
        read > inputs / 50 && read < inputs - inputs / 50,
        "{read} of {inputs} read"
    );
    assert!(
        turned > 0 && refused > 0,
        "{turned} turned, {refused} refused: the run is void"
    );
}
