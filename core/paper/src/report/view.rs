//! What every part of a report asks for: words, and the names of things.

use super::Facts;
use crate::sheet::{Block, Cell, Column, Table};
use baywalk_domain::coded::Coded;
use baywalk_domain::finding::About;
use baywalk_domain::ids::{ActId, BayId, DeviceId, PointId, SourceId, ToolId};
use baywalk_domain::moment::Moment;
use baywalk_domain::units::{Stated, TorqueUnit};
use baywalk_domain::walk::{Act, Entry, PointRecord};
use baywalk_words::{Arg, Words};
use chrono::{DateTime, FixedOffset};

/// The facts of a report with the words to tell them in.
#[derive(Clone, Copy)]
pub(super) struct View<'a> {
    pub(super) facts: Facts<'a>,
    pub(super) words: &'a Words,
}

impl<'a> View<'a> {
    /// The text of a key.
    pub(super) fn say(&self, key: &str) -> String {
        self.words.say(key)
    }

    /// The text of a key with its places filled.
    pub(super) fn fill(&self, key: &str, args: &[(&str, &str)]) -> String {
        let args: Vec<_> = args
            .iter()
            .map(|(name, text)| (*name, Arg::from(*text)))
            .collect();
        self.words.fill(key, &args)
    }

    /// The text of a key that tells how many.
    pub(super) fn count(&self, key: &str, count: usize) -> String {
        self.words.fill(key, &[("count", Arg::from(count))])
    }

    /// The word of a member of a closed list.
    pub(super) fn code<C: Coded>(&self, member: C) -> String {
        self.words.code(member)
    }

    /// The word of a member of a closed list where it begins a line, with a capital letter.
    pub(super) fn headed<C: Coded>(&self, member: C) -> String {
        let word = self.words.code(member);
        let mut letters = word.chars();
        letters.next().map_or_else(String::new, |first| {
            first.to_uppercase().chain(letters).collect()
        })
    }

    /// A torque in words, as it was stated.
    pub(super) fn torque(&self, torque: &Stated<TorqueUnit>) -> String {
        self.words.torque(torque)
    }

    /// Day and time, by the wall clock of the place.
    pub(super) fn day_and_time(&self, wall: &DateTime<FixedOffset>) -> String {
        let day = self.words.date(wall.date_naive());
        let time = wall.format("%H:%M (%:z)").to_string();
        self.fill("report-day-and-time", &[("day", &day), ("time", &time)])
    }

    /// The time of day, with its day where that is not the day on which the walk began.
    pub(super) fn time(&self, at: &Moment) -> String {
        let time = at.wall.format("%H:%M").to_string();
        if at.date() == self.facts.walk.started.date() {
            return time;
        }
        let day = self.words.date(at.date());
        self.fill("report-day-and-time", &[("day", &day), ("time", &time)])
    }

    /// The name of a source.
    pub(super) fn source(&self, id: SourceId) -> Cell {
        match self.facts.book.source(id) {
            Some(source) => Cell::of(&source.name).point(source.code.as_str()),
            None => self.stranger(),
        }
    }

    /// A source by its code and name, in a sentence.
    pub(super) fn source_name(&self, id: SourceId) -> String {
        self.words.source_name(id, self.facts.book)
    }

    /// A bay by its code and name, in a sentence.
    pub(super) fn bay_name(&self, id: BayId) -> String {
        self.words.bay_name(id, self.facts.book)
    }

    /// A device by its code and name, in a sentence.
    pub(super) fn device_name(&self, id: DeviceId) -> String {
        self.words.device_name(id, self.facts.book)
    }

    /// A point by its code and name, in a sentence.
    pub(super) fn point_name(&self, id: PointId) -> String {
        self.words.point_name(id, self.facts.book)
    }

    /// A tool by its code and name, in a sentence.
    pub(super) fn tool_name(&self, id: ToolId) -> String {
        self.words.tool_name(id, self.facts.book)
    }

    /// The code of a tool, where its name stands in the list of the tools used.
    pub(super) fn tool_code(&self, id: ToolId) -> String {
        let tools = self.facts.book.tools.iter();
        let mut known = tools.filter(|tool| tool.id == id);
        known
            .next()
            .map_or_else(|| self.tool_name(id), |tool| tool.code.as_str().to_owned())
    }

    /// A point with its tag, its bay and its place.
    pub(super) fn point(&self, id: PointId) -> Cell {
        let book = self.facts.book;
        match book.point(id) {
            Some(point) => {
                let bay = book.bay_of(point).map(|bay| self.bay_name(bay));
                Cell::of(&point.name)
                    .point(point.code.as_str())
                    .with(bay)
                    .with([point.place.clone()])
            }
            None => self.stranger(),
        }
    }

    /// What a finding or a photo is about.
    pub(super) fn about(&self, about: About) -> Cell {
        match about {
            About::Rig => Cell::of(&self.facts.book.rig.name),
            About::Bay(id) => match self.facts.book.bay(id) {
                Some(bay) => Cell::of(&bay.name).bay(bay.code.as_str()),
                None => self.stranger(),
            },
            About::Point(id) => self.point(id),
            About::Source(id) => self.source(id),
            About::Reading(step) => Cell::of(self.headed(step)),
        }
    }

    /// What was noted at a point in this walk.
    pub(super) fn record(&self, id: PointId) -> Option<&'a PointRecord> {
        self.facts.walk.point(id)
    }

    /// A table with its caption and its columns, each by the key of its heading and its share of
    /// the width in percent; none where it has no rows.
    pub(super) fn table(
        &self,
        caption: String,
        columns: &[(&str, u8)],
        rows: Vec<Vec<Cell>>,
    ) -> Option<Block> {
        let columns = columns.iter().map(|(key, share)| Column {
            heading: self.say(key),
            share: *share,
        });
        (!rows.is_empty()).then(|| {
            Block::Table(Table {
                caption,
                columns: columns.collect(),
                rows,
            })
        })
    }

    /// Something that is in no list any more.
    fn stranger(&self) -> Cell {
        Cell::of(self.say("report-unknown-record"))
    }
}

impl<'a> View<'a> {
    /// The acts of the walk that were not struck, oldest first.
    pub(super) fn standing(&self) -> impl Iterator<Item = &'a Act> + use<'a> {
        self.standing_entries().map(|entry| &entry.act)
    }

    /// The entries of the walk that were not struck, oldest first.
    pub(super) fn standing_entries(&self) -> impl Iterator<Item = &'a Entry> + use<'a> {
        let entries = self.facts.entries;
        let struck: Vec<ActId> = entries
            .iter()
            .filter_map(|entry| match entry.act {
                Act::Strike { act } => Some(act),
                _ => None,
            })
            .collect();
        entries.iter().filter(move |entry| {
            !struck.contains(&entry.id) && !matches!(entry.act, Act::Strike { .. })
        })
    }
}
