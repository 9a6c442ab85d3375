//! All that a screen of one walk looks at, read once.

use crate::{Core, Problem};
use baywalk_domain::ids::{BayId, DeviceId, PointId, RigId};
use baywalk_domain::moment::Moment;
use baywalk_domain::rig::{Bay, Book, Device, Point, Source};
use baywalk_domain::torque::Practice;
use baywalk_domain::walk::{Next, Outlook, Setting, WalkState};
use baywalk_words::Words;
use std::cell::OnceCell;
use std::collections::BTreeMap;
use std::sync::Arc;

/// The rig, its open walk and what the rules look at.
pub(crate) struct Here<'a> {
    pub(crate) words: &'a Words,
    pub(crate) book: Arc<Book>,
    pub(crate) walk: Arc<WalkState>,
    pub(crate) moved_running: BTreeMap<PointId, u8>,
    pub(crate) practice: Practice,
    pub(crate) now: Moment,
    next: OnceCell<Next>,
}

impl<'a> Here<'a> {
    pub(crate) fn read(core: &'a Core, rig: RigId) -> Result<Self, Problem> {
        let log = &core.logbook;
        let walk = log
            .shared_walk(rig)?
            .ok_or_else(|| Problem::refused(core.words.say("refused-no-walk")))?;
        Ok(Self {
            words: &core.words,
            book: log.shared_book(rig)?,
            walk,
            moved_running: log.moved_running(rig)?,
            practice: log.practice()?,
            now: log.now(),
            next: OnceCell::new(),
        })
    }

    /// The next step, computed once.
    pub(crate) fn next(&self) -> Next {
        let next = || self.walk.next(&self.book, &self.outlook());
        self.next.get_or_init(next).clone()
    }

    pub(crate) fn outlook(&self) -> Outlook<'_> {
        Outlook {
            moved_running: &self.moved_running,
            practice: &self.practice,
        }
    }

    pub(crate) fn bay(&self, id: BayId) -> Result<&Bay, Problem> {
        self.book.bay(id).ok_or_else(|| self.missing())
    }

    pub(crate) fn device(&self, id: DeviceId) -> Result<&Device, Problem> {
        self.book.device(id).ok_or_else(|| self.missing())
    }

    /// The tool and its setting for what a point waits for.
    pub(crate) fn setting(&self, id: PointId) -> Option<Setting> {
        let point = self.book.point(id)?;
        self.walk.setting_for(&self.book, point, &self.outlook())
    }

    pub(crate) fn point(&self, id: PointId) -> Result<(&Point, &Device, &Bay), Problem> {
        let found = self.book.point(id).and_then(|point| {
            let device = self.book.device(point.device)?;
            Some((point, device, self.book.bay(device.bay)?))
        });
        found.ok_or_else(|| self.missing())
    }

    pub(crate) fn source(&self, id: baywalk_domain::ids::SourceId) -> Result<&Source, Problem> {
        self.book.source(id).ok_or_else(|| self.missing())
    }

    fn missing(&self) -> Problem {
        Problem::not_found(self.words.say("refused-not-in-book"))
    }
}
