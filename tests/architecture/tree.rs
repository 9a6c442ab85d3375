//! The files of the project, as a test reads them.

use std::path::{Path, PathBuf};

/// A file with its path from the project's root.
pub(crate) struct File {
    /// The path, with forward slashes.
    pub(crate) path: String,
    /// The text.
    pub(crate) text: String,
}

/// The root of the project.
pub(crate) fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR"))
        .parent()
        .unwrap()
        .to_owned()
}

/// All files below a folder whose names end so.
pub(crate) fn files(below: &str, ending: &str) -> Vec<File> {
    let mut found = Vec::new();
    let mut open = vec![root().join(below)];
    while let Some(folder) = open.pop() {
        for entry in std::fs::read_dir(&folder).unwrap().map(Result::unwrap) {
            let path = entry.path();
            let name = path.file_name().unwrap().to_str().unwrap().to_owned();
            if path.is_dir() {
                if ![
                    "target",
                    ".git",
                    ".venv",
                    "__pycache__",
                    "baywalk-try",
                    ".build",
                    "Generated",
                ]
                .contains(&name.as_str())
                {
                    open.push(path);
                }
            } else if name.ends_with(ending) {
                let short = path
                    .strip_prefix(root())
                    .unwrap()
                    .to_str()
                    .unwrap()
                    .to_owned();
                found.push(File {
                    path: short,
                    text: std::fs::read_to_string(&path).unwrap(),
                });
            }
        }
    }
    found.sort_by(|one, other| one.path.cmp(&other.path));
    assert!(!found.is_empty(), "no {ending} below {below:?}");
    found
}

/// The part of a source before its unit tests, with comments and documentation taken out.
pub(crate) fn code(file: &File) -> Vec<(usize, &str)> {
    let lines = file
        .text
        .lines()
        .enumerate()
        .map(|(place, line)| (place + 1, line));
    lines
        .take_while(|(_, line)| !line.trim_start().starts_with("#[cfg(test)]"))
        .filter(|(_, line)| !line.trim_start().starts_with("//"))
        .collect()
}

/// Sources of the crates that ship, without tests.
pub(crate) fn shipped(below: &str) -> Vec<File> {
    let mut files = files(below, ".rs");
    let tests: Vec<String> = files.iter().flat_map(modules_of_tests).collect();
    files.retain(|file| !file.path.contains("/tests") && !file.path.ends_with("tests.rs"));
    files.retain(|file| !tests.contains(&file.path));
    files
}

/// The files that a module declares for tests alone.
fn modules_of_tests(file: &File) -> Vec<String> {
    let folder = file.path.rsplit_once('/').map_or("", |(folder, _)| folder);
    let lines: Vec<&str> = file.text.lines().map(str::trim).collect();
    let pairs = lines.iter().zip(lines.iter().skip(1));
    let tests = pairs.filter(|(first, _)| **first == "#[cfg(test)]");
    let named = tests.filter_map(|(_, second)| second.strip_prefix("mod ")?.strip_suffix(';'));
    named.map(|name| format!("{folder}/{name}.rs")).collect()
}
