//! `calc sample`: which of many like points this year, and what those that were seen say of the rest.

use super::{Calculate, Fault, at};
use baywalk_domain::sampling::{Rotation, said};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The calculation.
pub(super) struct Calculation;

/// Like points, the years within which all are seen, and what was found.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct Given {
    /// The codes of the like points.
    points: Vec<String>,
    /// How many are gone through a year; where left out, as few as see all within the years.
    each: Option<usize>,
    /// The years within which all are seen, 1 to 30.
    years: u32,
    /// Which year it is, counted from 0.
    year: u32,
    /// What the order is mixed by; the same seed gives the same order.
    seed: u64,
    /// How many of those gone through were loose.
    #[serde(default)]
    loose: u32,
    /// How many were gone through; where left out, those of the year.
    seen: Option<u32>,
    /// The confidence of the bound, 0.5 to 0.999.
    #[serde(default = "usual")]
    confidence: f64,
}

const fn usual() -> f64 {
    0.95
}

/// The points of the year, and what they say.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Found {
    /// How many are gone through a year.
    each: usize,
    /// The points of the year, by their codes.
    points: Vec<String>,
    /// The points that are gone through beside, since some were loose.
    more: Vec<String>,
    /// The most that are loose among all, at the confidence.
    most: u32,
    /// The most that are loose among those that were not gone through.
    most_of_rest: u32,
    /// How likely so few or fewer loose ones would have been seen if that many were loose.
    likely: f64,
}

impl Calculate for Calculation {
    const NAME: &'static str = "sample";
    const ABOUT: &'static str = "Which of many like points are gone through in a year so that all are seen within some \
         years, and what those seen say of the rest.";
    type In = Given;
    type Out = Found;

    fn calculate(given: Given) -> Result<Found, Fault> {
        let count = given.points.len();
        let rotation = Rotation::of(count, given.each, given.years, given.seed);
        let rotation = rotation.map_err(at("points, each, years"))?;
        let code = |point: &usize| given.points.get(*point).cloned();
        let grown = rotation.grown(given.year, given.loose);
        let (own, more) = grown.split_at(rotation.each().min(grown.len()));
        let number = |count: usize| u32::try_from(count).unwrap_or(u32::MAX);
        let seen = given.seen.unwrap_or_else(|| number(own.len()));
        let said = said(number(count), seen, given.loose, given.confidence);
        let said = said.map_err(at("seen, loose, confidence"))?;
        Ok(Found {
            each: rotation.each(),
            points: own.iter().filter_map(code).collect(),
            more: more.iter().filter_map(code).collect(),
            most: said.most,
            most_of_rest: said.most_of_rest,
            likely: said.likely,
        })
    }
}
