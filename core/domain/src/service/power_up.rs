//! The readings of powering up as surveys of the service.

use super::{Fault, Load, Meter, Pair, Place, State, Survey};
use crate::rig::ServiceKind;
use crate::supply::{HOT_SKIN, ReadingStep, SERVICE_A};
use crate::units::Voltage;

/// A place, what was switched on there, and which readings belong to it.
type Group = (Place, Option<Leg>, &'static [(ReadingStep, Pair)]);

#[derive(Clone, Copy)]
enum Leg {
    One,
    Two,
}

const GROUPS: [Group; 4] = [
    (
        Place::Outlet,
        None,
        &[
            (ReadingStep::SupplyL1N, Pair::L1N),
            (ReadingStep::SupplyL2N, Pair::L2N),
            (ReadingStep::SupplyL1L2, Pair::L1L2),
            (ReadingStep::SupplyLG, Pair::L1G),
            (ReadingStep::SupplyNG, Pair::NG),
        ],
    ),
    (
        Place::Coach,
        None,
        &[
            (ReadingStep::Leg1, Pair::L1N),
            (ReadingStep::Leg2, Pair::L2N),
            (ReadingStep::OutletLG, Pair::L1G),
            (ReadingStep::OutletNG, Pair::NG),
        ],
    ),
    (
        Place::Coach,
        Some(Leg::One),
        &[
            (ReadingStep::Load1Leg1, Pair::L1N),
            (ReadingStep::Load1Leg2, Pair::L2N),
        ],
    ),
    (
        Place::Coach,
        Some(Leg::Two),
        &[
            (ReadingStep::Load2Leg1, Pair::L1N),
            (ReadingStep::Load2Leg2, Pair::L2N),
        ],
    ),
];

/// The survey to which a reading of powering up belongs, with all that was read there so far.
///
/// A load is taken as a plain heater of unknown nameplate. Body metal that read dead against the
/// soil rules a line on the equipment ground out; lines that stood 228 to 252 V apart at the supply
/// outlet (ANSI C84.1 range A, from memory) rule a 208 V supply and an adapter from one leg out.
/// `None` where the reading belongs to no service, or can't be.
#[must_use]
pub fn survey_at(
    step: ReadingStep,
    service: ServiceKind,
    volts: &impl Fn(ReadingStep) -> Option<f64>,
) -> Option<Survey> {
    let holds = |group: &&Group| group.2.iter().any(|(of, _)| *of == step);
    let (place, _, _) = GROUPS.iter().find(holds)?;
    let groups = GROUPS.iter().filter(|(at, _, _)| at == place);
    let states = groups.filter_map(|group| state(group, volts)).collect();
    let survey = Survey::new(service, *place, Meter::usual(), states).ok()?;
    Some(match place {
        Place::Outlet => survey,
        Place::Coach => ruled_out(survey, volts),
    })
}

fn state((_, load, pairs): &Group, volts: &impl Fn(ReadingStep) -> Option<f64>) -> Option<State> {
    let heater = Some(Load::any_heater());
    let bare = match load {
        None => State::default(),
        Some(Leg::One) => State::loaded(heater, None),
        Some(Leg::Two) => State::loaded(None, heater),
    };
    let read = pairs.iter().filter_map(|(step, pair)| {
        let volts = Voltage::from_volts(volts(*step)?).ok()?;
        Some((*pair, volts))
    });
    let state = read.fold(bare, |state, (pair, volts)| state.with(pair, volts));
    state.readings().next().map(|_| state)
}

/// What other readings rule out: 208 V can't stand where the lines are 228 V apart or more, which no
/// leg of such a supply below 131 V gives.
fn ruled_out(mut survey: Survey, volts: &impl Fn(ReadingStep) -> Option<f64>) -> Survey {
    if volts(ReadingStep::HotSkin).is_some_and(|body| body.abs() <= HOT_SKIN) {
        survey = survey.without(Fault::LineGroundSwapped);
    }
    let (least, most) = SERVICE_A.lines();
    if volts(ReadingStep::SupplyL1L2).is_some_and(|lines| (least..=most).contains(&lines)) {
        survey = survey
            .without(Fault::Supply208)
            .without(Fault::OneLegAdapter);
    }
    survey
}
