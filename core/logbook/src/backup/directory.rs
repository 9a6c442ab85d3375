//! The directory of an archive: what may be in a backup, and where it lies.

use super::input::Input;
use super::member::{self, Kind};
use super::{ArchiveFault, MOST_MEMBERS, MemberFault, seal};
use std::collections::BTreeSet;
use std::io::{Read, Seek, SeekFrom};
use zip::{CompressionMethod, ZipArchive};

/// One member of an archive.
#[derive(Debug, Clone)]
pub(super) struct Member {
    pub(super) name: String,
    pub(super) kind: Kind,
    /// Where its bytes begin in the file.
    pub(super) start: u64,
    /// How many they are.
    pub(super) size: u64,
}

/// An archive whose directory was read and can be.
pub(super) struct Directory {
    pub(super) input: Input,
    /// In the order in which they lie in the file.
    pub(super) members: Vec<Member>,
    /// The bytes of the whole file.
    pub(super) length: u64,
    /// The seal, as it stands at the end.
    pub(super) seal: Vec<u8>,
}

impl Directory {
    /// Reads the directory; refuses whatever no backup has. Nothing is written anywhere.
    pub(super) fn read(mut input: Input) -> Result<Self, ArchiveFault> {
        let broken = |error: zip::result::ZipError| ArchiveFault::NotAnArchive(error.to_string());
        let length = input.seek(SeekFrom::End(0))?;
        let mut zip = ZipArchive::new(input).map_err(broken)?;
        let seal = zip.comment().to_vec();
        if zip.offset() != 0 || seal.len() != seal::LENGTH {
            return Err(ArchiveFault::Seal);
        }
        if zip.has_duplicate_names() {
            return Err(ArchiveFault::member("*", MemberFault::Twice));
        }
        if zip.len() > MOST_MEMBERS {
            return Err(ArchiveFault::member("*", MemberFault::TooLarge));
        }
        let mut members = Vec::new();
        for index in 0..zip.len() {
            let file = zip.by_index_raw(index).map_err(broken)?;
            members.push(member(&file)?);
        }
        members.sort_by_key(|member| member.start);
        apart(&members, zip.central_directory_start())?;
        Ok(Self {
            input: zip.into_inner(),
            members,
            length,
            seal,
        })
    }

    /// The member of a kind that must be there.
    pub(super) fn find(&self, name: &str) -> Result<Member, ArchiveFault> {
        let found = self.members.iter().find(|member| member.name == name);
        found
            .cloned()
            .ok_or_else(|| ArchiveFault::member(name, MemberFault::Missing))
    }

    /// The bytes of a member.
    pub(super) fn bytes(&mut self, member: &Member) -> std::io::Result<std::io::Take<&mut Input>> {
        self.input.seek(SeekFrom::Start(member.start))?;
        Ok(Read::take(&mut self.input, member.size))
    }
}

/// A member, as far as its headers tell: a plain file with a known name, not packed in any way.
fn member<R: Read>(file: &zip::read::ZipFile<'_, R>) -> Result<Member, ArchiveFault> {
    let raw = String::from_utf8_lossy(file.name_raw()).into_owned();
    let refuse = |why| Err(ArchiveFault::member(&raw, why));
    if !file.is_file() {
        return refuse(MemberFault::NoFile);
    }
    let Some(kind) = member::kind(&raw) else {
        return refuse(MemberFault::Name);
    };
    let stored = file.compression() == CompressionMethod::Stored;
    if file.encrypted() || !stored || file.size() != file.compressed_size() {
        return refuse(MemberFault::Packed);
    }
    if file.size() > kind.most() {
        return refuse(MemberFault::TooLarge);
    }
    let Some(start) = file.data_start() else {
        return refuse(MemberFault::Place);
    };
    Ok(Member {
        kind,
        start,
        size: file.size(),
        name: raw,
    })
}

/// Sees that no member lies over another, over the directory, or has the name of another.
fn apart(members: &[Member], end: u64) -> Result<(), ArchiveFault> {
    let mut names = BTreeSet::new();
    let mut digests = BTreeSet::new();
    let mut free = 0;
    for member in members {
        let behind = member.start.checked_add(member.size);
        let fits = member.start >= free && behind.is_some_and(|behind| behind <= end);
        let (true, Some(behind)) = (fits, behind) else {
            return Err(ArchiveFault::member(&member.name, MemberFault::Place));
        };
        free = behind;
        let photo = match member.kind {
            Kind::Photo(digest) => digests.insert(*digest.bytes()),
            Kind::Ledger | Kind::Manifest => true,
        };
        if !names.insert(&member.name) || !photo {
            return Err(ArchiveFault::member(&member.name, MemberFault::Twice));
        }
    }
    Ok(())
}
