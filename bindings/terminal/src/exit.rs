//! Exit codes that mean something.

use baywalk_screens::ProblemKind;
use std::process::ExitCode;

/// The exit code of a problem: 1 anything unexpected, 2 what was typed or read can't be used,
/// 3 the rules refuse it, 4 there is no such thing, 5 no room, 6 another process has the logbook,
/// 7 a newer version, 8 damaged.
pub(crate) fn code(kind: ProblemKind) -> ExitCode {
    ExitCode::from(match kind {
        ProblemKind::Unexpected => 1,
        ProblemKind::Input => 2,
        ProblemKind::Refused => 3,
        ProblemKind::NotFound => 4,
        ProblemKind::StorageFull => 5,
        ProblemKind::Held => 6,
        ProblemKind::TooNew => 7,
        ProblemKind::Damaged => 8,
    })
}

/// What the command line's own reader says; help and version are no fault.
pub(crate) fn usage(error: &clap::Error) -> ExitCode {
    let _ = error.print();
    ExitCode::from(u8::try_from(error.exit_code()).unwrap_or(2))
}
