//! Bringing power back: readings, verdicts, the end.

use super::{Typed, blank};
use crate::Problem;
use crate::card::{Ask, Card, Key};
use crate::here::Here;
use baywalk_domain::rig::SourceKind;
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
    card.kind = "unsafe";
    card.title = words.code(step);
    card.question = words.say("step-unsafe-question");
    if let Some((_, Some(judged))) = here.walk.reading(step) {
        card.cautions.insert(0, words.verdict(judged));
    }
    if here.connected(SourceKind::Shore).is_some() {
        card.keys.insert(
            0,
            Key::plain("shore_away", words.say("step-unsafe-shore-away")),
        );
    }
    card
}

pub(super) fn not_safe_act(
    here: &Here<'_>,
    step: ReadingStep,
    key: &str,
    typed: &Typed<'_>,
) -> Result<Option<Act>, Problem> {
    if key != "shore_away" {
        return measure_act(step, key, typed);
    }
    let source = here.connected(SourceKind::Shore);
    Ok(source.map(|source| Act::Isolate {
        source,
        away: Away::Isolated(String::new()),
    }))
}

impl Here<'_> {
    /// A source of a kind that was brought back.
    fn connected(&self, kind: SourceKind) -> Option<baywalk_domain::ids::SourceId> {
        let mut sources = self.book.live_sources();
        sources
            .find(|source| source.kind == kind && self.walk.restored.contains(&source.id))
            .map(|source| source.id)
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
