//! Changing a rig's book, on a walk too: records are written as in the rig's files, so that the same
//! columns, checks and faults hold for a file, a command and a form.

use crate::{Core, Problem, Told, files};
use baywalk_domain::ids::{ActId, RigId};
use baywalk_domain::rig::{Book, BookChange, Code};
use baywalk_domain::walk::Act;
use baywalk_logbook::rigfile::{self, Files, NamedText, PatchFault};

/// Brings a rig's book to what its two files say, one change after another.
///
/// Records are known by their codes. A record that the files no longer have is retired; its past
/// stays.
///
/// # Errors
/// [`Problem`] with every fault of the files, or the first change that the rules refuse; what was
/// changed before it stands.
pub fn amend(
    core: &mut Core,
    rig: RigId,
    toml: &NamedText<'_>,
    csv: &NamedText<'_>,
) -> Result<Vec<Told>, Problem> {
    let ids = ActId::new(core.logbook.new_id());
    let changes = changes(core, rig, (toml, csv), ids)?;
    changes
        .into_iter()
        .map(|change| core.act(rig, Act::Book(change)))
        .collect()
}

/// The changes that bring a rig's book to what its two files say; `ids` names the records they add.
///
/// # Errors
/// [`Problem`] with every fault of the files, or where there is no such rig.
pub fn changes(
    core: &Core,
    rig: RigId,
    (toml, csv): (&NamedText<'_>, &NamedText<'_>),
    ids: ActId,
) -> Result<Vec<BookChange>, Problem> {
    let old = core.logbook.shared_book(rig)?;
    Ok(difference(&old, files::read(core, toml, csv, ids)?))
}

/// The changes that bring one book to another that was read anew from files; records are known by
/// their codes.
#[must_use]
pub fn difference(old: &Book, new: Book) -> Vec<BookChange> {
    differences(old, &adopt(old, new))
}

/// Gives the records of a new book the names that their codes have in the old one.
fn adopt(old: &Book, mut new: Book) -> Book {
    new.rig.id = old.rig.id;
    let sources = renames(&old.sources, &new.sources, |r| (r.code.clone(), r.id));
    let bays = renames(&old.bays, &new.bays, |r| (r.code.clone(), r.id));
    let devices = renames(&old.devices, &new.devices, |r| (r.code.clone(), r.id));
    let points = renames(&old.points, &new.points, |r| (r.code.clone(), r.id));
    let tools = renames(&old.tools, &new.tools, |r| (r.code.clone(), r.id));
    for source in &mut new.sources {
        source.id = sources(source.id);
    }
    for bay in &mut new.bays {
        bay.id = bays(bay.id);
        for source in &mut bay.fed_by {
            *source = sources(*source);
        }
    }
    for device in &mut new.devices {
        device.id = devices(device.id);
        device.bay = bays(device.bay);
    }
    for point in &mut new.points {
        point.id = points(point.id);
        point.device = devices(point.device);
    }
    for tool in &mut new.tools {
        tool.id = tools(tool.id);
    }
    // The files tell of no photos; what the book has of them stays.
    new.bay_photos.clone_from(&old.bay_photos);
    new
}

/// Turns the names of new records into those of old ones with the same code.
fn renames<T, I: Copy + PartialEq>(
    old: &[T],
    new: &[T],
    key: fn(&T) -> (Code, I),
) -> impl Fn(I) -> I + use<T, I> {
    let known: Vec<(Code, I)> = old.iter().map(key).collect();
    let pairs: Vec<(I, I)> = new
        .iter()
        .filter_map(|record| {
            let (code, id) = key(record);
            known
                .iter()
                .find(|(known, _)| *known == code)
                .map(|(_, old)| (id, *old))
        })
        .collect();
    move |id| {
        pairs
            .iter()
            .find(|(new, _)| *new == id)
            .map_or(id, |(_, old)| *old)
    }
}

/// The changes from one book to another, in an order in which each finds what it names.
fn differences(old: &Book, new: &Book) -> Vec<BookChange> {
    let mut changes = Vec::new();
    if old.rig != new.rig {
        changes.push(BookChange::Rig(Box::new(new.rig.clone())));
    }
    put(
        &old.sources,
        &new.sources,
        |r| &r.code,
        |r| r.retired = true,
        &mut |r| changes.push(BookChange::Source(Box::new(r))),
    );
    put(
        &old.bays,
        &new.bays,
        |r| &r.code,
        |r| r.retired = true,
        &mut |r| changes.push(BookChange::Bay(Box::new(r))),
    );
    put(
        &old.devices,
        &new.devices,
        |r| &r.code,
        |r| r.retired = true,
        &mut |r| changes.push(BookChange::Device(Box::new(r))),
    );
    put(
        &old.points,
        &new.points,
        |r| &r.code,
        |r| r.retired = true,
        &mut |r| changes.push(BookChange::Point(Box::new(r))),
    );
    put(
        &old.tools,
        &new.tools,
        |r| &r.code,
        |r| r.retired = true,
        &mut |r| changes.push(BookChange::Tool(Box::new(r))),
    );
    changes
}

/// Puts what is new or changed, and retires what is gone.
fn put<T: Clone + PartialEq>(
    old: &[T],
    new: &[T],
    code: impl Fn(&T) -> &Code,
    retire: impl Fn(&mut T),
    push: &mut dyn FnMut(T),
) {
    for record in new {
        if !old.contains(record) {
            push(record.clone());
        }
    }
    for record in old {
        if new.iter().all(|kept| code(kept) != code(record)) {
            let mut gone = record.clone();
            retire(&mut gone);
            if gone != *record {
                push(gone);
            }
        }
    }
}

/// Adds a record to a rig's book, on a walk too: `source`, `bay`, `device`, `tool` or `point`, with
/// the fields that its file has for it.
///
/// # Errors
/// [`Problem`] with every fault of the fields, or where the rules refuse it.
pub fn add(
    core: &mut Core,
    rig: RigId,
    record: &str,
    fields: &[(String, String)],
) -> Result<Vec<Told>, Problem> {
    let files = files::write(core, rig)?;
    let files = rigfile::add(&files, record, fields).map_err(|fault| patch(core, &fault))?;
    amend_with(core, rig, &files)
}

/// Changes fields of the record with a code.
///
/// # Errors
/// [`Problem`] where there is no such record, with every fault of the fields, or where the rules
/// refuse it.
pub fn change(
    core: &mut Core,
    rig: RigId,
    code: &str,
    fields: &[(String, String)],
) -> Result<Vec<Told>, Problem> {
    let code = Code::parse(code).map_err(|fault| Problem::input(core.words.code_fault(&fault)))?;
    let files = files::write(core, rig)?;
    let files = rigfile::patch(&files, &code, fields).map_err(|fault| patch(core, &fault))?;
    amend_with(core, rig, &files)
}

/// Retires the record with a code; its past stays.
///
/// # Errors
/// [`Problem`] where there is no such record or the rules refuse it.
pub fn retire(core: &mut Core, rig: RigId, code: &str) -> Result<Vec<Told>, Problem> {
    let of_table = core
        .logbook
        .book(rig)?
        .points
        .iter()
        .any(|point| Some(&point.code) == Code::parse(code).ok().as_ref());
    let word = if of_table { "yes" } else { "true" };
    change(core, rig, code, &[("retired".to_owned(), word.to_owned())])
}

/// Changes the book by one line, as it is typed in the middle of a walk: `add point code=F15 …`,
/// `change F8 torque=45 lbf.in torque_basis=label`, `retire F8`.
///
/// # Errors
/// [`Problem`] where the line can't be read, or as [`add`], [`change`] and [`retire`].
pub(crate) fn line(core: &mut Core, rig: RigId, text: &str) -> Result<Told, Problem> {
    let mut words = text.split_whitespace();
    let (verb, what) = (
        words.next().unwrap_or_default(),
        words.next().unwrap_or_default(),
    );
    let fields = spaced(words);
    let told = match verb {
        "add" => add(core, rig, what, &fields)?,
        "change" => change(core, rig, what, &fields)?,
        "retire" => retire(core, rig, what)?,
        _ => {
            return Err(Problem::input(
                core.words.fill("book-no-line", &[("found", text.into())]),
            ));
        }
    };
    let told = told.into_iter().last();
    told.ok_or_else(|| Problem::input(core.words.say("book-nothing")))
}

/// Fields whose values may have blanks in them: a value goes on to the next `name=`.
fn spaced<'a>(words: impl Iterator<Item = &'a str>) -> Vec<(String, String)> {
    let mut fields: Vec<(String, String)> = Vec::new();
    for word in words {
        match (word.split_once('='), fields.last_mut()) {
            (Some((name, value)), _) => fields.push((name.to_owned(), value.to_owned())),
            (None, Some((_, value))) => *value = format!("{value} {word}"),
            (None, None) => fields.push((word.to_owned(), String::new())),
        }
    }
    fields
}

fn amend_with(core: &mut Core, rig: RigId, files: &Files) -> Result<Vec<Told>, Problem> {
    let (toml, csv) = files.named();
    amend(core, rig, &toml, &csv)
}

/// Why a record can't be changed, in words.
pub(crate) fn patch(core: &Core, fault: &PatchFault) -> Problem {
    let words = &core.words;
    match fault {
        PatchFault::Unreadable => Problem::input(words.say("file-syntax")),
        PatchFault::NoCode(code) => core.no_code(code.as_str()),
        PatchFault::NoColumn(found) => {
            Problem::input(words.fill("book-no-column", &[("found", found.into())]))
        }
    }
}
