//! The one object that the shells hold.

use crate::Fault;
use baywalk_domain::ids::RigId;
use baywalk_screens::{Core, Problem, ProblemKind};
use baywalk_words::Words;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, PoisonError};

/// The logbook of this phone and the words of its owner.
#[derive(uniffi::Object)]
pub struct Baywalk {
    core: Mutex<Option<Core>>,
    pub(crate) words: Words,
    pub(crate) folder: PathBuf,
}

#[uniffi::export]
impl Baywalk {
    /// Opens the logbook of a folder, or makes one there; `locales` are the person's, best first.
    ///
    /// # Errors
    /// [`Fault`] where it is held, newer, damaged, or can't be read or written; nothing is touched.
    #[uniffi::constructor]
    pub fn open(folder: String, locales: Vec<String>) -> Result<Arc<Self>, Fault> {
        Self::opened(folder, &locales, Core::open)
    }

    /// Lets the logbook go, so that its file is free at once.
    ///
    /// # Errors
    /// None today; a shell treats one as any other.
    pub fn let_go(&self) -> Result<(), Fault> {
        self.core
            .lock()
            .unwrap_or_else(PoisonError::into_inner)
            .take();
        Ok(())
    }
}

impl Baywalk {
    pub(crate) fn opened(
        folder: String,
        locales: &[String],
        open: impl FnOnce(&Path, Words) -> Result<Core, Problem>,
    ) -> Result<Arc<Self>, Fault> {
        let asked: Vec<&str> = locales.iter().map(String::as_str).collect();
        let words = Words::for_locales(&asked);
        let opened = catch_unwind(AssertUnwindSafe(|| open(Path::new(&folder), words)));
        let core = opened.map_err(|_| closed(&words))??;
        Ok(Arc::new(Self {
            core: Mutex::new(Some(core)),
            words,
            folder: PathBuf::from(folder),
        }))
    }

    /// Does something with the logbook. A panic closes it: what is in memory can't be trusted then,
    /// what was recorded is on the disk.
    pub(crate) fn with<T>(
        &self,
        work: impl FnOnce(&mut Core) -> Result<T, Problem>,
    ) -> Result<T, Fault> {
        let mut held = self.core.lock().unwrap_or_else(PoisonError::into_inner);
        let core = held.as_mut().ok_or_else(|| closed(&self.words))?;
        match catch_unwind(AssertUnwindSafe(|| work(core))) {
            Ok(done) => done.map_err(Fault::from),
            Err(_) => {
                held.take();
                Err(closed(&self.words))
            }
        }
    }

    /// Does something with the logbook and one rig of it.
    pub(crate) fn with_rig<T>(
        &self,
        rig: &str,
        work: impl FnOnce(&mut Core, RigId) -> Result<T, Problem>,
    ) -> Result<T, Fault> {
        self.with(|core| {
            let id = rig.parse().map_err(|_| {
                let sentence = core.words.say("refused-not-in-book");
                Problem::new(ProblemKind::NotFound, sentence)
            })?;
            work(core, id)
        })
    }

    /// Puts another logbook in the place of the one that was let go.
    pub(crate) fn put(&self, core: Core) {
        let mut held = self.core.lock().unwrap_or_else(PoisonError::into_inner);
        *held = Some(core);
    }
}

pub(crate) fn closed(words: &Words) -> Fault {
    Fault::Closed {
        sentence: words.say("shell-closed"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_panic_closes_the_logbook_and_crosses_no_border() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().to_str().unwrap().to_owned();
        let open = || Baywalk::open(path.clone(), vec!["en".into()]).unwrap();
        let shell = open();
        let fault = shell.with(|_| -> Result<(), Problem> { panic!("planted") });
        assert!(matches!(fault, Err(Fault::Closed { .. })));
        assert!(matches!(shell.rigs(), Err(Fault::Closed { .. })));
        assert_eq!(open().rigs().unwrap().rigs.len(), 0);
    }

    #[test]
    fn a_folder_that_is_held_is_told_in_words() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().to_str().unwrap().to_owned();
        let held = Baywalk::open(path.clone(), vec![]).unwrap();
        let Err(Fault::Told { kind, sentence }) = Baywalk::open(path.clone(), vec!["es".into()])
        else {
            panic!("opened twice");
        };
        assert_eq!(kind, ProblemKind::Held);
        assert!(sentence.ends_with('.'), "{sentence}");
        held.let_go().unwrap();
        assert!(Baywalk::open(path, vec![]).is_ok());
    }
}
