//! What a survey still lacks before a service may be called sound.

use super::{Ask, Fault, Load, Pair, State, Survey};
use crate::rig::ServiceKind;

/// The least load that brings a weak joint to light, in watts at 120 V: a small heater. Ours.
const TEST_WATTS: f64 = 500.0;

/// What is still to be read, in the order of the hand: every leg and the lines with nothing switched
/// on, the ground, then every leg with a plain load on leg 1, and again with one on leg 2. A weak
/// neutral hides until it is loaded (common practice, no source).
pub(super) fn missing(survey: &Survey) -> Vec<(Ask, Option<Pair>)> {
    let split = survey.service() == ServiceKind::Amp50;
    let here = |pair: &Pair| split || !pair.needs_line_2();
    let read = |pair: Pair| {
        survey
            .states()
            .iter()
            .any(|state| state.read(pair).is_some())
    };
    let lines = [Pair::L1N, Pair::L2N, Pair::L1L2].into_iter();
    // Line to line tells another supply; where that is ruled out, nothing is missing.
    let told = |pair: Pair| pair == Pair::L1L2 && !survey.may_be(Fault::Supply208);
    let lines = lines.filter(|pair| !told(*pair) && !survey.read_bare(*pair));
    let ground = [Pair::L1G, Pair::NG].into_iter();
    let ground = ground.filter(|pair| !read(*pair));
    let tried = |leg: usize| {
        let on = |state: &&State| is_test(state.load(leg)) && state.load(1 - leg).is_none();
        let mut legs = [Pair::L1N, Pair::L2N].into_iter().filter(here);
        let states: Vec<&State> = survey.states().iter().filter(on).collect();
        legs.all(|pair| states.iter().any(|state| state.read(pair).is_some()))
    };
    let loads = [(0, Ask::LoadLeg1), (1, Ask::LoadLeg2)].into_iter();
    let loads = loads.filter(|(leg, _)| (split || *leg == 0) && !tried(*leg));
    lines
        .chain(ground)
        .filter(here)
        .map(|pair| (Ask::ReadPair, Some(pair)))
        .chain(loads.map(|(_, ask)| (ask, None)))
        .collect()
}

/// Whether a load is large enough to tell.
fn is_test(load: Option<Load>) -> bool {
    load.is_some_and(|load| load.rated().round() >= TEST_WATTS)
}
