//! What lives tell without any law: the nonparametric maximum-likelihood estimate (Turnbull 1976).

mod climb;
mod innermost;
mod isotonic;

use super::{Life, NoFit};
use innermost::Classes;

/// A span of age that holds some chance of moving; where inside it the chance lies can't be told.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Span {
    /// The age after which it begins.
    pub after: f64,
    /// The age with which it ends; `None` for beyond the last check.
    pub by: Option<f64>,
    /// The chance of moving in it.
    pub mass: f64,
}

/// The estimate without a law.
#[derive(Debug, Clone, PartialEq)]
pub struct Npmle {
    /// The innermost intervals in order of age; all chance lies in them.
    pub spans: Vec<Span>,
    /// The log-likelihood.
    pub log_likelihood: f64,
    /// By how much the condition of Kuhn and Tucker is missed, as a share of the lives: 0 at the
    /// highest point, and the log-likelihood is at most this many times the number of lives below it.
    pub gap: f64,
}

impl Npmle {
    /// The least and the most that the chance of having moved by an age can be.
    #[must_use]
    pub fn moved_by(&self, age: f64) -> (f64, f64) {
        let whole = |span: &&Span| span.by.is_some_and(|by| by <= age);
        let begun = |span: &&Span| span.after < age;
        let sum = |spans: &mut dyn Iterator<Item = &Span>| spans.map(|span| span.mass).sum();
        (
            sum(&mut self.spans.iter().filter(whole)),
            sum(&mut self.spans.iter().filter(begun)),
        )
    }
}

/// Estimates the chances of moving without a law.
///
/// Steps of the convex-minorant algorithm and of expectation and maximisation take turns (Wellner and
/// Zhan 1997), until the condition of Kuhn and Tucker is met to a hundred-millionth part.
///
/// # Errors
/// [`NoFit::Nothing`] where there is no life, [`NoFit::NoEnd`] where the condition is not met.
///
/// # Example
/// ```
/// use baywalk_domain::loosening::{Life, npmle};
/// let lives = [Life::moved(0.0, 12.0)?.times(3)?, Life::held(12.0)?.times(17)?];
/// let found = npmle(&lives)?;
/// assert!((found.spans[0].mass - 0.15).abs() < 1e-9);
/// assert_eq!(found.spans[1].by, None);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn npmle(lives: &[Life]) -> Result<Npmle, NoFit> {
    let (ends, classes) = Classes::new(lives);
    if ends.is_empty() {
        return Err(NoFit::Nothing);
    }
    let top = climb::climb(&classes, ends.len())?;
    let spans = ends.iter().zip(&top.masses);
    Ok(Npmle {
        spans: spans
            .map(|(&(after, by), mass)| Span {
                after,
                by: Some(by).filter(|by| by.is_finite()),
                mass: *mass,
            })
            .collect(),
        log_likelihood: top.log_likelihood,
        gap: top.gap,
    })
}
