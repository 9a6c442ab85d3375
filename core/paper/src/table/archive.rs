//! Several files as one: a ZIP archive, so that a phone hands over one thing.

use std::io::{Seek, Write};
use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, DateTime, ZipWriter};

/// Writes files into a ZIP archive: nothing compressed, no time, so that the same files give the same
/// bytes.
///
/// # Errors
/// What the writer says.
pub fn archive(files: &[(String, Vec<u8>)], to: impl Write + Seek) -> std::io::Result<()> {
    let stored = SimpleFileOptions::default()
        .compression_method(CompressionMethod::Stored)
        .last_modified_time(DateTime::default());
    let mut writer = ZipWriter::new(to);
    for (name, bytes) in files {
        writer.start_file(name.as_str(), stored)?;
        writer.write_all(bytes)?;
    }
    writer.finish()?.flush()
}
