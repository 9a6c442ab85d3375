//! Rigs from files and layouts, and back to files.

use crate::{Core, Problem};
use baywalk_domain::ids::{ActId, RigId};
use baywalk_domain::rig::{Book, BookChange};
use baywalk_domain::walk::Act;
use baywalk_logbook::rigfile::{self, Fault, FaultKind, Files, Limit, NamedText, RecordKind};
use baywalk_words::Words;
use serde::Serialize;

/// Reads a rig from its two files; nothing is stored.
///
/// # Errors
/// [`Problem`] with a sentence for every fault of the files, a line each.
pub fn read(
    core: &Core,
    toml: &NamedText<'_>,
    csv: &NamedText<'_>,
    ids: ActId,
) -> Result<Book, Problem> {
    rigfile::read(toml, csv, ids).map_err(|faults| self::faults(core, &faults))
}

/// All faults of rig files, a line each, and that nothing is stored.
#[must_use]
pub fn faults(core: &Core, faults: &[Fault]) -> Problem {
    let mut lines: Vec<String> = faults.iter().map(|fault| sentence(core, fault)).collect();
    lines.push(
        core.words
            .fill("file-nothing-stored", &[("count", faults.len().into())]),
    );
    Problem::input(lines.join("\n"))
}

/// A layout that comes with the tool.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct LayoutLine {
    /// Its code.
    pub code: String,
    /// What it is.
    pub words: String,
}

/// The key of what a layout is for.
fn about(code: &str) -> &'static str {
    match code {
        "sample-motorhome" => "layout-sample-motorhome",
        "sample-trailer" => "layout-sample-trailer",
        "starter-motorhome-50a" => "layout-starter-motorhome-50a",
        "starter-trailer-30a" => "layout-starter-trailer-30a",
        "starter-van-dc" => "layout-starter-van-dc",
        "starter-empty-motorhome" => "layout-starter-empty-motorhome",
        "starter-empty-trailer" => "layout-starter-empty-trailer",
        _ => "layout-other",
    }
}

/// The layouts that come with the tool.
#[must_use]
pub fn layouts(words: &Words) -> Vec<LayoutLine> {
    let all = rigfile::layouts().iter();
    all.map(|layout| LayoutLine {
        code: layout.code.to_owned(),
        words: words.say(about(layout.code)),
    })
    .collect()
}

/// Loads a rig from its two files as a new one.
///
/// # Errors
/// [`Problem`] with every fault of the files, or where the rig can't be stored; nothing is stored
/// then.
pub fn load(core: &mut Core, toml: &NamedText<'_>, csv: &NamedText<'_>) -> Result<RigId, Problem> {
    let ids = ActId::new(core.logbook.new_id());
    let book = read(core, toml, csv, ids)?;
    store(core, book)
}

/// Takes a layout that comes with the tool as a new rig, under a name of one's own.
///
/// # Errors
/// [`Problem`] where there is no such layout, the name is empty, or the rig can't be stored.
pub fn start_from(core: &mut Core, layout: &str, name: &str) -> Result<RigId, Problem> {
    let known = rigfile::layouts().iter().find(|known| known.code == layout);
    let found = known.ok_or_else(|| {
        let expected: Vec<&str> = rigfile::layouts()
            .iter()
            .map(|layout| layout.code)
            .collect();
        let args = [
            ("found", layout.into()),
            ("expected", expected.join(", ").into()),
        ];
        Problem::not_found(core.words.fill("fault-unknown-code", &args))
    })?;
    let ids = ActId::new(core.logbook.new_id());
    let mut book = found.book(ids).map_err(|found| faults(core, &found))?;
    name.trim().clone_into(&mut book.rig.name);
    store(core, book)
}

fn store(core: &mut Core, book: Book) -> Result<RigId, Problem> {
    let rig = book.rig.id;
    core.act(rig, Act::Book(BookChange::Whole(Box::new(book))))?;
    Ok(rig)
}

/// Writes a rig to the text of its two files.
///
/// # Errors
/// [`Problem`] where there is no such rig.
pub fn write(core: &Core, rig: RigId) -> Result<Files, Problem> {
    Ok(rigfile::write(&*core.logbook.shared_book(rig)?))
}

/// One fault in a sentence, with its file, line and column.
fn sentence(core: &Core, fault: &Fault) -> String {
    let words = &core.words;
    let key = if fault.field.is_empty() {
        "file-at-no-field"
    } else {
        "file-at"
    };
    words.fill(
        key,
        &[
            ("file", fault.file.clone().into()),
            ("line", fault.line.into()),
            ("column", fault.column.into()),
            ("field", fault.field.clone().into()),
            ("fault", kind(core, &fault.kind).into()),
        ],
    )
}

fn kind(core: &Core, kind: &FaultKind) -> String {
    let words = &core.words;
    match kind {
        FaultKind::TooMany { what, found, most } => {
            let key = match what {
                Limit::Bytes => "file-too-many-bytes",
                Limit::Records => "file-too-many-records",
                Limit::Points => "file-too-many-points",
                Limit::Columns => "file-too-many-columns",
                Limit::Faults => "file-too-many-faults",
            };
            words.fill(key, &[("found", (*found).into()), ("most", (*most).into())])
        }
        FaultKind::NotUtf8 => words.say("file-not-utf8"),
        FaultKind::Syntax { .. } => words.say("file-syntax"),
        FaultKind::Separator { found } => {
            words.fill("file-separator", &[("found", found.to_string().into())])
        }
        FaultKind::OpenQuote => words.say("file-open-quote"),
        FaultKind::Newer { found, known } => words.fill(
            "file-newer",
            &[
                ("found", found.to_string().into()),
                ("known", known.to_string().into()),
            ],
        ),
        FaultKind::UnknownField { expected } => words.fill(
            "file-unknown-field",
            &[("expected", expected.join(", ").into())],
        ),
        FaultKind::RepeatedField => words.say("file-repeated-field"),
        FaultKind::Missing => words.say("file-missing"),
        FaultKind::MissingOneOf { expected } => words.fill(
            "file-missing-one-of",
            &[("expected", expected.join(", ").into())],
        ),
        FaultKind::TooManyCells { found, expected } => words.fill(
            "file-too-many-cells",
            &[("found", (*found).into()), ("expected", (*expected).into())],
        ),
        FaultKind::Type { found, expected } => words.fill(
            "file-type",
            &[("found", (*found).into()), ("expected", (*expected).into())],
        ),
        other => value(core, other),
    }
}

/// Faults of one value.
fn value(core: &Core, kind: &FaultKind) -> String {
    let words = &core.words;
    let found = |key, found: &str| words.fill(key, &[("found", found.into())]);
    match kind {
        FaultKind::Unknown(fault) => words.unknown_code(fault),
        FaultKind::Code(fault) => words.code_fault(fault),
        FaultKind::Feed(fault) => words.feed_fault(fault),
        FaultKind::Quantity(fault) => words.stated_fault(fault),
        FaultKind::Length(fault) => words.length_fault(fault),
        FaultKind::Thread(fault) => words.thread_fault(fault),
        FaultKind::WireSize(fault) => words.wire_size_fault(fault),
        FaultKind::Range { found: text } => found("file-range", text),
        FaultKind::Whole { found, least, most } => {
            let args = [
                ("found", found.clone().into()),
                ("least", least.to_string().into()),
                ("most", most.to_string().into()),
            ];
            words.fill("file-whole", &args)
        }
        FaultKind::YesNo { found: text } => found("file-yes-no", text),
        FaultKind::Date { found: text } => found("file-date", text),
        FaultKind::Terminal(fault) => words.terminal_fault(fault),
        FaultKind::Book(fault) => words.book_fault(fault),
        other => reference(core, other),
    }
}

/// Faults of what one record says of another.
fn reference(core: &Core, kind: &FaultKind) -> String {
    let words = &core.words;
    match kind {
        FaultKind::Taken {
            code,
            first_file,
            first_line,
        } => words.fill(
            "file-taken",
            &[
                ("code", code.to_string().into()),
                ("file", first_file.clone().into()),
                ("line", (*first_line).into()),
            ],
        ),
        FaultKind::NoSuch { what, found } => {
            let key = match what {
                RecordKind::Source => "file-no-such-source",
                RecordKind::Bay => "file-no-such-bay",
                RecordKind::Device => "file-no-such-device",
            };
            words.fill(key, &[("code", found.to_string().into())])
        }
        FaultKind::NoSuchSet { found, expected } => words.fill(
            "file-no-such-set",
            &[
                ("found", found.clone().into()),
                ("expected", expected.join(", ").into()),
            ],
        ),
        FaultKind::RepeatedSet { found } => {
            words.fill("file-repeated-set", &[("found", found.clone().into())])
        }
        FaultKind::Needs { other } => words.fill("file-needs", &[("other", (*other).into())]),
        FaultKind::Clashes { other } => words.fill("file-clashes", &[("other", (*other).into())]),
        other => other.to_string(),
    }
}
