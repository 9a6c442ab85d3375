//! Taking things out of an archive that was checked.

use super::directory::{Directory, Member};
use super::input::Input;
use super::member::{self, Kind};
use super::watch::Count;
use super::{ArchiveFault, MemberFault, Passphrase, RestoreFault};
use crate::ledger::Digest;
use crate::lines::Lines;
use crate::store::StoreFault;
use std::io::{BufReader, Read, Write};
use std::path::Path;

/// An archive, opened to take things out.
pub(crate) struct Taking {
    directory: Directory,
}

impl Taking {
    pub(crate) fn open(path: &Path, passphrase: Option<&Passphrase>) -> Result<Self, ArchiveFault> {
        let directory = Directory::read(Input::open(path, passphrase)?)?;
        Ok(Self { directory })
    }

    /// The lines of its ledger.
    pub(crate) fn lines(&mut self) -> Result<Lines<impl std::io::BufRead>, ArchiveFault> {
        let ledger = self.directory.find(member::LEDGER)?;
        let bytes = self.directory.bytes(&ledger)?;
        Ok(Lines::new(BufReader::new(bytes)))
    }

    /// The bytes of its photos and its ledger together.
    pub(super) fn size(&self) -> u64 {
        self.directory
            .members
            .iter()
            .map(|member| member.size)
            .sum()
    }

    /// Writes its photos into a folder; each is held against its name once more.
    pub(super) fn photos(
        &mut self,
        to: &Path,
        count: &mut Count<'_, '_>,
    ) -> Result<(), RestoreFault> {
        let mut bytes = Vec::new();
        for found in self.directory.members.clone() {
            if let Kind::Photo(digest) = found.kind {
                self.photo(&found, digest, &mut bytes)?;
                photo(to, member::file_of(&found.name), &bytes)?;
                count.add(found.size)?;
            }
        }
        Ok(())
    }

    /// Reads a photo with a digest, where the archive has it; gives the name of its file.
    pub(crate) fn find_photo(&mut self, digest: &str, bytes: &mut Vec<u8>) -> Option<String> {
        let members = self.directory.members.iter();
        let found = members
            .filter_map(|member| match member.kind {
                Kind::Photo(named) if named.to_string() == digest => Some((member.clone(), named)),
                _ => None,
            })
            .next()?;
        self.photo(&found.0, found.1, bytes).ok()?;
        Some(member::file_of(&found.0.name).to_owned())
    }

    fn photo(
        &mut self,
        found: &Member,
        digest: Digest,
        bytes: &mut Vec<u8>,
    ) -> Result<(), ArchiveFault> {
        bytes.clear();
        self.directory.bytes(found)?.read_to_end(bytes)?;
        if Digest::of(bytes) == digest {
            Ok(())
        } else {
            Err(ArchiveFault::member(&found.name, MemberFault::Bytes))
        }
    }
}

/// Writes one photo, lastingly, into a folder that nobody reads yet.
pub(crate) fn photo(folder: &Path, file: &str, bytes: &[u8]) -> Result<(), StoreFault> {
    let path = folder.join(file);
    let written = std::fs::File::create(&path).and_then(|mut out| {
        out.write_all(bytes)?;
        out.sync_all()
    });
    written.map_err(|error| StoreFault::file(&path, &error))
}
