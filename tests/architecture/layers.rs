//! Arrows point down only, and nothing opens a socket.

use super::tree::{files, root};

/// What each crate may know of the house.
const MAY_USE: [(&str, &[&str]); 8] = [
    ("core/domain", &[]),
    ("core/words", &["domain"]),
    ("core/logbook", &["domain"]),
    ("core/shapes", &["domain"]),
    ("core/paper", &["domain", "words", "shapes"]),
    ("core/screens", &["domain", "words", "logbook", "paper"]),
    (
        "bindings/mobile",
        &["domain", "words", "logbook", "screens", "shapes"],
    ),
    (
        "bindings/terminal",
        &["domain", "words", "logbook", "screens"],
    ),
];

/// What the domain may not know of the world.
const IMPURE: [&str; 8] = [
    "serde",
    "serde_json",
    "rusqlite",
    "schemars",
    "uniffi",
    "rand",
    "toml",
    "csv",
];

/// Crates that open sockets.
const SOCKETS: [&str; 9] = [
    "tokio",
    "mio",
    "socket2",
    "hyper",
    "reqwest",
    "ureq",
    "rustls",
    "openssl-sys",
    "curl",
];

fn dependencies(below: &str) -> Vec<String> {
    let text = std::fs::read_to_string(root().join(below).join("Cargo.toml")).unwrap();
    let part = text.split("\n[dependencies]\n").nth(1).unwrap_or_default();
    let lines = part.lines().take_while(|line| !line.starts_with('['));
    lines
        .filter_map(|line| line.split(['.', ' ', '=']).next())
        .filter(|name| !name.is_empty() && !name.starts_with('#'))
        .map(str::to_owned)
        .collect()
}

#[test]
fn each_crate_uses_only_what_lies_below_it() {
    for (below, allowed) in MAY_USE {
        for name in dependencies(below) {
            if let Some(used) = name.strip_prefix("baywalk-") {
                assert!(allowed.contains(&used), "{below} uses {used}");
            }
        }
    }
}

#[test]
fn the_domain_is_pure() {
    let used = dependencies("core/domain");
    for name in IMPURE {
        assert!(
            !used.iter().any(|used| used == name),
            "core/domain uses {name}"
        );
    }
}

#[test]
fn only_the_logbook_knows_the_database() {
    for (below, _) in MAY_USE {
        let uses = dependencies(below).iter().any(|name| name == "rusqlite");
        assert_eq!(uses, below == "core/logbook", "{below}");
    }
}

#[test]
fn nothing_that_ships_opens_a_socket() {
    let lock = std::fs::read_to_string(root().join("Cargo.lock")).unwrap();
    for name in SOCKETS {
        assert!(
            !lock.contains(&format!("name = \"{name}\"\n")),
            "{name} is in Cargo.lock"
        );
    }
}

#[test]
fn every_member_is_held_to_the_lints_of_the_house() {
    for file in files("", "Cargo.toml") {
        let member = file.text.contains("[package]");
        assert!(
            !member || file.text.contains("[lints]\nworkspace = true"),
            "{}",
            file.path
        );
    }
}
