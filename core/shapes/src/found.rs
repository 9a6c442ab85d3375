//! What was found at a terminal, as its drawing.

use crate::clamp::{Depth, clamp};
use crate::{Drawing, screw, sign};
use baywalk_domain::rig::FasteningKind;
use baywalk_domain::walk::{Angle, AsFound, Grade, Movement};

/// The drawing of what was found at a terminal, in a box of 48: a wire in a clamp where a clamp
/// holds it, else a screw.
///
/// # Example
/// ```
/// use baywalk_domain::rig::FasteningKind;
/// use baywalk_domain::walk::AsFound;
/// use baywalk_shapes::{found::found, screw};
/// assert_eq!(found(&AsFound::Loose, FasteningKind::Stud), screw::loose());
/// assert_ne!(found(&AsFound::Loose, FasteningKind::PushIn), screw::loose());
/// ```
#[must_use]
pub fn found(found: &AsFound, fastening: FasteningKind) -> Drawing {
    let depth = match found {
        AsFound::Held(_) => Some(Depth::Held),
        AsFound::Moved(_) => Some(Depth::Moved),
        AsFound::Loose => Some(Depth::Loose),
        AsFound::Apart => Some(Depth::Apart),
        _ => None,
    };
    match (depth, found) {
        (Some(depth), _) if is_clamp(fastening) => clamp(depth),
        (_, AsFound::Moved(movement)) => screw::moved(angle_of(movement)),
        _ => graded(found.grade()),
    }
}

/// The drawing of a grade, where no terminal is meant: a screw, moved by an eighth of a turn.
#[must_use]
pub fn graded(grade: Grade) -> Drawing {
    match grade {
        Grade::Held => screw::held(),
        Grade::Moved => screw::moved(Some(Angle::Eighth)),
        Grade::Loose => screw::loose(),
        Grade::Apart => screw::apart(),
        Grade::LookedAt => sign::look(),
        Grade::NotJudged => sign::to_do(),
    }
}

/// The angle by which a joint turned, where it was seen.
#[must_use]
pub const fn angle_of(movement: &Movement) -> Option<Angle> {
    match movement {
        Movement::Turned { angle, .. } | Movement::MarkOff { angle } => Some(*angle),
        Movement::Began { .. } | Movement::Gave => None,
    }
}

/// Whether a spring and no screw holds the wire.
const fn is_clamp(fastening: FasteningKind) -> bool {
    matches!(
        fastening,
        FasteningKind::PushIn | FasteningKind::SpringClamp | FasteningKind::Lever
    )
}
