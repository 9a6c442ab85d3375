//! The acts, as a script writes them. The shapes of versions 1 and 2 are frozen.

use super::found::{WrittenFound, WrittenLeft};
use chrono::NaiveDate;
use serde::Deserialize;
use std::collections::BTreeMap;

/// One act as written. What the book is changed by is kept as text and read as the rig's files are.
#[derive(Debug, Deserialize)]
#[serde(tag = "act", rename_all = "snake_case")]
pub(super) enum Written {
    Layout {
        layout: String,
    },
    Files {
        toml: String,
        csv: String,
    },
    Add {
        record: String,
        fields: BTreeMap<String, String>,
    },
    Change {
        code: String,
        fields: BTreeMap<String, String>,
    },
    Odometer {
        reading: String,
    },
    Start {
        person: String,
        #[serde(default)]
        bays: Vec<String>,
        #[serde(default)]
        second_look: bool,
    },
    Ready {
        item: String,
        without: Option<String>,
    },
    Isolate {
        source: String,
        #[serde(default)]
        how: How,
        #[serde(default)]
        note: String,
    },
    Open {
        bay: String,
    },
    KnownLive {
        bay: String,
        supply: String,
        place: String,
        meter: Option<String>,
        #[serde(default)]
        with: String,
        category: Option<String>,
        volts: String,
    },
    Read {
        device: String,
        set: String,
        from: String,
        other_set: Option<String>,
        to: String,
        supply: String,
        volts: String,
    },
    Except {
        device: String,
        set: String,
        reason: String,
    },
    SetTool {
        tool: String,
        to: String,
    },
    Found {
        point: String,
        found: WrittenFound,
    },
    Correct {
        point: String,
        found: WrittenFound,
        why: String,
    },
    Look {
        point: String,
        trouble: Option<String>,
        not_looked: Option<String>,
    },
    Damage {
        point: String,
        damage: String,
        #[serde(default)]
        note: String,
    },
    Left {
        point: String,
        left: WrittenLeft,
    },
    Photo {
        about: String,
        file: String,
        #[serde(default)]
        caption: String,
    },
    Close {
        bay: String,
        #[serde(default)]
        not_counted: bool,
    },
    PowerUp,
    Restore {
        source: String,
    },
    LeaveAway {
        source: String,
        why: String,
    },
    Measure {
        reading: String,
        #[serde(default)]
        place: String,
        volts: Option<String>,
        works: Option<bool>,
        not: Option<String>,
    },
    Pause,
    Resume,
    End {
        early: Option<String>,
    },
    Decide {
        finding: String,
        about: String,
        decision: String,
        by: Option<NaiveDate>,
        #[serde(default)]
        note: String,
    },
    Undo,
    Rule {
        fields: BTreeMap<String, String>,
        in_place: Option<u32>,
    },
    DropRule {
        number: u32,
    },
    Restart {
        reading: String,
        why: String,
    },
    Hours {
        reading: String,
    },
    Trip {
        distance: String,
    },
    Event {
        event: String,
        #[serde(default)]
        about: String,
        #[serde(default)]
        distance: String,
        #[serde(default)]
        note: String,
    },
    PutOff {
        number: u32,
        until: NaiveDate,
        why: String,
    },
    Follow {
        minutes: Option<u16>,
    },
    LeavePlan,
}

/// How a source was taken away.
#[derive(Debug, Default, Clone, Copy, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(super) enum How {
    #[default]
    Isolated,
    NotFound,
    Stays,
}

impl Written {
    /// Whether it changes the book.
    pub(super) const fn is_book(&self) -> bool {
        matches!(
            self,
            Self::Layout { .. } | Self::Files { .. } | Self::Add { .. } | Self::Change { .. }
        )
    }

    /// Whether it tells when to look again, or what the open walk goes by.
    pub(super) const fn is_timing(&self) -> bool {
        matches!(
            self,
            Self::Rule { .. }
                | Self::DropRule { .. }
                | Self::Restart { .. }
                | Self::Hours { .. }
                | Self::Trip { .. }
                | Self::Event { .. }
                | Self::PutOff { .. }
                | Self::Follow { .. }
                | Self::LeavePlan
        )
    }

    /// The first version of scripts that has it.
    pub(super) const fn since(&self) -> u32 {
        if self.is_timing() { 2 } else { 1 }
    }
}
