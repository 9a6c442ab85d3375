//! A device, its sets of conductors, and the pairs that are read.

use super::shape::{is_plain, record};
use super::{Text, Word};
use baywalk_domain::ids::{BayId, DeviceId};
use baywalk_domain::rig::{self, Code, Conductor, DeviceKind, Feed, SetSystem, SupplyKind};

record! {
    /// A group of conductors that arrives together.
    ConductorSet = rig::ConductorSet {
        name: String,
        system: Word<SetSystem>,
        #[serde(default, skip_serializing_if = "is_plain")]
        from: Vec<Text<Feed>>,
    }
}

record! {
    /// A pair of conductors that must read dead.
    Check = rig::Check {
        set: String,
        from: Word<Conductor>,
        other_set: String,
        to: Word<Conductor>,
        supply: Word<SupplyKind>,
    }
}

record! {
    /// A thing in a bay that has terminals.
    Device = rig::Device {
        id: Text<DeviceId>,
        code: Text<Code>,
        bay: Text<BayId>,
        name: String,
        kind: Word<DeviceKind>,
        sets: Vec<ConductorSet>,
        unswitched: Vec<Text<Code>>,
        retired: bool,
    }
}
