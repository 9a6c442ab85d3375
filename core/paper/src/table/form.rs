//! Records as CSV text.

use csv::{Terminator, WriterBuilder};

/// Writes records with commas and CR LF, quoted where they must be.
pub(super) fn records(records: impl Iterator<Item = Vec<String>>) -> String {
    let mut writer = WriterBuilder::new()
        .terminator(Terminator::CRLF)
        .from_writer(Vec::new());
    for record in records {
        // Writing to memory can't fail, and all records are as long as the header.
        let _ = writer.write_record(record);
    }
    let bytes = writer.into_inner().unwrap_or_default();
    String::from_utf8(bytes).unwrap_or_default()
}
