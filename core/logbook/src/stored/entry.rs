//! One entry of the ledger.

use super::{Act, Boot, Flags, Shape, ShapeFault, Shown, Text};
use baywalk_domain::ids::{ActId, RigId, WalkId};
use baywalk_domain::moment::Moment;
use baywalk_domain::walk;
use chrono::{DateTime, FixedOffset};
use serde::{Deserialize, Serialize};

/// The act with what was decided and shown.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Body {
    act: Act,
    shown: Shown,
}

/// One entry: who, where, when, and the body whose form the version names.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Entry {
    pub(crate) seq: u64,
    id: Text<ActId>,
    rig: Text<RigId>,
    walk: Option<Text<WalkId>>,
    at: Text<DateTime<FixedOffset>>,
    boot: Boot,
    flags: Flags,
    pub(crate) kind: String,
    pub(crate) version: u32,
    // Its form hangs on kind and version; the schema of a line says which.
    #[cfg_attr(feature = "schema", schemars(with = "serde_json::Value"))]
    body: Body,
}

impl Entry {
    /// The stored form of an entry with its number and the version of its body.
    #[must_use]
    pub fn of(seq: u64, version: u32, entry: &walk::Entry) -> Self {
        Self {
            seq,
            id: Shape::of(&entry.id),
            rig: Shape::of(&entry.rig),
            walk: Shape::of(&entry.walk),
            at: Shape::of(&entry.at.wall),
            boot: Shape::of(&entry.at.boot),
            flags: Shape::of(&entry.flags),
            kind: entry.act.kind().to_owned(),
            version,
            body: Body {
                act: Shape::of(&entry.act),
                shown: Shape::of(&entry.shown),
            },
        }
    }

    /// The entry as the domain reads it.
    ///
    /// # Errors
    /// [`ShapeFault`] with the place of the first thing that can't be.
    pub fn domain(self) -> Result<walk::Entry, ShapeFault> {
        let within = |field: &'static str| move |fault: ShapeFault| fault.within(field);
        Ok(walk::Entry {
            id: self.id.domain().map_err(within("id"))?,
            rig: self.rig.domain().map_err(within("rig"))?,
            walk: self.walk.domain().map_err(within("walk"))?,
            at: Moment {
                wall: self.at.domain().map_err(within("at"))?,
                boot: self.boot.domain().map_err(within("boot"))?,
            },
            flags: self.flags.domain().map_err(within("flags"))?,
            act: self.body.act.domain().map_err(within("body.act"))?,
            shown: self.body.shown.domain().map_err(within("body.shown"))?,
        })
    }
}
