//! The JSON Schema of a line.

use crate::ledger::KINDS;
use crate::stored::{Body, Entry};
use schemars::Schema;
use schemars::generate::SchemaSettings;
use serde_json::{Map, Value, json};

/// The JSON Schema (draft 2020-12) that every line of a file of entries fits.
///
/// A body is described in the form in which its kind is written now; of an older version it is told
/// that it has an act and what was shown, no more.
///
/// # Example
/// ```
/// let schema = baywalk_logbook::lines::schema();
/// assert_eq!(schema.get("$schema").and_then(|url| url.as_str()),
///     Some("https://json-schema.org/draft/2020-12/schema"));
/// ```
#[must_use]
pub fn schema() -> Schema {
    let mut generator = SchemaSettings::draft2020_12().into_generator();
    let entry = generator.subschema_for::<Entry>();
    let body = generator.subschema_for::<Body>();
    let kinds: Vec<Value> = KINDS
        .iter()
        .flat_map(|kind| [Some(written(*kind, &body)), older(*kind)])
        .flatten()
        .collect();
    let digest = json!({ "type": "string", "pattern": "^[0-9a-f]{64}$" });
    let line = record(&[
        ("digest", digest.clone()),
        ("entry", json!({ "allOf": [entry, { "oneOf": kinds }] })),
    ]);
    let last = json!({ "type": "integer", "minimum": 0 });
    let end = record(&[("end", record(&[("digest", digest), ("seq", last)]))]);
    let mut root = Map::new();
    let dialect = "https://json-schema.org/draft/2020-12/schema";
    root.insert("$schema".to_owned(), dialect.into());
    root.insert("title".to_owned(), "Baywalk entries, one line".into());
    root.insert("oneOf".to_owned(), json!([line, end]));
    root.insert("$defs".to_owned(), generator.take_definitions(true).into());
    root.into()
}

/// An object of just these fields, all of them there.
fn record(fields: &[(&str, Value)]) -> Value {
    let names: Vec<&str> = fields.iter().map(|(name, _)| *name).collect();
    let fields: Map<String, Value> = fields
        .iter()
        .map(|(name, schema)| ((*name).to_owned(), schema.clone()))
        .collect();
    json!({
        "type": "object",
        "properties": fields,
        "required": names,
        "additionalProperties": false,
    })
}

/// An entry of a kind as it is written now: its act is of that kind.
fn written((kind, version): (&str, u32), body: &Schema) -> Value {
    let act = json!({ "anyOf": [{ "const": kind }, { "type": "object", "required": [kind] }] });
    json!({ "properties": {
        "kind": { "const": kind },
        "version": { "const": version },
        "body": { "allOf": [body, { "properties": { "act": act } }] },
    }})
}

/// An entry of a kind in an older version, where there is any.
fn older((kind, version): (&str, u32)) -> Option<Value> {
    (version > 1).then(|| {
        json!({ "properties": {
            "kind": { "const": kind },
            "version": { "minimum": 1, "maximum": version - 1 },
            "body": { "type": "object", "required": ["act", "shown"] },
        }})
    })
}
