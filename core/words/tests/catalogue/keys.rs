//! The keys of both languages are the same, none that the tree uses is missing, none is unused.

use crate::tree;
use std::collections::BTreeSet;

/// Themes whose keys may still be unused: their callers are being written. Take a theme out as soon
/// as its callers stand.
const NOT_YET_WIRED: [&str; 1] = ["cautions"];

/// Folders whose sources may use keys.
fn users() -> Vec<String> {
    let mut folders = Vec::new();
    for above in ["core", "bindings"] {
        for entry in std::fs::read_dir(tree::root().join(above)).unwrap() {
            let name = entry.unwrap().file_name().into_string().unwrap();
            let source = format!("{above}/{name}/src");
            if name != "domain" && tree::root().join(&source).is_dir() {
                folders.push(source);
            }
        }
    }
    folders
}

/// Literals that have the form of a key and are none: names of lists in the ledger.
const NO_KEYS: [&str; 1] = ["walk-id"];

/// Every string literal of the tree's code; comments are left out.
fn literals() -> BTreeSet<String> {
    let mut found = BTreeSet::new();
    for (_, source) in users().iter().flat_map(|folder| tree::sources(folder)) {
        for line in source
            .lines()
            .filter(|line| !line.trim_start().starts_with("//"))
        {
            found.extend(line.split('"').map(str::to_owned));
        }
    }
    found
}

/// Whether a literal has the form of a key: the word of a theme, a hyphen, and lower-case words or
/// figures joined by hyphens.
fn is_key(literal: &str) -> bool {
    let theme = |first: &str| tree::THEMES.iter().any(|(_, word)| *word == first);
    let begins = literal
        .split_once('-')
        .is_some_and(|(first, rest)| !first.is_empty() && !rest.is_empty() && theme(first));
    let plain = |b: u8| b.is_ascii_lowercase() || b.is_ascii_digit() || b == b'-';
    begins && literal.bytes().all(plain) && !NO_KEYS.contains(&literal)
}

/// The literals that are asked of the catalogue at once, whatever word they begin with.
fn asked() -> BTreeSet<String> {
    let mut found = BTreeSet::new();
    for (_, source) in users().iter().flat_map(|folder| tree::sources(folder)) {
        for call in ["say(", "fill("] {
            for (_, rest) in source
                .match_indices(call)
                .filter_map(|(at, _)| source.split_at_checked(at + call.len()))
            {
                let literal = rest.trim_start().strip_prefix('"');
                found.extend(
                    literal
                        .and_then(|rest| rest.split('"').next())
                        .map(str::to_owned),
                );
            }
        }
    }
    found.remove("no-such-key");
    found
}

#[test]
fn both_languages_have_the_same_keys_and_arguments() {
    let (english, spanish) = (tree::all("en"), tree::all("es"));
    let keys = |texts: &std::collections::BTreeMap<String, _>| -> BTreeSet<String> {
        texts.keys().cloned().collect()
    };
    let (in_english, in_spanish) = (keys(&english), keys(&spanish));
    let untold: Vec<_> = in_english.difference(&in_spanish).collect();
    let unknown: Vec<_> = in_spanish.difference(&in_english).collect();
    assert!(untold.is_empty(), "no Spanish for {untold:?}");
    assert!(unknown.is_empty(), "no English for {unknown:?}");
    for (key, (theme, text)) in &english {
        let (other_theme, other) = &spanish[key];
        assert_eq!(theme, other_theme, "{key}");
        assert_eq!(text.arguments, other.arguments, "{key}");
        assert_eq!(text.attributes, other.attributes, "{key}");
    }
}

#[test]
fn no_theme_is_forgotten() {
    let expected: BTreeSet<String> = tree::THEMES
        .iter()
        .map(|(name, _)| format!("{name}.ftl"))
        .collect();
    for language in ["en", "es"] {
        let folder = tree::root().join("core/words/text").join(language);
        let found: BTreeSet<String> = std::fs::read_dir(folder)
            .unwrap()
            .map(|entry| entry.unwrap().file_name().into_string().unwrap())
            .collect();
        assert_eq!(found, expected, "{language}");
    }
}

#[test]
fn no_key_that_the_tree_uses_is_missing() {
    let known: BTreeSet<String> = tree::all("en").into_keys().collect();
    let formed = literals().into_iter().filter(|literal| is_key(literal));
    let used: BTreeSet<String> = asked().into_iter().chain(formed).collect();
    let missing: Vec<&String> = used.difference(&known).collect();
    assert!(missing.is_empty(), "no text for {missing:?}");
}

#[test]
fn no_key_is_unused() {
    let used = literals();
    let waiting = |theme: &str| theme == "codes" || NOT_YET_WIRED.contains(&theme);
    let unused: Vec<String> = tree::all("en")
        .into_iter()
        .filter(|(key, (theme, _))| !waiting(theme) && !used.contains(key))
        .map(|(key, _)| key)
        .collect();
    assert!(unused.is_empty(), "nothing uses {unused:?}");
}

#[test]
fn the_wording_keeps_its_rules() {
    let banned = [
        "please",
        "por favor",
        "great",
        "passed",
        "failed",
        "n.a.",
        "n/a",
    ];
    for language in ["en", "es"] {
        for (key, (theme, text)) in tree::all(language) {
            let words = text.words.to_lowercase();
            assert!(!words.contains(['!', '¡']), "{language}: {key}");
            for word in banned {
                let whole = format!(" {words} ").contains(&format!(" {word} "));
                assert!(!whole, "{language}: {key}: {word}");
            }
            let caution = theme == "cautions" && !key.starts_with("caution-retorque");
            if caution || key.starts_with("torque-caution") {
                let letters = text.words.chars().count();
                assert!(letters <= 130, "{language}: {key} has {letters} letters");
            }
        }
    }
}
