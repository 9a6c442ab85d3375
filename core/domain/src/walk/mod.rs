//! The walk as one state machine: decide, then apply.
//!
//! [`decide`] may refuse and holds the rules. [`WalkState::apply`] never refuses and holds none.

mod act;
mod apply;
mod decide;
mod entry;
mod found;
mod left;
mod live;
mod next;
mod origin;
mod ready;
mod refusal;
mod route;
mod setting;
mod state;
mod summary;

pub use act::{Act, Away, Counted, Ending, Scope};
pub use decide::{Call, Context, decide, past};
pub use entry::{AdviceShown, DueShown, Entry, Flags, Shown};
pub use found::{Angle, AsFound, Grade, Movement, NotJudgedWhy, Test};
pub use left::{AloneWhy, AsLeft, Damage, Seen};
pub use next::Next;
pub use origin::{Mark, Recovery, Span};
pub use ready::{ReadyAnswer, ReadyItem};
pub use refusal::{Needs, NoException, Refusal};
pub use route::{Following, Route, RouteStop};
pub use setting::{Outlook, Setting};
pub use state::{BayStage, BayWork, Exception, FoundRecord, Phase, PointRecord, WalkState};
pub use summary::{Alive, Summary, summary};
