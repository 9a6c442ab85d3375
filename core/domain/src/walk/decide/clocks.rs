//! What the clocks tell: a clock that fell back is flagged, a break makes proofs lapse.

use super::Context;
use crate::isolation::{IDLE_LIMIT, Lapse};
use crate::moment::Moment;
use crate::rig::BookChange;
use crate::walk::{Act, Flags};

/// Seconds by which wall clock and clock since start may differ between two acts. Ours.
const DISAGREE: i64 = 120;

/// Notices what is odd about the clocks at an act.
pub(super) fn flags(context: &Context<'_>, act: &Act, now: &Moment) -> Flags {
    let clock_back = context.newest.is_some_and(|newest| now.wall < newest.wall);
    let by_clock = context.walk.and_then(|walk| lapse(&walk.last, now));
    let by_act = match act {
        Act::Resume => Some(Lapse::Pause),
        Act::Isolate { .. } | Act::Book(BookChange::Source(_)) => Some(Lapse::Isolation),
        act if act.is_origin() => context.walk.map(|_| Lapse::Restored),
        _ => None,
    };
    Flags {
        clock_back,
        lapse: by_clock.or(by_act),
    }
}

/// Why proofs made before the last act no longer count now.
fn lapse(last: &Moment, now: &Moment) -> Option<Lapse> {
    let Some(passed) = now.boot.seconds_since(&last.boot) else {
        return Some(Lapse::Restart);
    };
    let by_wall = (now.wall - last.wall).num_seconds();
    let apart = i64::try_from(passed)
        .ok()
        .and_then(|passed| by_wall.checked_sub(passed));
    if apart.is_none_or(|apart| apart.abs() > DISAGREE) {
        Some(Lapse::ClockJump)
    } else if passed > IDLE_LIMIT {
        Some(Lapse::Idle)
    } else {
        None
    }
}
