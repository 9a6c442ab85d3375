//! What things of a rig are called: their code and name from its book.

use crate::Words;
use baywalk_domain::finding::About;
use baywalk_domain::ids::{BayId, DeviceId, PointId, SourceId, ToolId};
use baywalk_domain::rig::{Book, Code};

macro_rules! named {
    ($($(#[$doc:meta])* $name:ident($id:ty) in $record:ident else $key:literal),+ $(,)?) => {$(
        $(#[$doc])*
        #[must_use]
        pub fn $name<'b>(&self, id: $id, book: impl Into<Option<&'b Book>>) -> String {
            match book.into().and_then(|book| book.$record(id)) {
                Some(record) => self.code_and_name(&record.code, &record.name),
                None => self.say($key),
            }
        }
    )+};
}

impl Words {
    named! {
        /// A source by code and name; "this source" without a book that has it.
        source_name(SourceId) in source else "walk-this-source",
        /// A bay by code and name; "this bay" without a book that has it.
        bay_name(BayId) in bay else "walk-this-bay",
        /// A device by code and name; "this device" without a book that has it.
        device_name(DeviceId) in device else "walk-this-device",
        /// A point by code and name, such as "F8, N in shore"; "this point" without a book that
        /// has it.
        point_name(PointId) in point else "walk-this-point",
        /// A tool by code and name; "this tool" without a book that has it.
        tool_name(ToolId) in tool else "walk-this-tool",
    }

    /// What a finding, a photo or a note is about, by name.
    #[must_use]
    pub fn about<'b>(&self, about: About, book: impl Into<Option<&'b Book>>) -> String {
        match about {
            About::Rig => self.say("walk-about-rig"),
            About::Bay(bay) => self.bay_name(bay, book),
            About::Point(point) => self.point_name(point, book),
            About::Source(source) => self.source_name(source, book),
            About::Reading(step) => self.code(step),
        }
    }

    fn code_and_name(&self, code: &Code, name: &str) -> String {
        self.fill(
            "walk-named",
            &[("code", code.as_str().into()), ("name", name.into())],
        )
    }
}
