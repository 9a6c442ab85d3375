//! `calc pooled`: several groups of joints fitted together, with traits.

use super::loosening::{BeliefIn, belief};
use super::{Calculate, Fault, at};
use baywalk_domain::loosening::{CONFIDENCE, Life, Member, Pool, PoolPrior, pool};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The calculation.
pub(super) struct Calculation;

/// Lives with their groups and traits.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct Given {
    lives: Vec<MemberIn>,
    /// Our weak beliefs for ages in months; not together with others.
    #[serde(default)]
    weak: bool,
    shape: Option<BeliefIn>,
    common: Option<BeliefIn>,
    groups: Option<BeliefIn>,
    traits: Option<BeliefIn>,
    /// Joints of which the chance of having moved by an age is told.
    #[serde(default)]
    asked: Vec<AskedIn>,
}

#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct MemberIn {
    /// The group, from 0.
    group: usize,
    /// The same number of traits for all.
    #[serde(default)]
    traits: Vec<f64>,
    after: f64,
    by: Option<f64>,
    count: Option<u32>,
}

#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct AskedIn {
    group: usize,
    #[serde(default)]
    traits: Vec<f64>,
    age: f64,
}

/// The terms with their standard errors, and what was asked.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Found {
    /// ln k; the common part of ln λ where groups are drawn to it; each group's; each trait's.
    terms: Vec<f64>,
    errors: Vec<f64>,
    log_likelihood: f64,
    asked: Vec<ChanceOut>,
}

#[derive(Debug, Serialize, JsonSchema)]
struct ChanceOut {
    mean: f64,
    /// Nine in ten.
    interval: [f64; 2],
}

/// The most groups and the most traits of one call.
const MOST: usize = 50;

impl Calculate for Calculation {
    const NAME: &'static str = "pooled";
    const ABOUT: &'static str =
        "Weibull laws of several groups with traits, fitted together, each drawn to what all have in common.";
    type In = Given;
    type Out = Found;

    fn calculate(given: Given) -> Result<Found, Fault> {
        let traits = given.lives.first().map_or(0, |life| life.traits.len());
        let members = given.lives.iter().map(|life| member(life, traits));
        let members: Vec<Member> = members.collect::<Result<_, _>>()?;
        let groups = members.iter().map(|member| member.group + 1).max().unwrap_or(0);
        let fitted = pool(&members, &prior(&given)?);
        let fitted = fitted.map_err(|why| Fault::Refused(why.to_string()))?;
        let asked = given.asked.iter().map(|asked| {
            if asked.group >= groups || asked.traits.len() != traits {
                return Err(at("asked")("expected a group and traits as the lives have them"));
            }
            chance(&fitted, asked)
        });
        Ok(Found {
            asked: asked.collect::<Result<_, _>>()?,
            terms: fitted.terms().to_vec(),
            errors: fitted.errors(),
            log_likelihood: fitted.log_likelihood(),
        })
    }
}

fn chance(fitted: &Pool, asked: &AskedIn) -> Result<ChanceOut, Fault> {
    let cloud = fitted.cloud(asked.group, &asked.traits);
    let cloud = cloud.map_err(|why| Fault::Refused(why.to_string()))?;
    let (least, most) = cloud.interval(CONFIDENCE, |law| law.moved_by(asked.age));
    Ok(ChanceOut { mean: cloud.mean(|law| law.moved_by(asked.age)), interval: [least, most] })
}

fn member(given: &MemberIn, traits: usize) -> Result<Member, Fault> {
    if given.group >= MOST || given.traits.len() != traits || traits > MOST {
        return Err(at("lives")("expected groups below 50 and as many traits in each life"));
    }
    if !given.traits.iter().all(|value| value.abs() <= 1e3) {
        return Err(at("lives.traits")("expected numbers within a thousand"));
    }
    let life = match given.by {
        Some(by) => Life::moved(given.after, by),
        None => Life::held(given.after),
    };
    let life = life.and_then(|life| life.times(given.count.unwrap_or(1))).map_err(at("lives"))?;
    Ok(Member { group: given.group, traits: given.traits.clone(), life })
}

fn prior(given: &Given) -> Result<PoolPrior, Fault> {
    let own = PoolPrior {
        shape: belief(&given.shape)?,
        common: belief(&given.common)?,
        groups: belief(&given.groups)?,
        traits: belief(&given.traits)?,
    };
    match (given.weak, own == PoolPrior::default()) {
        (true, true) => Ok(PoolPrior::WEAK),
        (true, false) => Err(at("weak")("expected weak beliefs or beliefs of your own, not both")),
        (false, _) => Ok(own),
    }
}
