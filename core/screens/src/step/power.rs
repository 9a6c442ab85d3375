//! Bringing power back: readings, verdicts, the end.

use super::{Typed, blank};
use crate::Problem;
use crate::card::{Ask, Card, Key};
use crate::here::Here;
use baywalk_domain::ids::SourceId;
use baywalk_domain::rig::{Source, SourceKind};
use baywalk_domain::service::ANY_HEATER;
use baywalk_domain::supply::{Measured, Reading, ReadingStep};
use baywalk_domain::units::VoltageUnit;
use baywalk_domain::walk::{Act, Away, Ending};

pub(super) fn begin(here: &Here<'_>) -> Card {
    let words = here.words;
    let mut card = blank(
        "power_up",
        here.line(),
        words.say("step-power-title"),
        words.say("step-power-question"),
    );
    card.lines.push(words.say("step-power-order"));
    card.cautions.push(words.say("caution-qualified"));
    card.keys
        .push(Key::plain("power_up", words.say("step-power-key")));
    card
}

pub(super) fn measure(here: &Here<'_>, step: ReadingStep) -> Card {
    let words = here.words;
    let mut card = blank(
        "measure",
        here.line(),
        words.say("step-power-title"),
        words.code(step),
    );
    if step == ReadingStep::HotSkin {
        card.cautions.push(words.say("caution-hot-skin"));
    }
    if step.is_before_shore() {
        card.cautions.push(words.say("caution-supply-outlet"));
    }
    if step.is_loaded() {
        let (least, most) = ANY_HEATER;
        let watts = |watts: f64| words.number(watts, 0).into();
        let args = [("least", watts(least)), ("most", watts(most))];
        card.lines.push(words.fill("step-measure-load", &args));
    }
    let of_shore = step.source() == Some(SourceKind::Shore);
    if let Some((_, seen)) = here.walk.service.as_ref().filter(|_| of_shore) {
        card.lines.push(words.service_seen(seen));
    }
    let place = Ask::Words {
        question: words.say("step-measure-where"),
    };
    if step.is_voltage() {
        let unit = "V".to_owned();
        let reading = Ask::Number {
            question: words.say("step-reading"),
            unit,
        };
        card.keys.push(
            Key::plain("read", words.say("step-read-key"))
                .asking(place)
                .asking(reading),
        );
    } else {
        card.keys
            .push(Key::plain("works", words.say("step-measure-works")));
        card.keys
            .push(Key::plain("fails", words.say("step-measure-fails")));
    }
    let question = words.say("step-why");
    card.keys
        .push(Key::plain("not", words.say("step-measure-not")).asking(Ask::Words { question }));
    card
}

pub(super) fn measure_act(
    step: ReadingStep,
    key: &str,
    typed: &Typed<'_>,
) -> Result<Option<Act>, Problem> {
    let (place, measured) = match key {
        "read" => (
            typed.words(0),
            Measured::Volts(typed.stated(1, VoltageUnit::Volts)?),
        ),
        "works" => (String::new(), Measured::Works),
        "fails" => (String::new(), Measured::Fails),
        "not" => (String::new(), Measured::Not(typed.words(0))),
        _ => return Ok(None),
    };
    Ok(Some(Act::Measure(Reading {
        step,
        place,
        measured,
    })))
}

/// A reading stands that is not safe: the safe act is the only way on, then the reading anew.
pub(super) fn not_safe(here: &Here<'_>, step: ReadingStep) -> Card {
    let words = here.words;
    let mut card = measure(here, step);
    "unsafe".clone_into(&mut card.kind);
    card.title = words.code(step);
    card.question = words.say("step-unsafe-question");
    if let Some((_, Some(judged))) = here.walk.reading(step) {
        card.cautions.insert(0, words.verdict(judged));
    }
    card.keys.splice(0..0, away_key(here, step));
    card
}

/// The safe act as a key: takes the source away that the reading speaks of, or leaves it away where
/// it is not back yet.
fn away_key(here: &Here<'_>, step: ReadingStep) -> Option<Key> {
    let words = here.words;
    let source = here.spoken_of(step)?;
    let args = [("source", words.source_name(source, &*here.book).into())];
    Some(if here.walk.restored.contains(&source) {
        Key::plain("source_away", words.fill("step-unsafe-away", &args))
    } else {
        let question = words.say("step-why");
        Key::plain("leave_away", words.fill("step-unsafe-leave", &args))
            .asking(Ask::Words { question })
    })
}

pub(super) fn not_safe_act(
    here: &Here<'_>,
    step: ReadingStep,
    key: &str,
    typed: &Typed<'_>,
) -> Result<Option<Act>, Problem> {
    let source = here.spoken_of(step);
    match key {
        "source_away" => Ok(source.map(|source| Act::Isolate {
            source,
            away: Away::Isolated(String::new()),
        })),
        "leave_away" => Ok(source.map(|source| Act::LeaveAway {
            source,
            why: typed.words(0),
        })),
        _ => measure_act(step, key, typed),
    }
}

impl Here<'_> {
    /// The source that a reading speaks of: one that is back, or one that waits to be.
    fn spoken_of(&self, step: ReadingStep) -> Option<SourceId> {
        let of_kind = |source: &&Source| Some(source.kind) == step.source();
        let ids = || {
            self.book
                .live_sources()
                .filter(of_kind)
                .map(|source| source.id)
        };
        let back = ids().find(|source| self.walk.restored.contains(source));
        back.or_else(|| ids().find(|source| self.walk.waits_for_power(*source)))
    }
}

pub(super) fn end(here: &Here<'_>) -> Card {
    let words = here.words;
    let mut card = blank(
        "end",
        here.line(),
        words.say("step-end-title"),
        words.say("step-end-question"),
    );
    card.lines.push(words.say("step-end-tools"));
    card.keys.push(Key::plain("end", words.say("step-end-key")));
    card
}

pub(super) fn end_act(key: &str) -> Option<Act> {
    (key == "end").then_some(Act::End(Ending::Whole))
}
