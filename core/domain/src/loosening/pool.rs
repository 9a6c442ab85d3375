//! Several kinds of joint fitted together: each has its own scale, drawn to what all have in common.

use super::draws::draws;
use super::fit::start;
use super::likelihood::Logged;
use super::matrix::Symmetric;
use super::search::{Cohort, Posterior};
use super::{Belief, Cloud, Fit, Law, Life, NoFit, Prior};
use std::collections::BTreeMap;

/// A life with the group of the joint and what else its scale may hang on.
#[derive(Debug, Clone, PartialEq)]
pub struct Member {
    /// The group, from 0.
    pub group: usize,
    /// What each trait is, as a number; all members have as many.
    pub traits: Vec<f64>,
    /// The life.
    pub life: Life,
}

/// What is believed beforehand; nothing where left out.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct PoolPrior {
    /// Of ln k, which all groups share.
    pub shape: Option<Belief>,
    /// Of ln λ of all groups.
    pub common: Option<Belief>,
    /// Of what each group adds to it; where nothing is believed groups stand alone.
    pub groups: Option<Belief>,
    /// Of what a trait adds to it.
    pub traits: Option<Belief>,
}

impl PoolPrior {
    /// Weak beliefs for ages in months (ours, no source): those of [`Prior::WEAK`] for all together; a
    /// kind lies within a factor of three of the others in nine of ten, a trait within a factor of
    /// two and a quarter.
    pub const WEAK: Self = Self {
        shape: Prior::WEAK.shape,
        common: Prior::WEAK.scale,
        groups: Some(Belief::known(0.0, 0.7)),
        traits: Some(Belief::known(0.0, 0.5)),
    };
}

/// Several groups fitted together.
#[derive(Debug, Clone, PartialEq)]
pub struct Pool {
    /// How many groups.
    groups: usize,
    /// Whether groups are drawn to what they have in common.
    drawn: bool,
    /// ln k, then the terms of ln λ.
    at: Vec<f64>,
    covariance: Symmetric,
    log_likelihood: f64,
    /// What else may be, with weights.
    draws: Vec<(Vec<f64>, f64)>,
}

/// Fits groups together: ln λ is a common part, the group's own and what its traits add; the shape is
/// one. Errors are from the curvature at the highest point (Laplace).
///
/// # Errors
/// [`NoFit`] where nothing tells, or no highest point is reached.
///
/// # Example
/// ```
/// use baywalk_domain::loosening::{Life, Member, PoolPrior, pool};
/// let of = |group, life: Life| Member { group, traits: vec![], life };
/// let members = [
///     of(0, Life::moved(0.0, 12.0)?.times(6)?),
///     of(0, Life::held(24.0)?.times(14)?),
///     of(1, Life::held(24.0)?.times(8)?),
/// ];
/// let pool = pool(&members, &PoolPrior::WEAK)?;
/// let chance = |group| Ok::<_, Box<dyn std::error::Error>>(pool.law(group, &[])?.law.moved_by(12.0));
/// // The group in which none moved is drawn to the other, and still moves less.
/// assert!(0.0 < chance(1)? && chance(1)? < chance(0)?);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn pool(members: &[Member], prior: &PoolPrior) -> Result<Pool, NoFit> {
    let lives: Vec<Life> = members.iter().map(|member| member.life).collect();
    let tells = |life: &Life| life.by().is_some() || life.after() > 0.0;
    if !lives.iter().any(tells) {
        return Err(NoFit::Nothing);
    }
    let moved = lives.iter().any(|life| life.by().is_some());
    if !moved && prior.common.is_none() {
        return Err(NoFit::NoneMoved);
    }
    let groups = members
        .iter()
        .map(|member| member.group + 1)
        .max()
        .unwrap_or(0);
    let traits = members.first().map_or(0, |member| member.traits.len());
    let drawn = prior.groups.is_some();
    let first = start(
        &lives,
        &Prior {
            shape: prior.shape,
            scale: prior.common,
        },
    );
    let mut at = vec![0.0];
    let mut beliefs = vec![prior.shape];
    if drawn {
        at.push(first);
        beliefs.push(prior.common);
    }
    at.extend(std::iter::repeat_n(if drawn { 0.0 } else { first }, groups));
    beliefs.extend(std::iter::repeat_n(
        if drawn { prior.groups } else { prior.common },
        groups,
    ));
    at.extend(std::iter::repeat_n(0.0, traits));
    beliefs.extend(std::iter::repeat_n(prior.traits, traits));
    let cohorts = cohorts(members, groups, drawn);
    let posterior = Posterior { cohorts, beliefs };
    let peak = posterior.peak(at)?;
    Ok(Pool {
        groups,
        drawn,
        draws: draws(&posterior, &peak),
        covariance: peak.curvature.inverse(),
        at: peak.at,
        log_likelihood: peak.log_likelihood,
    })
}

/// Members with the same terms, together.
fn cohorts(members: &[Member], groups: usize, drawn: bool) -> Vec<Cohort> {
    let mut by_row: BTreeMap<Vec<u64>, Cohort> = BTreeMap::new();
    for member in members {
        let row = row(groups, drawn, member.group, &member.traits);
        let key = row.iter().map(|term| term.to_bits()).collect();
        let cohort = by_row.entry(key).or_insert_with(|| Cohort {
            row,
            lives: Vec::new(),
        });
        cohort.lives.extend(Logged::new(&member.life));
    }
    by_row.into_values().collect()
}

/// What each term of ln λ is multiplied with.
fn row(groups: usize, drawn: bool, group: usize, traits: &[f64]) -> Vec<f64> {
    let common = drawn.then_some(1.0);
    let own = (0..groups).map(|other| if other == group { 1.0 } else { 0.0 });
    common
        .into_iter()
        .chain(own)
        .chain(traits.iter().copied())
        .collect()
}

impl Pool {
    /// ln k, the common part of ln λ where groups are drawn to it, each group's own, each trait's.
    #[must_use]
    pub fn terms(&self) -> &[f64] {
        &self.at
    }

    /// The standard errors of the terms.
    #[must_use]
    pub fn errors(&self) -> Vec<f64> {
        (0..self.at.len())
            .map(|n| self.covariance.at(n, n).sqrt())
            .collect()
    }

    /// The log-likelihood of the lives.
    #[must_use]
    pub const fn log_likelihood(&self) -> f64 {
        self.log_likelihood
    }

    /// The law of a joint of a group with traits, and how surely it is known.
    ///
    /// # Errors
    /// [`NoFit::NoEnd`] where the law is beyond all numbers.
    pub fn law(&self, group: usize, traits: &[f64]) -> Result<Fit, NoFit> {
        let row = row(self.groups, self.drawn, group, traits);
        let scale: f64 = row
            .iter()
            .zip(self.at.iter().skip(1))
            .map(|(x, c)| x * c)
            .sum();
        let shape = self.at.first().copied().ok_or(NoFit::NoEnd)?;
        let terms = || row.iter().enumerate();
        let mixed = terms().map(|(n, x)| x * self.covariance.at(n + 1, 0)).sum();
        let spread = terms()
            .flat_map(|(n, x)| terms().map(move |(m, y)| (n, m, x * y)))
            .map(|(n, m, xy)| xy * self.covariance.at(n + 1, m + 1))
            .sum();
        Ok(Fit {
            law: Law::new(shape.exp(), scale.exp()).ok_or(NoFit::NoEnd)?,
            log_likelihood: self.log_likelihood,
            variances: (self.covariance.at(0, 0), spread),
            covariance: mixed,
        })
    }

    /// What is believed of the law of a joint of a group with traits.
    ///
    /// # Errors
    /// [`NoFit::NoEnd`] where the laws are beyond all numbers.
    pub fn cloud(&self, group: usize, traits: &[f64]) -> Result<Cloud, NoFit> {
        let row = row(self.groups, self.drawn, group, traits);
        let laws = self.draws.iter().filter_map(|(at, weight)| {
            let (shape, terms) = at.split_first()?;
            let scale: f64 = row.iter().zip(terms).map(|(x, c)| x * c).sum();
            Some((Law::new(shape.exp(), scale.exp())?, *weight))
        });
        Cloud::of(laws.collect())
    }
}
