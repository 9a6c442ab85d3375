//! A joint against its like: same kind, same size, same current path.

use super::{JointFault, MicroOhms};

/// Above this many times the lowest like joint a joint is investigated: "more than 50 % of the lowest
/// value" (NETA acceptance and maintenance testing specifications, bolted connections; wording from
/// memory, the same factor for contacts second hand).
pub const INVESTIGATE_ABOVE: f64 = 1.5;

/// How one of several like joints stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Against {
    /// Its resistance over that of the lowest.
    pub ratio: f64,
    /// The resistance above which it is investigated.
    pub limit: MicroOhms,
    /// Whether it is above the limit.
    pub investigate: bool,
}

/// Holds each of several like joints against the lowest of them, in the order given.
///
/// # Errors
/// [`JointFault::TooFew`] below two joints; [`JointFault::Nothing`] where the lowest reads 0, so that
/// no ratio is one.
///
/// # Example
/// ```
/// use baywalk_domain::joint::{MicroOhms, against_like};
/// let joints = [100.0, 149.0, 151.0].map(MicroOhms::new);
/// let joints: Vec<_> = joints.into_iter().collect::<Result<_, _>>()?;
/// let against = against_like(&joints)?;
/// let flags: Vec<_> = against.iter().map(|one| one.investigate).collect();
/// assert_eq!(flags, [false, false, true]);
/// assert!(against_like(&joints[..1]).is_err());
/// # Ok::<(), baywalk_domain::joint::JointFault>(())
/// ```
pub fn against_like(joints: &[MicroOhms]) -> Result<Vec<Against>, JointFault> {
    if joints.len() < 2 {
        return Err(JointFault::TooFew {
            found: joints.len(),
        });
    }
    let lowest = joints
        .iter()
        .map(|joint| joint.micro_ohms())
        .fold(f64::INFINITY, f64::min);
    if lowest <= 0.0 {
        return Err(JointFault::Nothing);
    }
    let limit = MicroOhms::new(INVESTIGATE_ABOVE * lowest)?;
    let against = joints.iter().map(|joint| Against {
        ratio: joint.micro_ohms() / lowest,
        limit,
        investigate: *joint > limit,
    });
    Ok(against.collect())
}
