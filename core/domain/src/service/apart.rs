//! Which reading would tell the remaining candidates apart.

use super::candidate::Candidate;
use super::circuit::Shown;
use super::missing::missing;
use super::model::{circuit, shown};
use super::{Fault, Load, Meter, Pair, State, Survey};
use crate::coded::{Coded, coded};
use crate::rig::ServiceKind;

coded! {
    /// A kind of reading that is asked for next.
    Ask as "service-ask" {
        /// One more pair, nothing switched on.
        ReadPair = "read_pair",
        /// The pairs again with the low-impedance setting of the meter.
        LowImpedance = "low_impedance",
        /// A plain load on leg 1, then the pairs again.
        LoadLeg1 = "load_leg_1",
        /// A plain load on leg 2, then the pairs again.
        LoadLeg2 = "load_leg_2",
        /// Continuity of the conductors, by ohms, only when proved dead.
        ContinuityDead = "continuity_dead",
        /// Body metal to a rod in damp soil, before anyone touches it: the supply's own ground may be
        /// what is live.
        BodyToSoil = "body_to_soil",
        /// Every pair once more: nothing that is known here explains the readings.
        AllAgain = "all_again",
    }
}

/// A reading that would tell candidates apart.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NextReading {
    /// What to do.
    pub ask: Ask,
    /// The pair to read, or the most telling one.
    pub pair: Option<Pair>,
    /// How many pairs of candidates it tells apart that the readings asked for before it do not.
    pub tells: usize,
}

/// The load that is asked for, in watts: a plain heater.
const HEATER: f64 = 1500.0;
/// Percent, counts and resolution of a low-impedance setting. Ours, on the wide side.
const LOW_CLASS: (f64, f64, f64) = (2.0, 3.0, 0.1);
/// Its input in ohms: a few kΩ, common practice, no source.
const LOW_INPUT: f64 = 3000.0;

/// Two candidates, by their places in the list.
type Couple = (usize, usize);

/// Something that could be read, and which couples it tells apart.
struct Choice {
    ask: Ask,
    pair: Option<Pair>,
    tells: Vec<Couple>,
}

/// What to read next, the most telling first, until nothing more is told apart; then whatever else is
/// missing before a service may be called sound.
pub(super) fn apart(survey: &Survey, consistent: &[Candidate]) -> Vec<NextReading> {
    let mut asked = telling(survey, consistent);
    for (ask, pair) in missing(survey) {
        if !asked
            .iter()
            .any(|one| one.ask == ask && (pair.is_none() || one.pair == pair))
        {
            asked.push(NextReading {
                ask,
                pair,
                tells: 0,
            });
        }
    }
    asked
}

/// The readings that tell candidates apart.
fn telling(survey: &Survey, consistent: &[Candidate]) -> Vec<NextReading> {
    if consistent.is_empty() {
        return vec![NextReading {
            ask: Ask::AllAgain,
            pair: None,
            tells: 0,
        }];
    }
    let mut left = couples(consistent.len());
    let choices = choices(survey, consistent);
    let mut asked: Vec<_> = soil(consistent, &mut left).into_iter().collect();
    while !left.is_empty() {
        let told = |choice: &Choice| choice.tells.iter().filter(|one| left.contains(one)).count();
        // Of equal choices the first stands: the easier reading is listed first.
        let best = choices.iter().rev().max_by_key(|choice| told(choice));
        let Some(best) = best.filter(|choice| told(choice) > 0) else {
            break;
        };
        asked.push(NextReading {
            ask: best.ask,
            pair: best.pair,
            tells: told(best),
        });
        left.retain(|one| !best.tells.contains(one));
    }
    let by_ohms = left
        .iter()
        .filter(|couple| shows_in_ohms(consistent, **couple))
        .count();
    if by_ohms > 0 {
        asked.push(NextReading {
            ask: Ask::ContinuityDead,
            pair: None,
            tells: by_ohms,
        });
    }
    asked
}

fn couples(count: usize) -> Vec<Couple> {
    (0..count)
        .flat_map(|one| (one + 1..count).map(move |other| (one, other)))
        .collect()
}

/// The reading from the body to the soil, where the body may be live: it comes before any other.
fn soil(consistent: &[Candidate], left: &mut Vec<Couple>) -> Option<NextReading> {
    let before = left.len();
    left.retain(|(one, other)| live_body(consistent, *one) == live_body(consistent, *other));
    let tells = before - left.len();
    (tells > 0).then_some(NextReading {
        ask: Ask::BodyToSoil,
        pair: None,
        tells,
    })
}

/// Whether a candidate puts a line on the equipment ground.
fn live_body(consistent: &[Candidate], at: usize) -> bool {
    consistent
        .get(at)
        .is_some_and(|one| one.fault == Fault::LineGroundSwapped)
}

/// Whether ohms between dead conductors tell two candidates apart that no voltage does.
fn shows_in_ohms(consistent: &[Candidate], (one, other): Couple) -> bool {
    let level = |at: usize| {
        consistent.get(at).is_none_or(|one| {
            matches!(
                one.fault,
                Fault::Healthy | Fault::LowService | Fault::HighService
            )
        })
    };
    !(level(one) && level(other))
}

/// Everything that could be read, the easiest first.
fn choices(survey: &Survey, consistent: &[Candidate]) -> Vec<Choice> {
    let split = survey.service() == ServiceKind::Amp50;
    let here = |pair: &Pair| split || !pair.needs_line_2();
    let pairs: Vec<Pair> = Pair::ALL.iter().copied().filter(here).collect();
    let usual = *survey.meter();
    let ask =
        |ask, state, meter, pairs: &[Pair]| choice(survey, consistent, (ask, state, meter), pairs);
    let unread = pairs.iter().filter(|pair| !survey.read_bare(**pair));
    let mut all: Vec<Choice> = unread
        .map(|pair| ask(Ask::ReadPair, State::default(), usual, &[*pair]))
        .collect();
    let (percent, counts, digit) = LOW_CLASS;
    if let Ok(low) = Meter::new(percent, counts, digit, LOW_INPUT) {
        all.push(ask(Ask::LowImpedance, State::default(), low, &pairs));
    }
    if let Ok(heater) = Load::watts(HEATER) {
        let on_1 = State::loaded(Some(heater), None);
        all.push(ask(Ask::LoadLeg1, on_1, usual, &pairs));
        if split {
            let on_2 = State::loaded(None, Some(heater));
            all.push(ask(Ask::LoadLeg2, on_2, usual, &pairs));
        }
    }
    all
}

/// What one choice tells apart, and by which pair most.
fn choice(
    survey: &Survey,
    consistent: &[Candidate],
    (ask, state, meter): (Ask, State, Meter),
    pairs: &[Pair],
) -> Choice {
    let shown: Vec<[Shown; 6]> = consistent
        .iter()
        .map(|one| {
            let circuit = circuit(&one.wiring, 0, &state, &one.typical());
            shown((&meter, survey.place()), &circuit)
        })
        .collect();
    let shown = &shown;
    let told = |pair: Pair| {
        let at = move |candidate: usize| of(shown.get(candidate), pair);
        couples(consistent.len())
            .into_iter()
            .filter(move |(one, other)| clear(&meter, at(*one), at(*other)))
    };
    let mut tells: Vec<Couple> = pairs.iter().flat_map(|pair| told(*pair)).collect();
    tells.sort_unstable();
    tells.dedup();
    let pair = pairs
        .iter()
        .rev()
        .copied()
        .max_by_key(|pair| told(*pair).count());
    Choice { ask, pair, tells }
}

fn of(shown: Option<&[Shown; 6]>, pair: Pair) -> Shown {
    let cells = shown.into_iter().flatten().copied();
    Pair::ALL
        .iter()
        .zip(cells)
        .find(|(at, _)| **at == pair)
        .map(|(_, shown)| shown)
        .unwrap_or_default()
}

/// Whether a meter that is off both times by its whole error would still show two ranges apart.
fn clear(meter: &Meter, a: Shown, b: Shown) -> bool {
    let gap = (b.least - a.most).max(a.least - b.most);
    gap > meter.error(a.most) + meter.error(b.most)
}
