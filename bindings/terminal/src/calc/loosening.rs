//! `calc loosening`: a Weibull law, the estimate without a law, and the proportion, from lives that
//! checks tell as intervals.

use super::shape::Word;
use super::{Calculate, Fault, at};
use baywalk_domain::loosening::{
    Belief, CONFIDENCE, Cloud, Fit, Law, Life, NoFit, Npmle, Prior, npmle, proportion, told,
};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The calculation.
pub(super) struct Calculation;

/// Lives of like joints, in one clock throughout.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct Given {
    lives: Vec<LifeIn>,
    /// What is believed beforehand; nothing where left out.
    #[serde(default)]
    prior: PriorIn,
    /// The confidence of the proportion's interval; 0.9 where left out.
    confidence: Option<f64>,
    /// Ages at which the chance of having moved is told.
    #[serde(default)]
    ages: Vec<f64>,
    /// Chances for which the age is told.
    #[serde(default)]
    chances: Vec<f64>,
    /// Whether the posterior is told too; it needs beliefs.
    #[serde(default)]
    posterior: bool,
}

/// Joints that held at one age and had moved by another.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct LifeIn {
    /// The last age at which it held; 0 where it was not checked since it was set.
    after: f64,
    /// The age by which it had moved; null where it still held. The same as `after`: known exactly.
    by: Option<f64>,
    /// How many joints; 1 where left out.
    count: Option<u32>,
}

/// Beliefs about ln k and ln λ.
#[derive(Debug, Default, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct PriorIn {
    /// Our weak beliefs for ages in months; not together with others.
    #[serde(default)]
    weak: bool,
    shape: Option<BeliefIn>,
    scale: Option<BeliefIn>,
}

#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct BeliefIn {
    mean: f64,
    deviation: f64,
}

/// What the lives tell.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Found {
    joints: u32,
    moved: u32,
    share: f64,
    /// The share's interval, least and most.
    interval: [f64; 2],
    /// Null where no law is told.
    law: Option<LawOut>,
    /// Why no law is told.
    no_law: Option<Word<NoFit>>,
    /// What is believed with the belief taken in, by quadrature; null where it was not asked for.
    posterior: Option<PosteriorOut>,
    npmle: NpmleOut,
}

#[derive(Debug, Serialize, JsonSchema)]
struct LawOut {
    shape: f64,
    scale: f64,
    log_likelihood: f64,
    /// Standard error of ln k.
    error_ln_shape: f64,
    /// Standard error of ln λ.
    error_ln_scale: f64,
    covariance: f64,
    /// The chance of having moved by each age asked for.
    moved_by: Vec<f64>,
    /// The age of each chance asked for.
    age_at: Vec<f64>,
}

/// Means and intervals over the posterior, each with the confidence that was asked for.
#[derive(Debug, Serialize, JsonSchema)]
struct PosteriorOut {
    ln_shape: [f64; 2],
    ln_scale: [f64; 2],
    /// The mean chance of having moved by each age asked for.
    moved_by: Vec<f64>,
    /// Its interval.
    moved_by_interval: Vec<[f64; 2]>,
}

#[derive(Debug, Serialize, JsonSchema)]
struct NpmleOut {
    spans: Vec<SpanOut>,
    log_likelihood: f64,
    /// How far the condition of Kuhn and Tucker is missed.
    gap: f64,
}

#[derive(Debug, Serialize, JsonSchema)]
struct SpanOut {
    after: f64,
    by: Option<f64>,
    mass: f64,
}

impl Calculate for Calculation {
    const NAME: &'static str = "loosening";
    const ABOUT: &'static str = "A Weibull law with its errors, the estimate without a law, and the proportion, from interval-censored lives.";
    type In = Given;
    type Out = Found;

    fn calculate(given: Given) -> Result<Found, Fault> {
        let lives: Vec<Life> = given.lives.iter().map(life).collect::<Result<_, _>>()?;
        let confidence = given.confidence.unwrap_or(CONFIDENCE);
        let prior = prior(&given.prior)?;
        let told = told(&lives, &prior, confidence);
        let share = proportion(told.joints, told.moved, confidence)
            .ok_or_else(|| at("confidence")("expected joints, and a confidence between 0 and 1"))?;
        let free = npmle(&lives).map_err(|why| Fault::Refused(why.to_string()))?;
        Ok(Found {
            joints: told.joints,
            moved: told.moved,
            share: share.share,
            interval: [share.least, share.most],
            law: told.law.ok().map(|fit| law(&fit, &given)),
            no_law: told.law.err().map(Word),
            posterior: given.posterior.then(|| posterior(&lives, &prior, &given)).transpose()?,
            npmle: out(&free),
        })
    }
}

fn life(given: &LifeIn) -> Result<Life, Fault> {
    let life = match given.by {
        Some(by) if by.total_cmp(&given.after).is_eq() => Life::moved_at(by),
        Some(by) => Life::moved(given.after, by),
        None => Life::held(given.after),
    };
    life.and_then(|life| life.times(given.count.unwrap_or(1)))
        .map_err(at("lives"))
}

/// A belief, where one is given.
pub(super) fn belief(given: &Option<BeliefIn>) -> Result<Option<Belief>, Fault> {
    let known = given.as_ref();
    known
        .map(|belief| Belief::new(belief.mean, belief.deviation))
        .transpose()
        .map_err(at("prior"))
}

fn prior(given: &PriorIn) -> Result<Prior, Fault> {
    let (shape, scale) = (belief(&given.shape)?, belief(&given.scale)?);
    match (given.weak, shape, scale) {
        (false, shape, scale) => Ok(Prior { shape, scale }),
        (true, None, None) => Ok(Prior::WEAK),
        _ => Err(at("prior")("expected weak beliefs or beliefs of your own, not both")),
    }
}

fn law(fit: &Fit, given: &Given) -> LawOut {
    let (error_ln_shape, error_ln_scale) = fit.errors();
    LawOut {
        shape: fit.law.shape(),
        scale: fit.law.scale(),
        log_likelihood: fit.log_likelihood,
        error_ln_shape,
        error_ln_scale,
        covariance: fit.covariance,
        moved_by: given.ages.iter().map(|age| fit.law.moved_by(*age)).collect(),
        age_at: given.chances.iter().map(|chance| fit.law.age_at(*chance)).collect(),
    }
}

fn posterior(lives: &[Life], prior: &Prior, given: &Given) -> Result<PosteriorOut, Fault> {
    let cloud = Cloud::exact(lives, prior).map_err(|why| Fault::Refused(why.to_string()))?;
    let confidence = given.confidence.unwrap_or(CONFIDENCE);
    let interval = |tells: &dyn Fn(&Law) -> f64| {
        let (least, most) = cloud.interval(confidence, tells);
        [least, most]
    };
    let ages = || given.ages.iter();
    Ok(PosteriorOut {
        ln_shape: interval(&|law| law.shape().ln()),
        ln_scale: interval(&|law| law.scale().ln()),
        moved_by: ages().map(|age| cloud.mean(|law| law.moved_by(*age))).collect(),
        moved_by_interval: ages().map(|age| interval(&|law| law.moved_by(*age))).collect(),
    })
}

fn out(free: &Npmle) -> NpmleOut {
    let spans = free.spans.iter().map(|span| SpanOut {
        after: span.after,
        by: span.by,
        mass: span.mass,
    });
    NpmleOut {
        spans: spans.collect(),
        log_likelihood: free.log_likelihood,
        gap: free.gap,
    }
}
