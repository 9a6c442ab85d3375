//! The kinds of entry and the version in which each is written now.

/// Every kind of entry with its current version. A kind whose body changes its form gets the next
/// version, an upcaster and a frozen sample of the old one; the version of the store goes up too.
pub const KINDS: &[(&str, u32)] = &[
    ("book", 3),
    ("odometer", 1),
    ("usage", 1),
    ("rule", 1),
    ("put_off", 1),
    ("start", 1),
    ("ready", 1),
    ("isolate", 1),
    ("follow", 1),
    ("leave_plan", 1),
    ("open", 1),
    ("known_live", 2),
    ("read", 1),
    ("except", 1),
    ("set_tool", 1),
    ("found", 1),
    ("correct", 1),
    ("look", 1),
    ("damage", 1),
    ("left", 1),
    ("photo", 1),
    ("close", 1),
    ("power_up", 1),
    ("restore", 1),
    ("leave_away", 1),
    ("measure", 2),
    ("pause", 1),
    ("resume", 1),
    ("end", 1),
    ("decide", 1),
    ("strike", 1),
    ("from_backup", 1),
    ("recovered", 1),
];

/// The current version of a kind; `None` where there is no such kind.
#[must_use]
pub fn current(kind: &str) -> Option<u32> {
    KINDS
        .iter()
        .find(|(name, _)| *name == kind)
        .map(|(_, version)| *version)
}
