//! How many of the joints had moved, and between what limits the share of all such joints lies.

/// A share with its interval.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Proportion {
    /// The share that was counted.
    pub share: f64,
    /// The lower limit.
    pub least: f64,
    /// The upper limit.
    pub most: f64,
}

/// The share of moved joints with the interval of Clopper and Pearson (1934) at a confidence.
///
/// It is chosen because it never covers less than it says, at any number of joints; the price is that
/// it is wider than others. `None` where there is no joint, more moved than there are, or the
/// confidence is not between 0 and 1.
///
/// # Example
/// ```
/// use baywalk_domain::loosening::proportion;
/// // 3 of 20 at 95 % (computed by a statistics library): 0.0320709 to 0.3789268.
/// let found = proportion(20, 3, 0.95).ok_or("no joints")?;
/// assert!((found.least - 0.032_070_9).abs() < 1e-7);
/// assert!((found.most - 0.378_926_8).abs() < 1e-7);
/// // None of 30: the upper limit is 1 − 0.025^(1/30).
/// let none = proportion(30, 0, 0.95).ok_or("no joints")?;
/// assert!((none.most - (1.0 - 0.025_f64.powf(1.0 / 30.0))).abs() < 1e-9);
/// # Ok::<(), &str>(())
/// ```
#[must_use]
pub fn proportion(joints: u32, moved: u32, confidence: f64) -> Option<Proportion> {
    if joints == 0 || moved > joints || !(confidence > 0.0 && confidence < 1.0) {
        return None;
    }
    let tail = 0.5 * (1.0 - confidence);
    // The lower limit of the moved is the upper limit of the held, seen from the other side.
    Some(Proportion {
        share: f64::from(moved) / f64::from(joints),
        least: 1.0 - upper(joints, joints - moved, tail),
        most: upper(joints, moved, tail),
    })
}

/// The share at which so few as `moved` are seen with just the chance of the tail.
fn upper(joints: u32, moved: u32, tail: f64) -> f64 {
    if moved == joints {
        return 1.0;
    }
    let (mut low, mut high) = (f64::from(moved) / f64::from(joints), 1.0);
    for _ in 0..60 {
        let middle = 0.5 * (low + high);
        if at_most(joints, moved, middle) > tail {
            low = middle;
        } else {
            high = middle;
        }
    }
    0.5 * (low + high)
}

/// The binomial chance of at most so many, summed from the largest term down; the share is above
/// what was counted, so that terms fall from there.
fn at_most(joints: u32, moved: u32, share: f64) -> f64 {
    let odds = (1.0 - share) / share;
    let ways: f64 = (1..=moved)
        .map(|i| (f64::from(joints - moved + i) / f64::from(i)).ln())
        .sum();
    let held = f64::from(joints - moved) * (-share).ln_1p();
    let mut term = (ways + f64::from(moved) * share.ln() + held).exp();
    let mut sum = term;
    for i in (1..=moved).rev() {
        term *= f64::from(i) / f64::from(joints - i + 1) * odds;
        sum += term;
        if term < 1e-18 * sum {
            break;
        }
    }
    sum
}
