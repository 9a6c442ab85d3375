//! Names of records: UUIDs that can't be mixed up between kinds.

use uuid::Uuid;

macro_rules! ids {
    ($($(#[$doc:meta])* $name:ident),+ $(,)?) => {$(
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
        pub struct $name(Uuid);

        impl $name {
            /// Takes a UUID as the name of this kind of record.
            #[must_use]
            pub const fn new(value: Uuid) -> Self {
                Self(value)
            }

            /// The UUID, for storage and display.
            #[must_use]
            pub const fn uuid(self) -> Uuid {
                self.0
            }

            /// Derives the name of a record that an act makes, so that the same act always makes
            /// the same name.
            #[must_use]
            pub fn made_by(act: ActId, label: &str) -> Self {
                Self(Uuid::new_v5(&act.0, label.as_bytes()))
            }
        }

        impl std::fmt::Display for $name {
            fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                self.0.fmt(f)
            }
        }

        impl std::str::FromStr for $name {
            type Err = uuid::Error;
            fn from_str(text: &str) -> Result<Self, Self::Err> {
                Uuid::parse_str(text).map(Self)
            }
        }
    )+};
}

ids! {
    /// Names one act of a person, and the ledger entry it became. A repeated act has the same name.
    ActId,
    /// Names a rig.
    RigId,
    /// Names a source.
    SourceId,
    /// Names a bay.
    BayId,
    /// Names a device.
    DeviceId,
    /// Names a point.
    PointId,
    /// Names a tool.
    ToolId,
    /// Names a walk.
    WalkId,
    /// Names a finding.
    FindingId,
    /// Names a rule of when to look again.
    RuleId,
}
