//! Finding what people's codes name.

use super::ScriptFault;
use baywalk_domain::ids::{BayId, DeviceId, PointId, SourceId, ToolId};
use baywalk_domain::rig::{Book, Code, CodeOwner};

macro_rules! bring {
    ($($(#[$doc:meta])* $name:ident: $variant:ident => $id:ty, $what:literal),+ $(,)?) => {$(
        $(#[$doc])*
        pub(super) fn $name(book: &Book, text: &str) -> Result<$id, ScriptFault> {
            let code = Code::parse(text)?;
            let owner = book.owners(&code).find_map(|owner| match owner {
                CodeOwner::$variant(id) => Some(id),
                _ => None,
            });
            owner.ok_or_else(|| ScriptFault::NoCode { what: $what, code: text.to_owned() })
        }
    )+};
}

bring! {
    /// The source with a code.
    source: Source => SourceId, "source",
    /// The bay with a code.
    bay: Bay => BayId, "bay",
    /// The device with a code.
    device: Device => DeviceId, "device",
    /// The point with a code.
    point: Point => PointId, "point",
    /// The tool with a code.
    tool: Tool => ToolId, "tool",
}
