//! What the lives of one kind of joint tell, as much as they can bear.

use super::{Fit, Life, NoFit, Prior, Proportion, fit, proportion, tally};

/// Below so many moved joints no law is told, the proportion alone (ours: the shape can hardly be
/// told from fewer).
pub const FEWEST_MOVED: u32 = 5;

/// The confidence of the intervals that are shown.
pub const CONFIDENCE: f64 = 0.9;

/// What lives tell.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Told {
    /// How many joints.
    pub joints: u32,
    /// How many of them had moved.
    pub moved: u32,
    /// Their share with its interval; `None` where there is no joint.
    pub proportion: Option<Proportion>,
    /// The law, or why there is none.
    pub law: Result<Fit, NoFit>,
}

/// Tells what lives tell: the proportion always, a law only where enough had moved.
///
/// # Example
/// ```
/// use baywalk_domain::loosening::{Life, NoFit, Prior, told};
/// let lives = [Life::moved(0.0, 12.0)?.times(3)?, Life::held(12.0)?.times(17)?];
/// let few = told(&lives, &Prior::WEAK, 0.9);
/// assert_eq!((few.joints, few.moved), (20, 3));
/// assert_eq!(few.law, Err(NoFit::FewMoved));
/// # Ok::<(), baywalk_domain::loosening::LifeFault>(())
/// ```
#[must_use]
pub fn told(lives: &[Life], prior: &Prior, confidence: f64) -> Told {
    let (joints, moved) = tally(lives);
    let law = match moved {
        _ if joints == 0 => Err(NoFit::Nothing),
        0 => Err(NoFit::NoneMoved),
        few if few < FEWEST_MOVED => Err(NoFit::FewMoved),
        _ => fit(lives, prior),
    };
    Told {
        joints,
        moved,
        proportion: proportion(joints, moved, confidence),
        law,
    }
}
