//! `calc service`: what the readings of a service say, for one survey or many.

use super::shape::Word;
use super::{Calculate, Fault, at};
use baywalk_domain::rig::ServiceKind;
use baywalk_domain::service::{
    Ask, BandSeen, Candidate, Caution, Conductor, Explained, Fault as Wrong, Judgement, Load, Meter,
    Pair, Place, Span, Standing, State, Survey, bands_at, judge,
};
use baywalk_domain::supply::{Band, BandName, Certainty, Grounds, SafeAct};
use baywalk_domain::units::Voltage;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// The calculation.
pub(super) struct Calculation;

/// Surveys to judge, one after another.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct Given {
    surveys: Vec<SurveyIn>,
}

/// What was measured at one service.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct SurveyIn {
    service: Word<ServiceKind>,
    place: Word<Place>,
    /// The meter's class; a good hand meter where left out.
    meter: Option<MeterIn>,
    states: Vec<StateIn>,
}

/// The class of a meter, as its data sheet gives it.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct MeterIn {
    /// Percent of the reading.
    percent: f64,
    /// Counts of the last digit.
    counts: f64,
    /// What one count is, in volts.
    resolution: f64,
    /// Its input in ohms.
    input: f64,
}

/// The readings with one set of plain loads.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct StateIn {
    /// The nameplate of the load on leg 1, in watts at 120 V.
    load_1: Option<f64>,
    /// The nameplate of the load on leg 2, in watts at 120 V.
    load_2: Option<f64>,
    /// Volts by pair: l1_n, l2_n, l1_l2, l1_g, l2_g, n_g.
    volts: BTreeMap<String, f64>,
}

/// What the readings say, one judgement a survey.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Found {
    judgements: Vec<JudgementOut>,
}

#[derive(Debug, Serialize, JsonSchema)]
struct JudgementOut {
    standing: Word<Standing>,
    act: Word<SafeAct>,
    /// What is told with the act.
    cautions: Vec<Word<Caution>>,
    /// The faults that explain every reading, the likeliest first.
    consistent: Vec<CandidateOut>,
    /// What to read next so that they are told apart.
    next: Vec<NextOut>,
    /// The bands of voltage that hold at the place, the tightest first.
    bands: Vec<BandOut>,
    /// The band of every reading of a leg and of the lines.
    seen: Vec<SeenOut>,
}

#[derive(Debug, Serialize, JsonSchema)]
struct CandidateOut {
    fault: Word<Wrong>,
    at: Option<Word<Conductor>>,
    also: Option<Word<Wrong>>,
    /// Whether these readings can't tell it from a healthy service.
    hidden: bool,
    level: SpanOut,
    ohms: Option<SpanOut>,
    /// The largest distance of a reading from this explanation, in meter errors.
    worst: f64,
    /// An order, no probability.
    weight: f64,
    /// One circuit for each load state that meets the readings.
    explained: Vec<ExplainedOut>,
}

/// A circuit as it can be solved again.
#[derive(Debug, Serialize, JsonSchema)]
struct ExplainedOut {
    /// The sources behind L1, L2, N and G, real and imaginary part, in volts.
    emf: [[f64; 2]; 4],
    /// The ways from them to L1, L2, N and G, in siemens; 0 is open.
    way: [f64; 4],
    /// Between L1 and N, L2 and N, N and G, L1 and L2, in siemens.
    between: [f64; 4],
}

#[derive(Debug, Serialize, JsonSchema)]
struct SpanOut {
    least: f64,
    most: f64,
}

#[derive(Debug, Serialize, JsonSchema)]
struct NextOut {
    ask: Word<Ask>,
    pair: Option<Word<Pair>>,
}

/// A band of voltage, line to neutral; twice that between the lines of a 240 V service.
#[derive(Debug, Serialize, JsonSchema)]
struct BandOut {
    band: Word<BandName>,
    least: f64,
    most: f64,
    grounds: Word<Grounds>,
    certainty: Word<Certainty>,
}

#[derive(Debug, Serialize, JsonSchema)]
struct SeenOut {
    /// The load state, counted from 0.
    state: usize,
    pair: Word<Pair>,
    /// The tightest band that holds it; null outside all of them.
    band: Option<Word<BandName>>,
    /// Whether the meter's error reaches across a limit of that band.
    borderline: bool,
}

impl Calculate for Calculation {
    const NAME: &'static str = "service";
    const ABOUT: &'static str =
        "The faults of a service that are consistent with its readings, by solving its circuit.";
    type In = Given;
    type Out = Found;

    fn calculate(given: Given) -> Result<Found, Fault> {
        let surveys = given.surveys.into_iter().map(survey);
        let judged = surveys.map(|survey| survey.map(|survey| JudgementOut::of(&survey)));
        Ok(Found {
            judgements: judged.collect::<Result<_, _>>()?,
        })
    }
}

fn survey(given: SurveyIn) -> Result<Survey, Fault> {
    let meter = given
        .meter
        .map(|meter| Meter::new(meter.percent, meter.counts, meter.resolution, meter.input));
    let meter = meter.transpose().map_err(at("meter"))?;
    let states = given
        .states
        .into_iter()
        .map(state)
        .collect::<Result<_, _>>()?;
    let meter = meter.unwrap_or_else(Meter::usual);
    Survey::new(given.service.0, given.place.0, meter, states).map_err(at("states"))
}

fn state(given: StateIn) -> Result<State, Fault> {
    use baywalk_domain::coded::Coded;
    let load = |watts: Option<f64>| watts.map(Load::watts).transpose();
    let mut state = State::loaded(
        load(given.load_1).map_err(at("load_1"))?,
        load(given.load_2).map_err(at("load_2"))?,
    );
    for (pair, volts) in given.volts {
        let pair = Pair::from_code(&pair).map_err(at("volts"))?;
        state = state.with(pair, Voltage::from_volts(volts).map_err(at("volts"))?);
    }
    Ok(state)
}

impl JudgementOut {
    fn of(survey: &Survey) -> Self {
        let Judgement {
            standing,
            act,
            cautions,
            consistent,
            apart,
            bands,
        } = judge(survey);
        let next = apart.iter().map(|next| NextOut {
            ask: Word(next.ask),
            pair: next.pair.map(Word),
        });
        Self {
            standing: Word(standing),
            act: Word(act),
            cautions: cautions.into_iter().map(Word).collect(),
            consistent: consistent.iter().map(CandidateOut::from).collect(),
            next: next.collect(),
            bands: bands_at(survey.place()).iter().map(BandOut::from).collect(),
            seen: bands.iter().map(SeenOut::from).collect(),
        }
    }
}

impl From<&Band> for BandOut {
    fn from(band: &Band) -> Self {
        Self {
            band: Word(band.name),
            least: band.least,
            most: band.most,
            grounds: Word(band.grounds),
            certainty: Word(band.certainty),
        }
    }
}

impl From<&BandSeen> for SeenOut {
    fn from(seen: &BandSeen) -> Self {
        Self {
            state: seen.state,
            pair: Word(seen.pair),
            band: seen.band.map(Word),
            borderline: seen.borderline,
        }
    }
}

impl From<&Candidate> for CandidateOut {
    fn from(one: &Candidate) -> Self {
        Self {
            fault: Word(one.fault),
            at: one.at.map(Word),
            also: one.also.map(Word),
            hidden: one.hidden,
            level: one.level.into(),
            ohms: one.ohms.map(SpanOut::from),
            worst: one.worst,
            weight: one.weight,
            explained: one.explained.iter().map(ExplainedOut::from).collect(),
        }
    }
}

impl From<&Explained> for ExplainedOut {
    fn from(one: &Explained) -> Self {
        Self {
            emf: one.emf,
            way: one.way,
            between: [one.leg_1, one.leg_2, one.bond, one.lines],
        }
    }
}

impl From<Span> for SpanOut {
    fn from(span: Span) -> Self {
        Self {
            least: span.least,
            most: span.most,
        }
    }
}
