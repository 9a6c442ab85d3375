//! Progress, and the word to stop.

/// What a long job is doing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Step {
    /// Writing the archive.
    Writing,
    /// Reading it back, or checking it before anything is touched.
    Checking,
    /// Making the new store.
    Making,
}

/// How far a long job is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Progress {
    /// What it is doing.
    pub step: Step,
    /// Bytes done of this step.
    pub done: u64,
    /// Bytes to do in this step, as far as known.
    pub of: u64,
}

/// Whether a long job goes on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Go {
    /// It goes on.
    On,
    /// It stops, and leaves everything as it was.
    Stop,
}

/// Who is told how far a long job is, and may stop it.
pub type Watch<'a> = dyn FnMut(Progress) -> Go + 'a;

/// Counts the bytes of one step.
pub(super) struct Count<'a, 'b> {
    watch: &'a mut Watch<'b>,
    progress: Progress,
}

/// The watch said to stop.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Stopped;

impl<'a, 'b> Count<'a, 'b> {
    pub(super) fn new(watch: &'a mut Watch<'b>, step: Step, of: u64) -> Self {
        let done = 0;
        let progress = Progress { step, done, of };
        Self { watch, progress }
    }

    /// Tells of more bytes done.
    pub(super) fn add(&mut self, bytes: u64) -> Result<(), Stopped> {
        self.progress.done = self.progress.done.saturating_add(bytes);
        match (self.watch)(self.progress) {
            Go::On => Ok(()),
            Go::Stop => Err(Stopped),
        }
    }
}
