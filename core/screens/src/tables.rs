//! Tables of all rigs for spreadsheets, and one archive of them with the entries.

use crate::{Core, Problem};
use baywalk_domain::due::lives;
use baywalk_paper::table::{RigFacts, Table, WalkFacts, tables as on_paper};
use serde::Serialize;
use std::fs::File;
use std::io::{Seek, Write};
use std::path::Path;

/// Tables that were written.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct TablesScreen {
    /// How many rows each has, by its name.
    pub tables: Vec<TableLine>,
    /// In words.
    pub words: Vec<String>,
}

/// One table.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct TableLine {
    /// The name of its file.
    pub file: String,
    /// Its rows, the header not counted.
    pub rows: u64,
}

/// All tables of all rigs.
///
/// # Errors
/// [`Problem`] where the logbook can't be read.
pub fn tables(core: &Core) -> Result<Vec<Table>, Problem> {
    let mut rigs = Vec::new();
    for rig in core.logbook.rigs()? {
        let book = core.logbook.book(rig)?;
        let known = core.logbook.known(rig)?;
        let mut walks = Vec::new();
        for walk in core.logbook.walks(rig)? {
            let (state, book) = core.logbook.walk_and_book(walk.id)?;
            walks.push(WalkFacts { state, book });
        }
        rigs.push(RigFacts {
            walks,
            findings: core.logbook.findings(rig)?,
            lives: lives(&book, &known),
            timing: core.logbook.timing(rig)?,
            book,
        });
    }
    Ok(on_paper(&rigs))
}

/// What is told of tables that were written.
#[must_use]
pub fn told(core: &Core, tables: &[Table]) -> TablesScreen {
    let lines = tables.iter().map(|table| TableLine {
        file: file(table),
        rows: u64::try_from(table.rows.len()).unwrap_or(u64::MAX),
    });
    let lines: Vec<TableLine> = lines.collect();
    let words = lines.iter().map(|line| {
        let args = [("file", (&line.file).into()), ("rows", line.rows.into())];
        core.words.fill("past-table", &args)
    });
    let words = words.chain([core.words.say("past-tables-guard")]).collect();
    TablesScreen {
        tables: lines,
        words,
    }
}

/// The name of the file of a table.
#[must_use]
pub fn file(table: &Table) -> String {
    format!("{}.csv", table.name)
}

/// Writes all tables and all entries into one new file, a ZIP archive; nothing of it is left where
/// that can't be done.
///
/// # Errors
/// [`Problem`] where the logbook can't be read, or the file is there already or can't be written.
pub fn write(core: &Core, to: &Path) -> Result<TablesScreen, Problem> {
    let cant = |error: std::io::Error| cant_write(core, &error);
    let file = File::create_new(to).map_err(cant)?;
    let synced = file.try_clone();
    let made = archive(core, file).and_then(|screen| {
        let synced = synced.and_then(|file| file.sync_all());
        synced.map_err(cant).map(|()| screen)
    });
    made.inspect_err(|_| {
        // What was begun is of no use; where it can't be removed it is told all the same.
        let _left = std::fs::remove_file(to);
    })
}

/// Writes all tables and all entries as one ZIP archive.
///
/// # Errors
/// [`Problem`] where the logbook can't be read or the archive can't be written.
pub fn archive(core: &Core, to: impl Write + Seek) -> Result<TablesScreen, Problem> {
    let tables = tables(core)?;
    let mut files: Vec<(String, Vec<u8>)> = tables
        .iter()
        .map(|table| (file(table), table.csv().into_bytes()))
        .collect();
    let mut entries = Vec::new();
    let exported = core.logbook.export(&mut entries);
    exported.map_err(|fault| core.storage(&fault))?;
    files.push(("entries.jsonl".to_owned(), entries));
    baywalk_paper::table::archive(&files, to).map_err(|error| cant_write(core, &error))?;
    Ok(told(core, &tables))
}

fn cant_write(core: &Core, why: &dyn std::fmt::Display) -> Problem {
    let args = [("why", why.to_string().into())];
    Problem::input(core.words.fill("past-cant-write", &args))
}
