//! The phone shells: no text for people, nothing that opens a socket, each screen on both, nothing for tests alone shipped.

use super::tree::{File, files, root};

/// The sources of a shell that are ours: no generated code, no stand-ins, no tests.
fn shell(below: &str, ending: &str) -> Vec<File> {
    let mut found = files(below, ending);
    found.retain(|file| {
        [
            "/StandIns/",
            "/Tests/",
            "/src/test/",
            "/stand-ins/",
            "/.build/",
            "/Generated/",
        ]
        .iter()
        .all(|part| !file.path.contains(part))
    });
    found
}

/// What stands between quotes in a line, interpolations left out.
fn literals(line: &str) -> Vec<String> {
    let code = line.split("//").next().unwrap_or_default();
    let quoted = code.split('"').skip(1).step_by(2);
    quoted.map(str::to_owned).collect()
}

#[test]
fn text_for_people_stands_in_no_phone_shell() {
    let swift = shell("ios", ".swift").into_iter();
    for file in swift.chain(shell("android/screens", ".kt")) {
        for (place, line) in file.text.lines().enumerate() {
            let comment = ["//", "*", "/*"]
                .iter()
                .any(|mark| line.trim_start().starts_with(mark));
            for literal in literals(line).iter().filter(|_| !comment) {
                let words = literal
                    .split(' ')
                    .filter(|word| word.len() > 1 && word.chars().all(char::is_alphabetic));
                assert!(words.count() < 3, "{}:{}: {literal}", file.path, place + 1);
            }
        }
    }
}

#[test]
fn a_word_of_a_shell_is_in_the_catalogue() {
    let known = std::fs::read_to_string(root().join("bindings/mobile/src/text.rs")).unwrap();
    for file in shell("ios", ".swift") {
        for literal in file.text.lines().flat_map(literals) {
            let key = literal.starts_with("shell-") || literal.starts_with("set-up-");
            let whole = key && !literal.contains('\\');
            let found = known.contains(&format!("\"{literal}\""));
            assert!(
                !whole || found,
                "{}: {literal} is not handed over",
                file.path
            );
        }
    }
}

/// Kotlin's places, and the screens of Swift that stand for them.
const PLACES: [(&str, &str); 16] = [
    ("Rigs", "RigsPage"),
    ("Rig", "RigPage"),
    ("Walk", "CardPage"),
    ("Bay", "BayPage"),
    ("Result", "ResultPage"),
    ("Safe", "SafePage"),
    ("Torque", "TorquePage"),
    ("Pins", "PinsPage"),
    ("SetUp", "SetUpPage"),
    ("Plan", "PlanPage"),
    ("WhenNext", "WhenPage"),
    ("Past", "PastPage"),
    ("Findings", "FindingsPage"),
    ("Papers", "PapersPage"),
    ("Adding", "AddingPage"),
    ("Facts", "FillingPage"),
];

#[test]
fn every_place_of_kotlin_has_its_screen_in_swift() {
    let kotlin = root().join("android/screens/src/main/kotlin/app/baywalk/App.kt");
    let kotlin = std::fs::read_to_string(kotlin).unwrap();
    let swift = root().join("ios/Sources/Screens/RootView.swift");
    let swift = std::fs::read_to_string(swift).unwrap();
    let names = kotlin.lines().filter(|line| line.ends_with(": Place"));
    let names: Vec<&str> = names
        .filter_map(|line| {
            line.trim()
                .strip_prefix("data object ")
                .or(line.trim().strip_prefix("data class "))
        })
        .filter_map(|line| line.split(['(', ' ']).next())
        .collect();
    assert!(names.len() >= PLACES.len(), "{names:?}");
    for name in names {
        let screen = PLACES.iter().find(|(place, _)| *place == name);
        let screen = screen.map(|(_, screen)| format!("{screen}(state:"));
        let there = screen.is_some_and(|screen| swift.contains(&screen));
        assert!(there, "the place {name} of Kotlin has no screen in Swift");
    }
}

/// The acts of a screen, by their names in small letters: those of Kotlin's sealed interface, or of Swift's enum.
fn acts(text: &str, head: &str, mark: &[&str]) -> Vec<String> {
    let lines = text.lines().skip_while(|line| !line.contains(head)).skip(1);
    let body = lines.take_while(|line| !line.starts_with('}'));
    let named = body.filter_map(|line| mark.iter().find_map(|mark| line.trim().strip_prefix(mark)));
    let mut names: Vec<String> = named
        .flat_map(|line| line.split(['(', ' ', ':']).next())
        .map(str::to_lowercase)
        .collect();
    names.sort();
    names
}

#[test]
fn every_act_of_a_screen_is_on_both_phones() {
    let kotlin = shell("android/screens", ".kt");
    let swift = shell("ios/Sources/Kit", ".swift");
    let mut screens = 0;
    for file in &kotlin {
        for line in file
            .text
            .lines()
            .filter(|line| line.starts_with("sealed interface "))
        {
            let Some(name) = line
                .split(' ')
                .nth(2)
                .filter(|name| name.ends_with("Event"))
            else {
                continue;
            };
            let head = format!("enum {name} {{");
            let twin = swift.iter().find(|file| file.text.contains(&head));
            let Some(twin) = twin else {
                panic!("{name} of {} has no twin in Swift", file.path);
            };
            let mut ours = acts(&file.text, line, &["data class ", "data object "]);
            // Going on from a card that was left is the same as leaving its question.
            ours.retain(|act| !(name == "CardEvent" && act == "back"));
            assert_eq!(ours, acts(&twin.text, &head, &["case "]), "{name}");
            screens += 1;
        }
    }
    assert!(screens >= 16, "{screens}");
}

#[test]
fn the_app_asks_for_no_network_and_is_small() {
    let mut lines = 0;
    for file in files("ios/App", "") {
        let low = file.text.to_lowercase();
        for word in [
            "network",
            "nsapptransport",
            "urlsession",
            "multicast",
            "wifi",
            "background-modes",
        ] {
            assert!(!low.contains(word), "{} says {word}", file.path);
        }
        lines += if file.path.ends_with(".swift") {
            file.text.lines().count()
        } else {
            0
        };
    }
    assert!(lines < 100, "{lines} lines");
    for file in shell("ios", ".swift") {
        for word in ["URLSession", "import Network", "NWConnection", "CFSocket"] {
            assert!(!file.text.contains(word), "{} says {word}", file.path);
        }
    }
}

#[test]
fn what_ships_has_no_steady_clock() {
    let manifest = std::fs::read_to_string(root().join("bindings/mobile/Cargo.toml")).unwrap();
    assert!(!manifest.contains("default ="), "a feature is on by itself");
    for shipped in ["ios/framework", "android/README.md", "ios/project.yml"] {
        let text = std::fs::read_to_string(root().join(shipped)).unwrap();
        assert!(!text.contains("--features"), "{shipped}");
    }
}

#[test]
fn sources_of_the_phones_are_short() {
    for file in shell("ios", ".swift")
        .into_iter()
        .chain(files("ios/Tests", ".swift"))
    {
        let lines = file.text.lines().count();
        assert!(lines <= 400, "{} has {lines} lines", file.path);
    }
}
