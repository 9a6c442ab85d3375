//! Checking an archive, without touching anything.

use super::directory::{Directory, Member};
use super::input::Input;
use super::manifest::Manifest;
use super::member::{self, Kind};
use super::watch::{Count, Step};
use super::{ArchiveFault, MemberFault, Passphrase, Watch, seal};
use crate::ledger::Digest as Chain;
use crate::lines::Lines;
use baywalk_domain::walk::{Act, Ending};
use chrono::{DateTime, FixedOffset};
use sha2::{Digest, Sha256};
use std::collections::BTreeSet;
use std::io::{BufReader, Read, Seek, SeekFrom};
use std::path::Path;

/// How much is read at once.
const BUFFER: usize = 1024 * 1024;

/// An archive that was checked: every byte, every entry.
#[derive(Debug, Clone, PartialEq)]
pub struct Archive {
    /// What it says of itself.
    pub manifest: Manifest,
    /// What its ledger holds.
    pub contents: Contents,
    /// The digests of its entries, in order.
    pub(super) chain: Vec<Chain>,
}

/// What a ledger holds, in short.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Contents {
    /// The number of rigs.
    pub rigs: usize,
    /// The number of walks.
    pub walks: usize,
    /// How many of them were not ended.
    pub open_walks: usize,
    /// The wall clock of the newest entry.
    pub newest: Option<DateTime<FixedOffset>>,
}

/// Checks all of an archive: sizes, names, digests, the chain, each entry, and that all photos that
/// entries name are there or said to be missing.
///
/// # Errors
/// [`ArchiveFault`] with the first thing that does not fit.
pub fn check(
    path: &Path,
    passphrase: Option<&Passphrase>,
    watch: &mut Watch<'_>,
) -> Result<Archive, ArchiveFault> {
    let (mut directory, manifest) = bytes(path, passphrase, watch)?;
    let ledger = directory.find(member::LEDGER)?;
    let mut reading = Reading::default();
    let lines = Lines::new(BufReader::with_capacity(BUFFER, directory.bytes(&ledger)?));
    for line in lines {
        let line = line?;
        reading.chain.push(line.head.digest);
        reading.take(&line.entry);
    }
    let last = reading.chain.last().copied().unwrap_or(Chain::START);
    let entries = u64::try_from(reading.chain.len()).unwrap_or(u64::MAX);
    if (entries, last.to_string()) != (manifest.entries, manifest.head.clone()) {
        return Err(ArchiveFault::Head);
    }
    named(&directory.members, &reading.photos, &manifest.missing)?;
    Ok(Archive {
        manifest,
        contents: reading.contents(),
        chain: reading.chain,
    })
}

/// Checks every byte of an archive against its seal and its manifest, in one reading.
pub(super) fn bytes(
    path: &Path,
    passphrase: Option<&Passphrase>,
    watch: &mut Watch<'_>,
) -> Result<(Directory, Manifest), ArchiveFault> {
    let mut directory = Directory::read(Input::open(path, passphrase)?)?;
    let mut pass = Pass {
        count: Count::new(watch, Step::Checking, directory.length),
        seal: Sha256::new(),
        buffer: vec![0; BUFFER],
    };
    let members = directory.members.clone();
    let mut digests = Vec::new();
    let mut manifest = None;
    let mut at = directory.input.seek(SeekFrom::Start(0))?;
    for member in &members {
        pass.framing(&mut directory.input, member.start.saturating_sub(at))?;
        digests.push(pass.member(&mut directory.input, member)?);
        at = member.start.saturating_add(member.size);
    }
    let sealed = u64::try_from(seal::LENGTH).unwrap_or(u64::MAX);
    let rest = directory.length.saturating_sub(at);
    let framing = rest.checked_sub(sealed).ok_or(ArchiveFault::Seal)?;
    pass.framing(&mut directory.input, framing)?;
    let mut end = Vec::new();
    directory.input.read_to_end(&mut end)?;
    if end != directory.seal || end != seal::text(pass.seal).as_bytes() {
        return Err(ArchiveFault::Seal);
    }
    let found = directory.find(member::MANIFEST)?;
    let mut text = Vec::new();
    directory.bytes(&found)?.read_to_end(&mut text)?;
    manifest.replace(Manifest::read(&text)?);
    let manifest = manifest.ok_or(ArchiveFault::Seal)?;
    listed(&members, &digests, &manifest)?;
    Ok((directory, manifest))
}

/// One reading of all bytes.
struct Pass<'a, 'b> {
    count: Count<'a, 'b>,
    seal: Sha256,
    buffer: Vec<u8>,
}

impl Pass<'_, '_> {
    fn framing(&mut self, input: &mut Input, length: u64) -> Result<(), ArchiveFault> {
        self.read(input, length, |pass, bytes| pass.update(bytes))
    }

    /// Reads a member; gives its digest. The bytes of a photo do not count for the seal.
    fn member(&mut self, input: &mut Input, member: &Member) -> Result<String, ArchiveFault> {
        let mut own = Sha256::new();
        let apart = matches!(member.kind, Kind::Photo(_));
        self.read(input, member.size, |seal, bytes| {
            own.update(bytes);
            if !apart {
                seal.update(bytes);
            }
        })?;
        let digest = seal::text(own);
        match member.kind {
            Kind::Photo(named) if named.to_string() != digest => {
                Err(ArchiveFault::member(&member.name, MemberFault::Bytes))
            }
            _ => Ok(digest),
        }
    }

    fn read(
        &mut self,
        input: &mut Input,
        length: u64,
        mut take: impl FnMut(&mut Sha256, &[u8]),
    ) -> Result<(), ArchiveFault> {
        let mut left = length;
        while left > 0 {
            let most = usize::try_from(left).unwrap_or(usize::MAX).min(BUFFER);
            let buffer = self.buffer.get_mut(..most).unwrap_or_default();
            let read = input.read(buffer)?;
            let bytes = buffer.get(..read).unwrap_or_default();
            if bytes.is_empty() {
                let cut = "it ends before its last member".to_owned();
                return Err(ArchiveFault::NotAnArchive(cut));
            }
            take(&mut self.seal, bytes);
            let read = u64::try_from(read).unwrap_or(left);
            left = left.saturating_sub(read);
            self.count.add(read)?;
        }
        Ok(())
    }
}

/// Sees that the manifest lists what is there, in its order, and nothing else.
fn listed(members: &[Member], digests: &[String], says: &Manifest) -> Result<(), ArchiveFault> {
    let there: Vec<(&Member, &String)> = members
        .iter()
        .zip(digests)
        .filter(|(member, _)| member.kind != Kind::Manifest)
        .collect();
    for (place, listed) in says.members.iter().enumerate() {
        let Some((member, digest)) = there.get(place) else {
            return Err(ArchiveFault::member(&listed.name, MemberFault::Missing));
        };
        if member.name != listed.name {
            return Err(ArchiveFault::member(&listed.name, MemberFault::Missing));
        }
        if (member.size, *digest) != (listed.size, &listed.sha256) {
            return Err(ArchiveFault::member(&listed.name, MemberFault::Bytes));
        }
    }
    match there.get(says.members.len()) {
        Some((member, _)) => Err(ArchiveFault::member(&member.name, MemberFault::NotNamed)),
        None => Ok(()),
    }
}

/// Sees that the photos are those that entries name.
fn named(
    members: &[Member],
    photos: &BTreeSet<String>,
    missing: &[String],
) -> Result<(), ArchiveFault> {
    let mut there = BTreeSet::new();
    for member in members {
        if let Kind::Photo(digest) = member.kind {
            let digest = digest.to_string();
            if !photos.contains(&digest) {
                return Err(ArchiveFault::member(&member.name, MemberFault::NotNamed));
            }
            there.insert(digest);
        }
    }
    let lost = photos
        .iter()
        .find(|photo| !there.contains(*photo) && !missing.contains(photo));
    match lost {
        Some(photo) => Err(ArchiveFault::member(photo, MemberFault::Missing)),
        None => Ok(()),
    }
}

/// What is gathered while the ledger is read.
#[derive(Default)]
struct Reading {
    chain: Vec<Chain>,
    photos: BTreeSet<String>,
    rigs: BTreeSet<baywalk_domain::ids::RigId>,
    walks: usize,
    ended: usize,
    newest: Option<DateTime<FixedOffset>>,
}

impl Reading {
    fn take(&mut self, entry: &baywalk_domain::walk::Entry) {
        match &entry.act {
            Act::Book(_) => {
                self.rigs.insert(entry.rig);
            }
            Act::Photo { digest, .. } => {
                self.photos.insert(digest.clone());
            }
            Act::Start { .. } => self.walks += 1,
            Act::End(Ending::Whole | Ending::Early(_)) => self.ended += 1,
            _ => {}
        }
        self.newest = self.newest.max(Some(entry.at.wall));
    }

    fn contents(&self) -> Contents {
        Contents {
            rigs: self.rigs.len(),
            walks: self.walks,
            open_walks: self.walks.saturating_sub(self.ended),
            newest: self.newest,
        }
    }
}
