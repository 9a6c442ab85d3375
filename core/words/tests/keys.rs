//! The keys of both languages are the same, none that the tree uses is missing, none is unused.

mod common;

use std::collections::BTreeSet;

/// Themes whose keys may still be unused: their callers are being written. Take a theme out as soon
/// as its callers stand.
const NOT_YET_WIRED: [&str; 8] = [
    "advice", "cautions", "files", "report", "screens", "storage", "terminal", "units",
];

/// Folders whose sources may use keys.
fn users() -> Vec<String> {
    let mut folders = Vec::new();
    for above in ["core", "bindings"] {
        for entry in std::fs::read_dir(common::root().join(above)).unwrap() {
            let name = entry.unwrap().file_name().into_string().unwrap();
            let source = format!("{above}/{name}/src");
            if name != "domain" && common::root().join(&source).is_dir() {
                folders.push(source);
            }
        }
    }
    folders
}

/// The string literals of the tree that have the form of a key: the word of a theme, a hyphen, and
/// lower-case words or figures joined by hyphens. Comments are left out.
fn used() -> BTreeSet<String> {
    let prefixes = common::THEMES.map(|(_, prefix)| prefix);
    let is_key = |word: &&str| {
        let begins = word
            .split_once('-')
            .is_some_and(|(first, rest)| !rest.is_empty() && prefixes.contains(&first));
        begins
            && word
                .bytes()
                .all(|b| b.is_ascii_lowercase() || b.is_ascii_digit() || b == b'-')
    };
    let mut keys = BTreeSet::new();
    for (_, source) in users().iter().flat_map(|folder| common::sources(folder)) {
        for line in source
            .lines()
            .filter(|line| !line.trim_start().starts_with("//"))
        {
            keys.extend(line.split('"').filter(is_key).map(str::to_owned));
        }
    }
    keys
}

#[test]
fn both_languages_have_the_same_keys_and_arguments() {
    let (english, spanish) = (common::all("en"), common::all("es"));
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
fn the_keys_of_a_theme_begin_with_its_word() {
    for (theme, prefix) in common::THEMES
        .iter()
        .filter(|(_, prefix)| !prefix.is_empty())
    {
        for key in common::theme("en", theme).keys() {
            assert!(key.starts_with(&format!("{prefix}-")), "{theme}: {key}");
        }
    }
}

#[test]
fn no_theme_is_forgotten() {
    let expected: BTreeSet<String> = common::THEMES
        .iter()
        .map(|(name, _)| format!("{name}.ftl"))
        .collect();
    for language in ["en", "es"] {
        let folder = common::root().join("core/words/text").join(language);
        let found: BTreeSet<String> = std::fs::read_dir(folder)
            .unwrap()
            .map(|entry| entry.unwrap().file_name().into_string().unwrap())
            .collect();
        assert_eq!(found, expected, "{language}");
    }
}

#[test]
fn no_key_that_the_tree_uses_is_missing() {
    let known: BTreeSet<String> = common::all("en").into_keys().collect();
    let missing: Vec<String> = used().difference(&known).cloned().collect();
    assert!(missing.is_empty(), "no text for {missing:?}");
}

#[test]
fn no_key_is_unused() {
    let used = used();
    let waiting = |theme: &str| theme == "codes" || NOT_YET_WIRED.contains(&theme);
    let unused: Vec<String> = common::all("en")
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
        for (key, (theme, text)) in common::all(language) {
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
