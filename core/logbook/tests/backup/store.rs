//! A small store with one photo that is there, and a backup of it.

use crate::script::{Script, TestClock, at_ac_bay, open, point, whole_walk};
use baywalk_domain::finding::About;
use baywalk_domain::walk::Act;
use baywalk_logbook::backup::{Go, Made, Passphrase, Progress, Restored, Wish, restore};
use baywalk_logbook::{Clock, Logbook};
use std::path::{Path, PathBuf};
use tempfile::TempDir;

/// A store, a place for backups, and a place to restore to, beside one another.
pub(crate) struct Place {
    folder: TempDir,
}

pub(crate) fn clock() -> Box<dyn Clock> {
    Box::new(TestClock::default())
}

pub(crate) fn on(_: Progress) -> Go {
    Go::On
}

/// The frozen store of version 1 holds the photo that is used here.
pub(crate) fn frozen(version: u32) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("samples/stores/{version}"))
}

/// Copies a folder of plain files and folders.
pub(crate) fn copy(from: &Path, to: &Path) {
    std::fs::create_dir_all(to).unwrap();
    for entry in std::fs::read_dir(from).unwrap().map(Result::unwrap) {
        let to = to.join(entry.file_name());
        if entry.path().is_dir() {
            copy(&entry.path(), &to);
        } else {
            std::fs::copy(entry.path(), to).unwrap();
        }
    }
}

impl Place {
    pub(crate) fn new() -> Self {
        Self {
            folder: tempfile::tempdir().unwrap(),
        }
    }

    pub(crate) fn at(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    /// The names that stand there.
    pub(crate) fn names(&self) -> Vec<String> {
        let entries = std::fs::read_dir(self.folder.path()).unwrap();
        let mut names: Vec<String> = entries
            .map(|entry| entry.unwrap().file_name().into_string().unwrap())
            .collect();
        names.sort();
        names
    }

    /// A store with a whole walk and, where wished, an open one behind it.
    pub(crate) fn store(&self, name: &str, open_walk: bool) -> Logbook {
        let mut logbook = open(&self.at(name));
        let photos = frozen(1).join("photos");
        let photo = std::fs::read_dir(photos).unwrap().next().unwrap().unwrap();
        copy_photo(&photo.path(), &self.at(name));
        let digest = photo.file_name().into_string().unwrap();
        let digest = digest.trim_end_matches(".png");
        let mut script = whole_walk();
        for (call, _) in &mut script.calls {
            if let Act::Photo { digest: named, .. } = &mut call.act {
                digest.clone_into(named);
            }
        }
        if open_walk {
            script.start(baywalk_domain::walk::Scope::Whole);
            script.open_and_prove(crate::rehearsal::AC_BAY, crate::rehearsal::SWITCH);
        }
        script.play(&mut logbook);
        logbook
    }

    /// Makes a backup of a logbook.
    pub(crate) fn backup(&self, logbook: &Logbook, name: &str, secret: Option<&str>) -> Made {
        let secret = secret.map(|text| Passphrase::new(text).unwrap());
        let job = logbook.backup().unwrap();
        job.write(&self.at(name), secret.as_ref(), &mut on).unwrap()
    }

    pub(crate) fn restore(&self, from: &str, to: &str, replace: bool) -> Restored {
        let (folder, from) = (self.at(to), self.at(from));
        let wish = Wish {
            folder: &folder,
            from: &from,
            passphrase: None,
            replace,
        };
        restore(&wish, clock(), &mut on).unwrap()
    }
}

fn copy_photo(from: &Path, store: &Path) {
    let to = store.join("photos").join(from.file_name().unwrap());
    std::fs::copy(from, to).unwrap();
}
