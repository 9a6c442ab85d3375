//! Which call is failed, and how.

/// How a call fails.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fault {
    /// An input/output error, once.
    ErrorOnce,
    /// An input/output error at this and every later call.
    ErrorForGood,
    /// No room from this call on: what needs none still goes.
    Full,
    /// Half of what is written is written; the rest finds no room.
    ShortWrite,
}

impl Fault {
    /// All of them.
    pub const ALL: [Self; 4] = [
        Self::ErrorOnce,
        Self::ErrorForGood,
        Self::Full,
        Self::ShortWrite,
    ];
}

/// The plan to fail one call.
#[derive(Debug, Clone, Copy)]
pub struct Plan {
    /// The number of the call, from 1 on.
    pub at: u64,
    /// How it fails.
    pub fault: Fault,
}

/// What a call asks for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Asks {
    /// Nothing that takes room.
    Nothing,
    /// Room for a name or a map.
    Room,
    /// Room for so many bytes.
    Bytes(usize),
}

/// What becomes of a call.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Verdict {
    /// It goes on to the system.
    Go,
    /// It fails with an error number.
    Fail(i32),
    /// It writes so many bytes only.
    Short(usize),
}

impl Plan {
    /// What becomes of the call of a number.
    pub(super) fn verdict(&self, number: u64, asks: Asks, cut: &mut bool) -> Verdict {
        let now = number == self.at;
        let since = number >= self.at;
        match (self.fault, asks) {
            (Fault::ErrorOnce, _) if now => Verdict::Fail(libc::EIO),
            (Fault::ErrorForGood, _) if since => Verdict::Fail(libc::EIO),
            (Fault::Full, Asks::Room | Asks::Bytes(_)) if since => Verdict::Fail(libc::ENOSPC),
            (Fault::ShortWrite, Asks::Bytes(length)) if now => {
                *cut = true;
                Verdict::Short(length / 2)
            }
            (Fault::ShortWrite, Asks::Bytes(_)) if *cut => {
                *cut = false;
                Verdict::Fail(libc::ENOSPC)
            }
            _ => Verdict::Go,
        }
    }
}
