//! Changing one record in the text of a rig's files, as a person would in the editor.

use super::Files;
use baywalk_domain::rig::Code;
use toml_edit::{ArrayOfTables, DocumentMut, Item, Table, Value};

/// The parts of the files that hold records with a code.
const PARTS: [&str; 4] = ["source", "bay", "device", "tool"];

/// Why a record can't be changed in the text.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum PatchFault {
    /// The texts are no rig files.
    #[error("the texts are no rig files")]
    Unreadable,
    /// No record has the code.
    #[error("no record has the code {0}")]
    NoCode(Code),
    /// The table has no such column.
    #[error("the table of points has no column {0:?}")]
    NoColumn(String),
}

/// Sets fields of the record that has a code: keys of a source, bay, device or tool, columns of a
/// point. A value is text; for a key it may also be written as TOML has it, such as `["S1", "S2"]`.
///
/// # Errors
/// [`PatchFault`] where the texts are no rig files or nothing has the code.
pub fn patch(files: &Files, code: &Code, fields: &[(String, String)]) -> Result<Files, PatchFault> {
    let mut document: DocumentMut = files.toml.parse().map_err(|_| PatchFault::Unreadable)?;
    let mut parts = PARTS.iter();
    let part = parts.find(|part| find(&mut document, part, code).is_some());
    match part.and_then(|part| find(&mut document, part, code)) {
        Some(table) => {
            fill(table, fields);
            Ok(Files {
                toml: document.to_string(),
                csv: files.csv.clone(),
            })
        }
        None => Ok(Files {
            toml: files.toml.clone(),
            csv: patch_row(&files.csv, Some(code), fields)?,
        }),
    }
}

/// Adds a record to a part of the files: `source`, `bay`, `device`, `tool`, or else `point`.
///
/// # Errors
/// [`PatchFault`] where the texts are no rig files.
pub fn add(files: &Files, part: &str, fields: &[(String, String)]) -> Result<Files, PatchFault> {
    if !PARTS.contains(&part) {
        return Ok(Files {
            toml: files.toml.clone(),
            csv: patch_row(&files.csv, None, fields)?,
        });
    }
    let mut document: DocumentMut = files.toml.parse().map_err(|_| PatchFault::Unreadable)?;
    let tables = document
        .entry(part)
        .or_insert(Item::ArrayOfTables(ArrayOfTables::new()));
    let tables = tables
        .as_array_of_tables_mut()
        .ok_or(PatchFault::Unreadable)?;
    let mut table = Table::new();
    fill(&mut table, fields);
    tables.push(table);
    Ok(Files {
        toml: document.to_string(),
        csv: files.csv.clone(),
    })
}

/// The fields of the record that has a code, as they stand in the files: empty cells of a point too.
///
/// # Errors
/// [`PatchFault`] where the texts are no rig files or nothing has the code.
pub fn fields(files: &Files, code: &Code) -> Result<Vec<(String, String)>, PatchFault> {
    let mut document: DocumentMut = files.toml.parse().map_err(|_| PatchFault::Unreadable)?;
    for part in PARTS {
        if let Some(table) = find(&mut document, part, code) {
            let text = |item: &Item| {
                item.as_str()
                    .map_or_else(|| item.to_string(), str::to_owned)
            };
            let pairs = table.iter().map(|(key, item)| (key.to_owned(), text(item)));
            return Ok(pairs
                .map(|(key, text)| (key, text.trim().to_owned()))
                .collect());
        }
    }
    let mut reader = csv::Reader::from_reader(files.csv.as_bytes());
    let unreadable = |_| PatchFault::Unreadable;
    let head = reader.headers().map_err(unreadable)?.clone();
    let at = head.iter().position(|column| column == "code");
    for row in reader.records() {
        let row = row.map_err(unreadable)?;
        let own = at.and_then(|at| Code::parse(row.get(at)?).ok());
        if own.as_ref() == Some(code) {
            let pairs = head.iter().zip(row.iter());
            return Ok(pairs
                .map(|(column, cell)| (column.to_owned(), cell.to_owned()))
                .collect());
        }
    }
    Err(PatchFault::NoCode(code.clone()))
}

fn find<'a>(document: &'a mut DocumentMut, part: &str, code: &Code) -> Option<&'a mut Table> {
    let tables = document.get_mut(part)?.as_array_of_tables_mut()?;
    tables.iter_mut().find(|table| {
        let text = table.get("code").and_then(Item::as_str);
        text.and_then(|text| Code::parse(text).ok()).as_ref() == Some(code)
    })
}

/// The keys whose values are text whatever they look like: a bay may be called 12.
const TEXTS: [&str; 6] = ["code", "name", "place", "keep_out", "how", "note"];

/// Sets keys; an empty value takes the key out.
fn fill(table: &mut Table, fields: &[(String, String)]) {
    for (key, text) in fields {
        if text.is_empty() {
            table.remove(key);
            continue;
        }
        let written: Result<Value, _> = text.parse();
        let value = match written {
            Ok(value) if !value.is_float() && !TEXTS.contains(&key.as_str()) => value,
            _ => Value::from(text.as_str()),
        };
        table.insert(key, Item::Value(value));
    }
}

/// Sets cells of the row with a code, or of a new row behind the last.
fn patch_row(
    csv: &str,
    code: Option<&Code>,
    fields: &[(String, String)],
) -> Result<String, PatchFault> {
    let mut reader = csv::ReaderBuilder::new()
        .flexible(true)
        .from_reader(csv.as_bytes());
    let head = reader
        .headers()
        .map_err(|_| PatchFault::Unreadable)?
        .clone();
    let place = |column: &str| head.iter().position(|known| known == column);
    let at_code = place("code").ok_or(PatchFault::Unreadable)?;
    let mut rows: Vec<Vec<String>> = Vec::new();
    for row in reader.records() {
        let row = row.map_err(|_| PatchFault::Unreadable)?;
        let cells = (0..head.len()).map(|at| row.get(at).unwrap_or_default().to_owned());
        rows.push(cells.collect());
    }
    let has = |row: &Vec<String>, code: &Code| {
        row.get(at_code)
            .and_then(|cell| Code::parse(cell).ok())
            .as_ref()
            == Some(code)
    };
    let row = match code {
        Some(code) => rows
            .iter_mut()
            .find(|row| has(row, code))
            .ok_or_else(|| PatchFault::NoCode(code.clone()))?,
        None => {
            rows.push(vec![String::new(); head.len()]);
            rows.last_mut().ok_or(PatchFault::Unreadable)?
        }
    };
    for (column, text) in fields {
        let cell = place(column).and_then(|at| row.get_mut(at));
        text.clone_into(cell.ok_or_else(|| PatchFault::NoColumn(column.clone()))?);
    }
    written(&head, &rows).ok_or(PatchFault::Unreadable)
}

fn written(head: &csv::StringRecord, rows: &[Vec<String>]) -> Option<String> {
    let mut writer = csv::Writer::from_writer(Vec::new());
    writer.write_record(head).ok()?;
    for row in rows {
        writer.write_record(row).ok()?;
    }
    String::from_utf8(writer.into_inner().ok()?).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn files() -> Files {
        Files {
            toml: "format = 1\n[[bay]]\ncode = \"A\"\nname = \"nose\"\n".to_owned(),
            csv: "code,device,name,torque\nA1,ATS,\"L1, in\",45 lbf.in\n".to_owned(),
        }
    }

    fn field(name: &str, text: &str) -> (String, String) {
        (name.to_owned(), text.to_owned())
    }

    #[test]
    fn a_point_is_changed_and_the_rest_stays() {
        let code = Code::parse("a1").unwrap();
        let changed = patch(&files(), &code, &[field("torque", "50 lbf.in")]).unwrap();
        assert_eq!(
            changed.csv,
            "code,device,name,torque\nA1,ATS,\"L1, in\",50 lbf.in\n"
        );
        assert_eq!(changed.toml, files().toml);
        let none = Code::parse("Z9").unwrap();
        assert_eq!(patch(&files(), &none, &[]), Err(PatchFault::NoCode(none)));
    }

    #[test]
    fn the_fields_of_a_record_are_told_as_they_stand() {
        let of = |code| fields(&files(), &Code::parse(code).unwrap()).unwrap();
        assert_eq!(of("A"), [field("code", "A"), field("name", "nose")]);
        let point = of("A1");
        assert_eq!(
            point[2..],
            [field("name", "L1, in"), field("torque", "45 lbf.in")]
        );
    }

    #[test]
    fn a_bay_is_changed_and_added_with_lists_and_text() {
        let code = Code::parse("A").unwrap();
        let fields = [field("fed_by", "[\"S1\"]"), field("name", "under the bed")];
        let changed = patch(&files(), &code, &fields).unwrap();
        assert!(changed.toml.contains("fed_by = [\"S1\"]"));
        assert!(changed.toml.contains("name = \"under the bed\""));
        let numbered = patch(&changed, &code, &[field("name", "12")]).unwrap();
        assert!(numbered.toml.contains("name = \"12\""));
        let added = add(
            &changed,
            "bay",
            &[field("code", "B"), field("station", "500")],
        )
        .unwrap();
        assert!(added.toml.contains("code = \"B\"\nstation = 500"));
    }
}
