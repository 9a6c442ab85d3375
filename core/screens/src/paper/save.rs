//! Writing a file as a whole or not at all.

use super::{Album, Format, Wanted};
use crate::{Core, Problem, ProblemKind};
use baywalk_paper::{Sheet, Unwritten};
use std::fs::File;
use std::io::{self, BufWriter};
use std::path::Path;

/// Writes a sheet to a file, in the format that is asked for.
pub(crate) fn save(
    core: &Core,
    sheet: &Sheet,
    album: &Album,
    wanted: &Wanted,
    path: &Path,
) -> Result<(), Problem> {
    match wanted.format {
        Format::Html => {
            whole(path, |out| sheet.html(album, out)).map_err(|fault| cant(core, path, &fault))
        }
        Format::Pdf(paper) => {
            let bytes = sheet.pdf(paper, &core.words, album);
            let bytes = bytes.map_err(|fault| unwritten(core, &fault))?;
            save_bytes(core, &bytes, path)
        }
    }
}

/// Writes bytes to a file.
pub(crate) fn save_bytes(core: &Core, bytes: &[u8], path: &Path) -> Result<(), Problem> {
    whole(path, |out| out.write_all(bytes)).map_err(|fault| cant(core, path, &fault))
}

/// A fault of this program.
pub(super) fn unwritten(core: &Core, fault: &Unwritten) -> Problem {
    let args = [("why", fault.to_string().into())];
    let sentence = core.words.fill("report-unwritten", &args);
    Problem::new(ProblemKind::Unexpected, sentence)
}

fn cant(core: &Core, path: &Path, fault: &io::Error) -> Problem {
    let kind = if fault.kind() == io::ErrorKind::StorageFull {
        ProblemKind::StorageFull
    } else {
        ProblemKind::Input
    };
    let args = [
        ("path", path.display().to_string().into()),
        ("why", fault.to_string().into()),
    ];
    Problem::new(kind, core.words.fill("terminal-cant-write", &args))
}

/// Writes beside the file, then puts it in its place: a reader never sees half of one, and what
/// stood there before stays where it fails.
fn whole(path: &Path, write: impl FnOnce(&mut dyn io::Write) -> io::Result<()>) -> io::Result<()> {
    let folder = path
        .parent()
        .filter(|folder| !folder.as_os_str().is_empty());
    folder.map_or(Ok(()), std::fs::create_dir_all)?;
    let mut name = path.file_name().unwrap_or_default().to_owned();
    name.push(".part");
    let part = path.with_file_name(name);
    let written = File::create(&part).and_then(|file| {
        let mut out = BufWriter::new(file);
        write(&mut out)?;
        out.into_inner()
            .map_err(io::IntoInnerError::into_error)?
            .sync_all()
    });
    let placed = written.and_then(|()| std::fs::rename(&part, path));
    if placed.is_err() {
        // What is left of the failed one is of no use to anyone.
        let _ = std::fs::remove_file(&part);
    }
    placed
}
