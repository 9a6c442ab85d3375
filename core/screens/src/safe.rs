//! What is told of backups: faults, what is there, where the logbook comes from.

use crate::core::storage;
use crate::{Core, Problem, ProblemKind, recover};
use baywalk_domain::walk::Act;
use baywalk_logbook::backup::{
    ArchiveFault, BackupFault, MemberFault, Present, Relation, RestoreFault,
};
use baywalk_logbook::ledger::EntryFault;
use baywalk_logbook::lines::{LineFault, LinesFault};
use baywalk_logbook::store::StoreFault;
use baywalk_words::Words;
use chrono::{DateTime, FixedOffset};

/// Why no backup was made.
pub(crate) fn backup_fault(words: &Words, fault: &BackupFault) -> Problem {
    match fault {
        BackupFault::Stopped => Problem::refused(words.say("backup-stopped")),
        BackupFault::Exists(path) => {
            let path = path.display().to_string();
            Problem::input(words.fill("backup-exists", &[("path", path.into())]))
        }
        BackupFault::Store(StoreFault::StorageFull) => {
            Problem::new(ProblemKind::StorageFull, words.say("backup-no-room"))
        }
        BackupFault::Store(fault @ StoreFault::File { path, .. }) => {
            let args = [
                ("path", path.display().to_string().into()),
                ("why", fault.to_string().into()),
            ];
            Problem::input(words.fill("backup-cant-write", &args))
        }
        BackupFault::Store(fault) => storage(words, fault),
        BackupFault::ReadBack(fault) => {
            let why = archive_fault(words, fault).sentence;
            let sentence = words.fill("backup-read-back", &[("why", why.into())]);
            Problem::new(ProblemKind::Damaged, sentence)
        }
    }
}

/// Why a backup was not restored.
pub(crate) fn restore_fault(words: &Words, fault: &RestoreFault) -> Problem {
    match fault {
        RestoreFault::Archive(fault) => archive_fault(words, fault),
        RestoreFault::WouldReplace(there) => {
            let mut told = present(words, there);
            told.push(words.say("restore-say-replace"));
            Problem::refused(told.join(" "))
        }
        RestoreFault::NoRoom { needed, free } => {
            let megabytes = |bytes: u64| (bytes / 1_000_000).into();
            let args = [("needed", megabytes(*needed)), ("free", megabytes(*free))];
            Problem::new(
                ProblemKind::StorageFull,
                words.fill("restore-no-room", &args),
            )
        }
        RestoreFault::Store(fault) => storage(words, fault),
    }
}

/// Why a file is no backup that can be restored.
pub(crate) fn archive_fault(words: &Words, fault: &ArchiveFault) -> Problem {
    let damaged = |sentence| Problem::new(ProblemKind::Damaged, sentence);
    match fault {
        ArchiveFault::Stopped => Problem::refused(words.say("backup-stopped")),
        ArchiveFault::Unread(why) => {
            Problem::input(words.fill("backup-unread", &[("why", why.into())]))
        }
        ArchiveFault::NotAnArchive(_) => damaged(words.say("backup-no-archive")),
        ArchiveFault::NeedsPassphrase => Problem::input(words.say("backup-needs-passphrase")),
        ArchiveFault::WrongPassphrase => Problem::input(words.say("backup-wrong-passphrase")),
        ArchiveFault::TooMuchWork { .. } => Problem::input(words.say("backup-too-much-work")),
        ArchiveFault::TooNew { found, known } => {
            let args = [("found", (*found).into()), ("known", (*known).into())];
            Problem::new(ProblemKind::TooNew, words.fill("backup-too-new", &args))
        }
        ArchiveFault::Member { name, why } => {
            let args = [("name", name.into()), ("why", member(words, *why).into())];
            damaged(words.fill("backup-member", &args))
        }
        ArchiveFault::Seal | ArchiveFault::Head | ArchiveFault::Manifest(_) => {
            damaged(words.say("backup-changed"))
        }
        ArchiveFault::Lines(fault) => lines_fault(words, fault),
    }
}

fn member(words: &Words, why: MemberFault) -> String {
    match why {
        MemberFault::Name => words.say("backup-member-name"),
        MemberFault::Twice => words.say("backup-member-twice"),
        MemberFault::NoFile => words.say("backup-member-no-file"),
        MemberFault::Packed => words.say("backup-member-packed"),
        MemberFault::TooLarge => words.say("backup-member-too-large"),
        MemberFault::Place => words.say("backup-member-place"),
        MemberFault::Bytes => words.say("backup-member-bytes"),
        MemberFault::Missing => words.say("backup-member-missing"),
        MemberFault::NotNamed => words.say("backup-member-not-named"),
    }
}

fn lines_fault(words: &Words, fault: &LinesFault) -> Problem {
    if let LineFault::Entry(EntryFault::TooNew { kind, version }) = &fault.why {
        let found = version.to_string();
        let args = [("kind", kind.into()), ("found", found.into())];
        let sentence = words.fill("storage-newer-entry", &args);
        return Problem::new(ProblemKind::TooNew, sentence);
    }
    let why = match &fault.why {
        LineFault::Digest { found, expected } => {
            let (found, expected) = (found.to_string(), expected.to_string());
            let args = [("found", found.into()), ("expected", expected.into())];
            words.fill("backup-line-digest", &args)
        }
        LineFault::Number { found, expected } => {
            let args = [("found", (*found).into()), ("expected", (*expected).into())];
            words.fill("backup-line-number", &args)
        }
        LineFault::Entry(fault) => {
            words.fill("backup-line-entry", &[("why", fault.to_string().into())])
        }
        LineFault::Cut | LineFault::End | LineFault::Behind => words.say("backup-line-end"),
        LineFault::Unread(_)
        | LineFault::TooLong { .. }
        | LineFault::Form
        | LineFault::NotCanonical
        | LineFault::Twice => words.say("backup-line-form"),
    };
    let args = [("line", fault.line.into()), ("why", why.into())];
    Problem::new(ProblemKind::Damaged, words.fill("backup-line", &args))
}

/// What is there, and how the backup stands to it.
pub(crate) fn present(words: &Words, present: &Present) -> Vec<String> {
    let contents = &present.contents;
    let newest = contents.newest.map(|at| moment(words, &at));
    let holds = words.fill(
        "restore-present",
        &[
            ("rigs", contents.rigs.into()),
            ("walks", contents.walks.into()),
            ("newest", newest.unwrap_or_default().into()),
        ],
    );
    let lost = |key: &str, lost: u64| words.fill(key, &[("lost", lost.into())]);
    match &present.relation {
        Relation::Unreadable(_) => vec![words.say("restore-unreadable")],
        Relation::Same => vec![holds, words.say("restore-same")],
        Relation::Newer { more } => {
            vec![
                holds,
                words.fill("restore-newer", &[("more", (*more).into())]),
            ]
        }
        Relation::Older { lost: count } => vec![holds, lost("restore-older", *count)],
        Relation::Apart { lost: count, .. } => vec![holds, lost("restore-apart", *count)],
        Relation::Other { lost: count } => vec![holds, lost("restore-other", *count)],
    }
}

/// Where the logbook comes from, in words, oldest first.
pub(crate) fn origins(core: &Core) -> Result<Vec<String>, Problem> {
    let words = &core.words;
    let mut told = Vec::new();
    for numbered in core.logbook.origins()? {
        let on = moment(words, &numbered.entry.at.wall);
        let of = [("entry", numbered.seq.into()), ("date", on.into())];
        match &numbered.entry.act {
            Act::FromBackup { backup, replaced } => {
                let [entry, date] = of;
                let more = [
                    ("backup", backup.seq.into()),
                    ("digest", (&backup.digest).into()),
                ];
                let args = [entry, date, more[0].clone(), more[1].clone()];
                told.push(words.fill("verify-from-backup", &args));
                if let Some(was) = replaced {
                    let args = [("entry", was.seq.into()), ("digest", (&was.digest).into())];
                    told.push(words.fill("verify-replaced", &args));
                }
            }
            Act::Recovered(recovery) => {
                told.push(words.fill("verify-recovered", &of));
                told.push(recover::told(words, recovery));
                told.extend(recover::gaps(words, recovery));
            }
            _ => {}
        }
    }
    Ok(told)
}

/// A moment as a backup has it; what can't be read is shown as it is.
pub(crate) fn when(words: &Words, text: &str) -> String {
    DateTime::parse_from_rfc3339(text).map_or_else(|_| text.to_owned(), |at| moment(words, &at))
}

fn moment(words: &Words, at: &DateTime<FixedOffset>) -> String {
    format!("{}, {}", words.date(at.date_naive()), words.time(at.time()))
}
