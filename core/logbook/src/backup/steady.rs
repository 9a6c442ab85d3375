//! A file that is synced while it is still being written, so that the last sync has little left.

use std::fs::File;
use std::io::Write;
use std::sync::mpsc::{SyncSender, sync_channel};
use std::thread::JoinHandle;

/// After how many bytes a sync is asked for.
const EACH: usize = 16 * 1024 * 1024;

/// A file with a thread that syncs it.
pub(super) struct Steady {
    file: File,
    written: usize,
    ask: SyncSender<()>,
    syncing: JoinHandle<std::io::Result<()>>,
}

impl Steady {
    pub(super) fn new(file: File) -> std::io::Result<Self> {
        let same = file.try_clone()?;
        let (ask, asked) = sync_channel::<()>(1);
        let syncing = std::thread::spawn(move || asked.iter().try_for_each(|()| same.sync_data()));
        Ok(Self {
            file,
            written: 0,
            ask,
            syncing,
        })
    }

    /// Ends the syncing and syncs what is left. A sync that failed on the way is told here: the
    /// system tells of it only once.
    pub(super) fn finish(self) -> std::io::Result<File> {
        drop(self.ask);
        let lost = |_| std::io::Error::other("the syncing stopped");
        self.syncing.join().map_err(lost)??;
        self.file.sync_all()?;
        Ok(self.file)
    }
}

impl Write for Steady {
    fn write(&mut self, bytes: &[u8]) -> std::io::Result<usize> {
        let done = self.file.write(bytes)?;
        self.written = self.written.saturating_add(done);
        if self.written >= EACH {
            self.written = 0;
            // Where one is under way already, the next one takes it along.
            let _asked = self.ask.try_send(());
        }
        Ok(done)
    }

    fn flush(&mut self) -> std::io::Result<()> {
        self.file.flush()
    }
}
