//! A source.

use super::shape::{is_plain, record};
use super::{Quantity, Text, Word};
use baywalk_domain::ids::SourceId;
use baywalk_domain::rig::{self, Code, Isolation, Opening, Presence, SourceKind, SupplyKind};
use baywalk_domain::units::VoltageUnit;

record! {
    /// How long to keep the hands off.
    Wait = rig::Wait {
        minutes: u16,
        basis: String,
    }
}

record! {
    /// Anything that can make a conductor live.
    Source = rig::Source {
        id: Text<SourceId>,
        code: Text<Code>,
        name: String,
        kind: Word<SourceKind>,
        presence: Word<Presence>,
        supply: Word<SupplyKind>,
        highest: Option<Quantity<VoltageUnit>>,
        isolation: Word<Isolation>,
        #[serde(default, skip_serializing_if = "is_plain")]
        opens: Option<Text<Opening>>,
        how: String,
        wait: Option<Wait>,
        retired: bool,
    }
}
