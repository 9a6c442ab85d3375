//! Adding to a book, changing and retiring: what may be, and what it makes of the book.

use super::{
    Bay, BayPhoto, Book, Code, Device, Feed, Opening, Point, Rig, Source, TerminalFault, Tool,
    is_digest,
};
use crate::ids::{BayId, DeviceId, PointId, SourceId, ToolId};

/// One change of a rig's book.
///
/// A record with a new name is added; one with a known name takes the place of the old.
/// To retire a record is to put it again with `retired` set.
#[derive(Debug, Clone, PartialEq)]
pub enum BookChange {
    /// Starts a book, with all that is in it.
    Whole(Box<Book>),
    /// The rig's own facts.
    Rig(Box<Rig>),
    /// A source.
    Source(Box<Source>),
    /// A bay.
    Bay(Box<Bay>),
    /// A device.
    Device(Box<Device>),
    /// A point.
    Point(Box<Point>),
    /// A tool.
    Tool(Box<Tool>),
    /// The photo that shows a bay, in the place of the one before.
    BayPhoto(Box<BayPhoto>),
}

/// Which record has a code.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum CodeOwner {
    /// A source.
    Source(SourceId),
    /// A bay.
    Bay(BayId),
    /// A device.
    Device(DeviceId),
    /// A point.
    Point(PointId),
    /// A tool.
    Tool(ToolId),
}

/// Why a book can't be so.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum BookFault {
    /// The code is another record's already, or was once.
    #[error("code {code} is taken")]
    CodeTaken {
        /// The code.
        code: Code,
    },
    /// A record names another that the book does not have.
    #[error("{of} names a {what} that is not in the book")]
    Missing {
        /// The code of the record that names it.
        of: Code,
        /// What kind of record is missing, as in message keys.
        what: &'static str,
    },
    /// A record of a whole book is wired to something that the book does not have.
    #[error("{of} is wired to {to}, which is not in the book")]
    NotWired {
        /// The code of the source or device.
        of: Code,
        /// What it names.
        to: String,
    },
    /// The terminal names a set or conductor that its device does not have.
    #[error("{of} names a set or conductor that its device does not have")]
    NoSuchSet {
        /// The point.
        of: Code,
    },
    /// A terminal can't be so.
    #[error("{of}: {fault}")]
    Terminal {
        /// The point.
        of: Code,
        /// What is wrong.
        fault: TerminalFault,
    },
    /// A tool's range and step are not in one unit, or the range begins above where it ends.
    #[error("{of}: range and step of a tool are in one unit, least first")]
    ToolScale {
        /// The tool.
        of: Code,
    },
    /// A pin names a point that is in another bay, or names it a second time.
    #[error("a photo of {bay} has a pin that is another bay's, or stands twice")]
    Pin {
        /// The bay that the photo shows.
        bay: Code,
    },
    /// A bay's photo is named by nothing.
    #[error("a photo of {bay} is named by nothing")]
    NoPhoto {
        /// The bay.
        bay: Code,
    },
    /// A bay's photo shows a bay that the book does not have.
    #[error("a photo shows a bay that is not in the book")]
    NoBay,
    /// A name is empty.
    #[error("a name is empty")]
    EmptyName,
    /// The rule asks for no months, or more than a year.
    #[error("a rule of {months} months; expected 1 to 12")]
    Months {
        /// The months found.
        months: u8,
    },
}

impl Book {
    /// Sees that a change leaves the book whole.
    ///
    /// # Errors
    /// [`BookFault`] with the first thing that would be wrong.
    pub fn check(&self, change: &BookChange) -> Result<(), BookFault> {
        match change {
            BookChange::Whole(book) => book.check_whole(),
            BookChange::Rig(rig) => check_rig(rig),
            BookChange::Source(source) => {
                named(&source.name)?;
                self.free(&source.code, CodeOwner::Source(source.id))
            }
            BookChange::Bay(bay) => self.check_bay(bay),
            BookChange::Device(device) => self.check_device(device),
            BookChange::Point(point) => self.check_point(point),
            BookChange::Tool(tool) => self.check_tool(tool),
            BookChange::BayPhoto(photo) => self.check_bay_photo(photo),
        }
    }

    /// Makes a checked change. Never refuses.
    pub fn apply(&mut self, change: &BookChange) {
        match change {
            BookChange::Whole(book) => *self = (**book).clone(),
            BookChange::Rig(rig) => self.rig = (**rig).clone(),
            BookChange::Source(record) => put(&mut self.sources, record, |r| r.id == record.id),
            BookChange::Bay(record) => put(&mut self.bays, record, |r| r.id == record.id),
            BookChange::Device(record) => put(&mut self.devices, record, |r| r.id == record.id),
            BookChange::Point(record) => put(&mut self.points, record, |r| r.id == record.id),
            BookChange::Tool(record) => put(&mut self.tools, record, |r| r.id == record.id),
            BookChange::BayPhoto(record) => {
                put(&mut self.bay_photos, record, |r| r.bay == record.bay);
            }
        }
    }

    /// Sees that the whole book holds together.
    ///
    /// # Errors
    /// [`BookFault`] with the first thing that is wrong.
    pub fn check_whole(&self) -> Result<(), BookFault> {
        check_rig(&self.rig)?;
        let mut seen = std::collections::HashSet::new();
        if let Some(code) = self.codes().find(|code| !seen.insert(code.as_str())) {
            return Err(BookFault::CodeTaken { code: code.clone() });
        }
        self.sources
            .iter()
            .try_for_each(|source| named(&source.name))?;
        self.bays.iter().try_for_each(|bay| self.check_bay(bay))?;
        self.devices
            .iter()
            .try_for_each(|device| self.check_device(device))?;
        self.tools
            .iter()
            .try_for_each(|tool| self.check_tool(tool))?;
        self.check_wiring()?;
        self.points
            .iter()
            .try_for_each(|point| self.check_point(point))?;
        self.bay_photos
            .iter()
            .try_for_each(|photo| self.check_bay_photo(photo))
    }

    fn check_bay_photo(&self, photo: &BayPhoto) -> Result<(), BookFault> {
        let bay = self.bay(photo.bay).ok_or(BookFault::NoBay)?;
        let of = || bay.code.clone();
        if !is_digest(&photo.photo) {
            return Err(BookFault::NoPhoto { bay: of() });
        }
        let mut seen = std::collections::HashSet::new();
        let here = |point: PointId| self.point(point).and_then(|point| self.bay_of(point));
        let mut pins = photo.pins.iter().map(|pin| pin.point());
        if pins.all(|point| here(point) == Some(bay.id) && seen.insert(point)) {
            Ok(())
        } else {
            Err(BookFault::Pin { bay: of() })
        }
    }

    fn check_bay(&self, bay: &Bay) -> Result<(), BookFault> {
        named(&bay.name)?;
        self.free(&bay.code, CodeOwner::Bay(bay.id))?;
        let known = |id: &SourceId| self.source(*id).is_some();
        if bay.fed_by.iter().all(known) {
            Ok(())
        } else {
            Err(missing(&bay.code, "source"))
        }
    }

    fn check_device(&self, device: &Device) -> Result<(), BookFault> {
        named(&device.name)?;
        self.free(&device.code, CodeOwner::Device(device.id))?;
        if self.bay(device.bay).is_none() {
            return Err(missing(&device.code, "bay"));
        }
        let known = |code: &Code| self.sources.iter().any(|source| source.code == *code);
        if device.unswitched.iter().all(known) {
            Ok(())
        } else {
            Err(missing(&device.code, "source"))
        }
    }

    /// Sees that what is wired to something names what the book has. A single change may name what
    /// comes later: until then it counts as not known.
    fn check_wiring(&self) -> Result<(), BookFault> {
        let unwired = |of: &Code, to: String| BookFault::NotWired { of: of.clone(), to };
        for source in &self.sources {
            if let Some(opening) = source.opens.as_ref().filter(|opening| !self.has(opening)) {
                return Err(unwired(&source.code, opening.text()));
            }
        }
        for device in &self.devices {
            let mut feeds = device.sets.iter().flat_map(|set| &set.from);
            if let Some(feed) = feeds.find(|feed| !self.can_feed(feed)) {
                return Err(unwired(&device.code, feed.text()));
            }
        }
        Ok(())
    }

    fn can_feed(&self, feed: &Feed) -> bool {
        match feed {
            Feed::Source(code) => self.sources.iter().any(|source| source.code == *code),
            Feed::Set { device, set } => self.has(&Opening {
                device: device.clone(),
                set: Some(set.clone()),
            }),
        }
    }

    fn has(&self, opening: &Opening) -> bool {
        let mut devices = self.devices.iter();
        let device = devices.find(|device| device.code == opening.device);
        device.is_some_and(|device| {
            let set = opening.set.as_deref();
            set.is_none_or(|set| device.set(set).is_some())
        })
    }

    fn check_point(&self, point: &Point) -> Result<(), BookFault> {
        named(&point.name)?;
        self.free(&point.code, CodeOwner::Point(point.id))?;
        let device = self
            .device(point.device)
            .ok_or_else(|| missing(&point.code, "device"))?;
        let Some(terminal) = point.terminal() else {
            return Ok(());
        };
        terminal
            .clone()
            .checked()
            .map_err(|fault| BookFault::Terminal {
                of: point.code.clone(),
                fault,
            })?;
        let Some(name) = &terminal.set else {
            return Ok(());
        };
        let holds = device.set(name).is_some_and(|set| {
            terminal
                .conductor
                .is_some_and(|conductor| set.system.conductors().contains(&conductor))
        });
        if holds {
            Ok(())
        } else {
            Err(BookFault::NoSuchSet {
                of: point.code.clone(),
            })
        }
    }

    fn check_tool(&self, tool: &Tool) -> Result<(), BookFault> {
        named(&tool.name)?;
        let unit = tool.least.unit();
        let one_unit = tool.most.unit() == unit && tool.step.unit() == unit;
        if !one_unit || tool.least.quantity() > tool.most.quantity() {
            return Err(BookFault::ToolScale {
                of: tool.code.clone(),
            });
        }
        self.free(&tool.code, CodeOwner::Tool(tool.id))
    }

    /// Sees that a code is free for a record: its own, or nobody's yet.
    fn free(&self, code: &Code, for_record: CodeOwner) -> Result<(), BookFault> {
        let taken = self.owners(code).any(|owner| owner != for_record);
        if taken {
            Err(BookFault::CodeTaken { code: code.clone() })
        } else {
            Ok(())
        }
    }

    /// The records that have a code.
    pub fn owners<'a>(&'a self, code: &'a Code) -> impl Iterator<Item = CodeOwner> + 'a {
        let has = move |other: &Code| other == code;
        let sources = self
            .sources
            .iter()
            .filter(move |r| has(&r.code))
            .map(|r| CodeOwner::Source(r.id));
        let bays = self
            .bays
            .iter()
            .filter(move |r| has(&r.code))
            .map(|r| CodeOwner::Bay(r.id));
        let devices = self
            .devices
            .iter()
            .filter(move |r| has(&r.code))
            .map(|r| CodeOwner::Device(r.id));
        let points = self
            .points
            .iter()
            .filter(move |r| has(&r.code))
            .map(|r| CodeOwner::Point(r.id));
        let tools = self
            .tools
            .iter()
            .filter(move |r| has(&r.code))
            .map(|r| CodeOwner::Tool(r.id));
        sources
            .chain(bays)
            .chain(devices)
            .chain(points)
            .chain(tools)
    }
}

fn put<T: Clone>(list: &mut Vec<T>, record: &T, same: impl Fn(&T) -> bool) {
    match list.iter_mut().find(|old| same(old)) {
        Some(old) => *old = record.clone(),
        None => list.push(record.clone()),
    }
}

fn named(name: &str) -> Result<(), BookFault> {
    if name.trim().is_empty() {
        Err(BookFault::EmptyName)
    } else {
        Ok(())
    }
}

fn check_rig(rig: &Rig) -> Result<(), BookFault> {
    named(&rig.name)?;
    if (1..=12).contains(&rig.rule.months) {
        Ok(())
    } else {
        Err(BookFault::Months {
            months: rig.rule.months,
        })
    }
}

fn missing(of: &Code, what: &'static str) -> BookFault {
    BookFault::Missing {
        of: of.clone(),
        what,
    }
}
