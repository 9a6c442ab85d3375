//! Stored shapes: what acts, entries and rig books look like as JSON.
//!
//! A shape is plain text and whole numbers with no rule in it; turning it into the domain's own type
//! goes through the checked constructors there. No floating number is stored: a quantity is the
//! number as typed beside its unit's code.

mod act;
mod bay;
mod bay_photo;
mod book;
mod change;
mod device;
mod due;
mod entry;
mod fastening;
mod fault;
mod finding;
mod found;
mod glance;
mod left;
mod meter;
mod moment;
mod origin;
mod plain;
mod point;
mod quantity;
mod reading;
mod record;
mod service;
mod shape;
mod shown;
mod source;
mod terminal;
mod text;
mod timing;
mod tool;
mod walk;
mod word;

pub use act::Act;
pub use bay::{Bay, Thousandths};
pub use bay_photo::{BayPhoto, Pin};
pub use book::{Book, Rig, YearlyRule};
pub use change::BookChange;
pub use device::{Check, ConductorSet, Device};
pub(crate) use due::Due;
pub use entry::{Body, Entry};
pub use fastening::{Drive, Fastening};
pub use fault::{ShapeCause, ShapeFault};
pub use finding::{About, FollowUp, Raised};
pub use found::{AsFound, Movement, Test};
pub(crate) use glance::{RigGlance, RigOutline};
pub use left::{AsLeft, Damaged, Seen, SetTo};
pub use meter::Meter;
pub use moment::{Boot, Moment};
pub use origin::{EntrySpan, Mark, Recovery};
pub use point::{Point, PointKind};
pub use quantity::Quantity;
pub use reading::{Judged, Limit, Measured, Reading};
pub use record::{FoundRecord, PointRecord};
pub use service::{AskSeen, FaultSeen, ServiceSeen};
pub use shape::Shape;
pub use shown::{AdviceShown, DueShown, Flags, Shown};
pub use source::{Source, Wait};
pub use terminal::{MakerTorque, Span, Terminal, Wire};
pub use text::{Text, Texted};
pub use timing::{Asked, Reach, Rule, RuleChange, RuleLimit, Usage};
pub use tool::Tool;
pub use walk::{Away, Counted, Ending, ReadyAnswer, Route, RouteStop, Scope};
pub use word::Word;
