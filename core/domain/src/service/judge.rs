//! Holds every fault against the readings and keeps those that explain them all.

use super::apart::{NextReading, apart};
use super::bands::{BandSeen, bands_seen};
use super::candidate::{Candidate, act, common, explained};
use super::fit::{Point, Problem};
use super::model::{self, EMF, bounds};
use super::search::{best, thorough};
use super::verdict::{Caution, Standing, cautions, first_act, standing};
use super::wiring::{Supply, Wiring, faulty, odd, sound};
use super::{Fault, Place, Survey};
use crate::coded::Coded;
use crate::rig::ServiceKind;
use crate::supply::{SERVICE_B, SafeAct};

/// What the readings of a service say.
#[derive(Debug, Clone, PartialEq)]
pub struct Judgement {
    /// How the service stands.
    pub standing: Standing,
    /// What is done first.
    pub act: SafeAct,
    /// What else is told with the act.
    pub cautions: Vec<Caution>,
    /// Every fault that explains all readings within the meter's error, the likeliest first.
    pub consistent: Vec<Candidate>,
    /// What to read next so that they are told apart, the most telling first.
    pub apart: Vec<NextReading>,
    /// The bands into which the readings fall.
    pub bands: Vec<BandSeen>,
}

/// Volts line to neutral that a service can have at all.
const ANY_LEVEL: (f64, f64) = (40.0, 170.0);
/// A normal level, with the difference of two lines: what a single fault is sought at.
const NORMAL: (f64, f64) = (SERVICE_B.least - 2.0, SERVICE_B.most + 2.0);
/// How much rarer an open line is while a 240 V load feeds it back, as a logarithm. Ours.
const BACK_FED: f64 = 1.0;
/// How much the sum of squared residuals weighs in the order of candidates. Ours.
const FIT: f64 = 0.7;

/// Judges a service by solving its circuit under every fault.
///
/// A fault is consistent where some choice of everything that is not known (service voltage, drift,
/// conductors, loads against their nameplates, the bad joint) brings every reading within the
/// meter's error. Two faults at a time (a supply of the wrong kind or level beside a fault) are
/// thought of only where no single one explains the readings.
///
/// # Example
/// ```
/// use baywalk_domain::rig::ServiceKind;
/// use baywalk_domain::service::{Fault, Load, Meter, Pair, Place, State, Survey, judge};
/// use baywalk_domain::units::Voltage;
/// let volts = Voltage::from_volts;
/// // 1,500 W on leg 1 and 300 W on leg 2 with the neutral open: 40 V and 200 V.
/// let state = State::loaded(Some(Load::watts(1500.0)?), Some(Load::watts(300.0)?))
///     .with(Pair::L1N, volts(40.0)?)
///     .with(Pair::L2N, volts(200.0)?)
///     .with(Pair::L1L2, volts(240.0)?);
/// let survey = Survey::new(ServiceKind::Amp50, Place::Coach, Meter::usual(), vec![state])?;
/// let judgement = judge(&survey);
/// assert!(judgement.consistent.iter().any(|one| one.fault == Fault::OpenNeutral));
/// assert!(judgement.consistent.iter().all(|one| one.fault != Fault::Healthy));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn judge(survey: &Survey) -> Judgement {
    let mut consistent = singles(survey, best);
    if consistent.is_empty() {
        consistent = singles(survey, thorough);
    }
    if consistent.is_empty() {
        consistent = doubles(survey);
    }
    let healthy = consistent.iter().any(|one| one.fault == Fault::Healthy);
    for one in &mut consistent {
        one.hidden = healthy && one.fault != Fault::Healthy;
    }
    rank(&mut consistent);
    Judgement {
        standing: standing(survey, &consistent),
        act: first_act(survey, &consistent),
        cautions: cautions(survey, &consistent),
        apart: apart(survey, &consistent),
        bands: bands_seen(survey),
        consistent,
    }
}

/// How a point is sought at which a wiring meets the readings.
type Search = fn(&Problem<'_>) -> Option<Point>;

/// Every single fault that is consistent.
fn singles(survey: &Survey, search: Search) -> Vec<Candidate> {
    let stated = stated(survey);
    let levels = [
        (SERVICE_B.least, SERVICE_B.most),
        (ANY_LEVEL.0, SERVICE_B.least),
        (SERVICE_B.most, ANY_LEVEL.1),
    ];
    let sound = sound(stated).into_iter().zip(levels);
    let odd = others(stated).iter().map(|supply| (odd(*supply), NORMAL));
    let faulty = faulty(stated, survey.place() == Place::Coach)
        .into_iter()
        .map(|wiring| (wiring, NORMAL));
    collect(survey, search, sound.chain(odd).chain(faulty))
}

/// Every fault behind every kind and level of supply.
fn doubles(survey: &Survey) -> Vec<Candidate> {
    let stated = stated(survey);
    let wirings = faulty(stated, survey.place() == Place::Coach);
    let any = std::iter::once(&stated)
        .chain(others(stated))
        .flat_map(|supply| {
            wirings
                .iter()
                .map(|wiring| (wiring.behind(*supply), ANY_LEVEL))
        });
    let odd = others(stated)
        .iter()
        .map(|supply| (odd(*supply), ANY_LEVEL));
    collect(survey, best, any.chain(odd))
}

const fn stated(survey: &Survey) -> Supply {
    match survey.service() {
        ServiceKind::Amp50 => Supply::Split,
        ServiceKind::Amp30 | ServiceKind::None => Supply::Single,
    }
}

/// The supplies that may be there instead.
const fn others(stated: Supply) -> &'static [Supply] {
    match stated {
        Supply::Split => &[Supply::Wye, Supply::OneLeg],
        _ => &[],
    }
}

/// The consistent ones; of the forms of one fault the best.
fn collect(
    survey: &Survey,
    search: Search,
    tried: impl Iterator<Item = (Wiring, (f64, f64))>,
) -> Vec<Candidate> {
    let mut found: Vec<Candidate> = Vec::new();
    let stated = stated(survey);
    let may_be = |wiring: &Wiring| {
        let supply = wiring.supply == stated || survey.may_be(odd(wiring.supply).fault);
        supply && survey.may_be(wiring.fault)
    };
    let tried = tried.filter(|(wiring, _)| may_be(wiring));
    for one in tried.filter_map(|(wiring, window)| candidate(survey, search, wiring, window)) {
        let same = |other: &&mut Candidate| {
            (other.fault, other.at, other.also) == (one.fault, one.at, one.also)
        };
        match found.iter_mut().find(same) {
            Some(other) if other.weight >= one.weight => {}
            Some(other) => *other = one,
            None => found.push(one),
        }
    }
    found
}

/// Holds one wiring against the readings. Its weight is still a logarithm.
fn candidate(
    survey: &Survey,
    search: Search,
    wiring: Wiring,
    window: (f64, f64),
) -> Option<Candidate> {
    let problem = Problem {
        survey,
        wiring,
        bounds: bounds(survey, &wiring, window),
    };
    let best = search(&problem)?;
    let level = problem.span(&best, EMF);
    let ohms = wiring
        .weak
        .map(|conductor| problem.span(&best, model::joint_of(conductor)));
    let values = problem.values(&best.shares);
    let also = (wiring.supply != stated(survey)).then(|| odd(wiring.supply).fault);
    Some(Candidate {
        fault: wiring.fault,
        at: wiring.at,
        also: also.filter(|also| *also != wiring.fault),
        hidden: false,
        level,
        ohms,
        act: act(wiring.fault, level, survey.place()),
        worst: best.worst(),
        weight: common(wiring.fault)
            - if wiring.back_fed { BACK_FED } else { 0.0 }
            - FIT * best.squares()
            - problem.ghosts(&best)
            + ohms.map_or(0.0, |ohms| model::share_of_joints(ohms).ln()),
        explained: explained(survey, &wiring, &values),
        wiring,
        values,
    })
}

/// Sorts by weight and states each weight against the first.
fn rank(consistent: &mut [Candidate]) {
    let order = |one: &Candidate| Fault::ALL.iter().position(|fault| *fault == one.fault);
    consistent.sort_by(|a, b| {
        b.weight
            .total_cmp(&a.weight)
            .then_with(|| order(a).cmp(&order(b)))
            .then(a.at.cmp(&b.at))
    });
    let best = consistent.first().map_or(0.0, |first| first.weight);
    for one in consistent {
        one.weight = (one.weight - best).exp();
    }
}
