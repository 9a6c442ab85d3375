//! Reads the texts and the sources of the tree.

use fluent_syntax::ast;
use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

/// The themes and the word with which their keys begin; the keys of `codes` begin with lists, and a
/// theme of the shells may have keys of its own beside.
pub(crate) const THEMES: [(&str, &str); 19] = [
    ("advice", "advice"),
    ("backup", "backup"),
    ("cautions", "caution"),
    ("codes", ""),
    ("faults", "fault"),
    ("files", "file"),
    ("past", "past"),
    ("photos", "photo"),
    ("plan", "plan"),
    ("refusals", "refusal"),
    ("report", "report"),
    ("set_up", "set-up"),
    ("shell", "shell"),
    ("steps", "step"),
    ("storage", "storage"),
    ("terminal", "terminal"),
    ("timing", "timing"),
    ("units", "unit"),
    ("walk", "walk"),
];

/// One text: its arguments, its attributes with theirs, and all its words.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub(crate) struct Text {
    pub(crate) arguments: BTreeSet<String>,
    pub(crate) attributes: BTreeMap<String, BTreeSet<String>>,
    pub(crate) words: String,
}

/// The key of a member of a list, made a second time here.
pub(crate) fn key(list: &str, code: &str) -> String {
    format!("{list}-{code}")
        .to_ascii_lowercase()
        .replace(|c: char| !c.is_ascii_alphanumeric(), "-")
}

/// The texts of a theme in a language.
pub(crate) fn theme(language: &str, name: &str) -> BTreeMap<String, Text> {
    let path = root().join(format!("core/words/text/{language}/{name}.ftl"));
    let source = std::fs::read_to_string(&path).unwrap();
    let parsed = fluent_syntax::parser::parse(source.as_str())
        .unwrap_or_else(|(_, faults)| panic!("{}: {faults:?}", path.display()));
    let mut texts = BTreeMap::new();
    for entry in &parsed.body {
        match entry {
            ast::Entry::Message(message) => {
                let twice = texts.insert(message.id.name.to_owned(), text(message));
                assert_eq!(twice, None, "{} stands twice", message.id.name);
            }
            ast::Entry::Comment(_)
            | ast::Entry::GroupComment(_)
            | ast::Entry::ResourceComment(_) => {}
            other => panic!("{}: {other:?}", path.display()),
        }
    }
    texts
}

/// All texts of a language, by key, with their theme.
pub(crate) fn all(language: &str) -> BTreeMap<String, (&'static str, Text)> {
    let mut texts = BTreeMap::new();
    for (name, _) in THEMES {
        for (key, text) in theme(language, name) {
            let twice = texts.insert(key.clone(), (name, text));
            assert_eq!(twice, None, "{key} stands in two themes");
        }
    }
    texts
}

fn text(message: &ast::Message<&str>) -> Text {
    let mut text = Text::default();
    let value = message.value.as_ref().unwrap();
    gather(value, &mut text.arguments, &mut text.words);
    for attribute in &message.attributes {
        let mut arguments = BTreeSet::new();
        gather(&attribute.value, &mut arguments, &mut text.words);
        text.attributes
            .insert(attribute.id.name.to_owned(), arguments);
    }
    text
}

fn gather(pattern: &ast::Pattern<&str>, arguments: &mut BTreeSet<String>, words: &mut String) {
    for element in &pattern.elements {
        match element {
            ast::PatternElement::TextElement { value } => words.push_str(value),
            ast::PatternElement::Placeable { expression } => match expression {
                ast::Expression::Inline(inline) => {
                    words.push('…');
                    argument(inline, arguments);
                }
                ast::Expression::Select { selector, variants } => {
                    argument(selector, arguments);
                    for variant in variants {
                        gather(&variant.value, arguments, words);
                        words.push('\n');
                    }
                }
            },
        }
    }
}

fn argument(inline: &ast::InlineExpression<&str>, arguments: &mut BTreeSet<String>) {
    match inline {
        ast::InlineExpression::VariableReference { id } => {
            arguments.insert(id.name.to_owned());
        }
        ast::InlineExpression::StringLiteral { .. } => {}
        other => panic!("only arguments are filled in, found {other:?}"),
    }
}

/// The Rust files under a folder of the project, with their text.
pub(crate) fn sources(folder: &str) -> Vec<(PathBuf, String)> {
    let mut files = Vec::new();
    walk(&root().join(folder), &mut files);
    files
}

fn walk(folder: &Path, files: &mut Vec<(PathBuf, String)>) {
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            walk(&path, files);
        } else if path.extension().is_some_and(|kind| kind == "rs") {
            let text = std::fs::read_to_string(&path).unwrap();
            files.push((path, text));
        }
    }
}

/// The folder of the project.
pub(crate) fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}
