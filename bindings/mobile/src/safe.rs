//! Keeping safe: backup, restore, verify.

use crate::{Baywalk, Fault};
use baywalk_logbook::backup::{self, Go, Passphrase, Wish};
use baywalk_screens::backup::{self as screen, BackupScreen};
use baywalk_screens::restore::{self, RestoreScreen};
use baywalk_screens::verify::{VerifyScreen, verify};
use std::path::Path;
use std::sync::Arc;

/// How far a long job is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, uniffi::Record)]
pub struct Progress {
    /// Bytes done of this step.
    pub done: u64,
    /// Bytes to do in this step, as far as known.
    pub of: u64,
}

/// Who is told how far a long job is; the job stops where it answers no.
#[uniffi::export(with_foreign)]
pub trait Watcher: Send + Sync {
    /// Whether the job goes on.
    ///
    /// # Errors
    /// Any error stops the job, as a no does.
    fn goes_on(&self, progress: Progress) -> Result<bool, Fault>;
}

impl From<uniffi::UnexpectedUniFFICallbackError> for Fault {
    fn from(error: uniffi::UnexpectedUniFFICallbackError) -> Self {
        Self::Closed {
            sentence: error.reason,
        }
    }
}

fn watch(watcher: &Arc<dyn Watcher>) -> impl FnMut(backup::Progress) -> Go {
    |progress| {
        let (done, of) = (progress.done, progress.of);
        match watcher.goes_on(Progress { done, of }) {
            Ok(true) => Go::On,
            Ok(false) | Err(_) => Go::Stop,
        }
    }
}

#[uniffi::export]
impl Baywalk {
    /// Writes the whole logbook into one file, reads it back, and notes that it was done; an empty
    /// passphrase leaves it open to read.
    ///
    /// # Errors
    /// [`Fault`] where it was stopped, the file is there already or can't be written.
    pub fn back_up(
        &self,
        path: &str,
        passphrase: &str,
        watcher: Arc<dyn Watcher>,
    ) -> Result<BackupScreen, Fault> {
        let sealed = Passphrase::new(passphrase);
        let job = self.with(|core| screen::begin(core))?;
        let told = &mut watch(&watcher);
        let made = screen::carry_out(&self.words, job, Path::new(path), sealed.as_ref(), told)?;
        self.with(|core| screen::finish(core, made, sealed.is_some()))
    }

    /// Checks a backup and tells what a restore would do; touches nothing.
    ///
    /// # Errors
    /// [`Fault`] where the backup can't be restored.
    pub fn restore_plan(
        &self,
        from: &str,
        passphrase: &str,
        watcher: Arc<dyn Watcher>,
    ) -> Result<RestoreScreen, Fault> {
        let sealed = Passphrase::new(passphrase);
        let wish = self.wish(from, sealed.as_ref(), false);
        Ok(restore::plan(&self.words, &wish, &mut watch(&watcher))?)
    }

    /// Restores a backup into the logbook's folder and goes on with it; what was there is kept beside.
    ///
    /// # Errors
    /// [`Fault`] where it was stopped or the backup can't be restored: the logbook that was there is
    /// open again then.
    pub fn restore(
        &self,
        from: &str,
        passphrase: &str,
        watcher: Arc<dyn Watcher>,
    ) -> Result<RestoreScreen, Fault> {
        let sealed = Passphrase::new(passphrase);
        let wish = self.wish(from, sealed.as_ref(), true);
        self.let_go()?;
        match restore::restore(&self.words, &wish, &mut watch(&watcher)) {
            Ok((core, screen)) => {
                self.put(core);
                Ok(screen)
            }
            Err(problem) => {
                self.put(baywalk_screens::Core::open(&self.folder, self.words)?);
                Err(problem.into())
            }
        }
    }

    /// Checks the logbook: every entry and every photo.
    ///
    /// # Errors
    /// [`Fault`] where the logbook can't be read.
    pub fn verify(&self) -> Result<VerifyScreen, Fault> {
        self.with(|core| verify(core))
    }
}

impl Baywalk {
    fn wish<'a>(
        &'a self,
        from: &'a str,
        passphrase: Option<&'a Passphrase>,
        replace: bool,
    ) -> Wish<'a> {
        Wish {
            folder: &self.folder,
            from: Path::new(from),
            passphrase,
            replace,
        }
    }
}
