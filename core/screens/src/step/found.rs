//! As found: the check instruction, and the four grades.

use super::{Typed, tool};
use crate::card::{Ask, Card, Key, figure};
use crate::here::Here;
use crate::{Named, Problem};
use baywalk_domain::coded::Coded;
use baywalk_domain::ids::PointId;
use baywalk_domain::rig::Terminal;
use baywalk_domain::walk::{Act, Angle, AsFound, Grade, Movement, Setting, Test};

pub(super) fn card(here: &Here<'_>, id: PointId, terminal: &Terminal) -> Result<Card, Problem> {
    let words = here.words;
    let (point, _, _) = here.point(id)?;
    let advice = here.advice(point)?;
    let check = here.setting(id);
    let question = match (&check, terminal.fastening.kind.takes_torque()) {
        (Some(_), _) => "step-found-turned",
        (None, true) => "step-found-looked",
        (None, false) => "step-found-tug",
    };
    let mut card = here.point_card("point", id, words.say(question))?;
    let shown = advice
        .check
        .as_ref()
        .or(advice.target.as_ref().map(|target| &target.torque));
    card.figure = Some(figure(words, &advice, shown));
    card.lines.push(crate::holds::holds(words, terminal));
    let text = words.advice(&advice);
    card.lines.push(text.look);
    card.lines.extend(text.check.filter(|_| check.is_some()));
    card.lines.extend(text.missing);
    card.lines.extend(tool::lines(here, check.as_ref()));
    if check.is_none() {
        card.lines
            .extend(tool::out_of_reach(here, advice.check.as_ref()));
    }
    card.cautions = text.cautions;
    card.cautions.extend(exceptions(here, id, terminal));
    card.keys = keys(here, check.is_some(), terminal);
    Ok(card)
}

fn keys(here: &Here<'_>, by_torque: bool, terminal: &Terminal) -> Vec<Key> {
    let words = here.words;
    let key = |grade: Grade, note: &str| {
        Key::plain(grade.code(), words.code(grade)).noted(words.say(note))
    };
    let tug = !terminal.fastening.kind.takes_torque();
    let mut keys = Vec::new();
    if by_torque {
        let options = Angle::ALL
            .iter()
            .map(|angle| Named::of(words, *angle))
            .collect();
        let question = words.say("step-found-how-far");
        keys.push(key(Grade::Held, "step-found-held-click"));
        keys.push(
            key(Grade::Moved, "step-found-moved-click").asking(Ask::Choice { question, options }),
        );
    } else if tug {
        keys.push(key(Grade::Held, "step-found-held-tug"));
        keys.push(key(Grade::Moved, "step-found-moved-tug"));
    } else {
        keys.push(key(Grade::LookedAt, "step-found-looked-note"));
    }
    keys.push(key(Grade::Loose, "step-found-loose"));
    keys.push(key(Grade::Apart, "step-found-apart"));
    keys
}

/// The knowing exceptions that stand where the point is.
fn exceptions(here: &Here<'_>, id: PointId, terminal: &Terminal) -> Vec<String> {
    let Ok((point, device, bay)) = here.point(id) else {
        return Vec::new();
    };
    let Some(work) = here.walk.bays.get(&bay.id) else {
        return Vec::new();
    };
    let here_too = |set: &str| terminal.set.as_deref().is_none_or(|own| own == set);
    work.exceptions
        .iter()
        .filter(|exception| exception.device == point.device && here_too(&exception.set))
        .map(|exception| {
            let args = [
                ("set", exception.set.clone().into()),
                ("device", device.name.clone().into()),
            ];
            here.words.fill("caution-excepted", &args)
        })
        .collect()
}

pub(super) fn act(
    here: &Here<'_>,
    point: PointId,
    key: &str,
    typed: &Typed<'_>,
) -> Result<Option<Act>, Problem> {
    let check = here.setting(point);
    let Ok(grade) = Grade::from_code(key) else {
        return Ok(None);
    };
    let found = match (grade, check) {
        (Grade::Held, Some(Setting { at, tool })) => AsFound::Held(Test::Torque { at, tool }),
        (Grade::Held, None) => AsFound::Held(Test::Tug),
        (Grade::Moved, Some(Setting { at: below, tool })) => AsFound::Moved(Movement::Turned {
            angle: typed.code(0)?,
            below,
            tool,
        }),
        (Grade::Moved, None) => AsFound::Moved(Movement::Gave),
        (Grade::Loose, _) => AsFound::Loose,
        (Grade::Apart, _) => AsFound::Apart,
        (Grade::LookedAt, _) => AsFound::LookedAt { tugged: true },
        (Grade::NotJudged, _) => return Ok(None),
    };
    Ok(Some(Act::Found { point, found }))
}
