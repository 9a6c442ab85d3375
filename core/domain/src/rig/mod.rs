//! The rig book: one motorhome or trailer with its sources, bays, devices and points.

mod bay;
mod bay_photo;
mod book;
mod change;
mod code;
mod device;
mod fastening;
mod feed;
mod point;
mod source;
mod terminal;
mod thread;
mod tool;
mod wire_size;

pub use bay::{Bay, Side, Station};
pub(crate) use bay_photo::is_digest;
pub use bay_photo::{BayPhoto, Pin};
pub use book::{Book, Rig, RigKind, ServiceKind, YearlyRule};
pub use change::{BookChange, BookFault, CodeOwner};
pub use code::{Code, CodeFault};
pub use device::{Check, Conductor, ConductorSet, Device, DeviceKind, SetSystem, SupplyKind};
pub use fastening::{
    BoltGrade, Drive, DriveKind, Fastening, FasteningKind, Landing, Locking, Nut, Washer,
};
pub use feed::{Feed, FeedFault, Opening};
pub use point::{LookKind, Point, PointKind, Priority};
pub use source::{Isolation, Presence, Source, SourceKind, Wait};
pub use terminal::{
    MakerTorque, Material, Recheck, Role, Strands, Terminal, TerminalFault, ThreadState,
    TorqueBasis, Wire,
};
pub use thread::{Thread, ThreadFault};
pub use tool::{Tool, ToolKind};
pub use wire_size::{WireSize, WireSizeFault};
