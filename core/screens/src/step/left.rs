//! As left: what was done about what was found. Nothing is chosen beforehand.

use super::{Typed, tool};
use crate::card::{Ask, Card, Key, figure};
use crate::here::Here;
use crate::{Named, Problem};
use baywalk_domain::coded::Coded;
use baywalk_domain::ids::PointId;
use baywalk_domain::torque::{Action, Advice};
use baywalk_domain::walk::{Act, AloneWhy, AsFound, AsLeft, Setting};

pub(super) fn card(here: &Here<'_>, id: PointId) -> Result<Card, Problem> {
    let words = here.words;
    let (point, _, _) = here.point(id)?;
    let advice = here.advice(point)?;
    let setting = here.setting(id);
    let mut card = here.point_card("left", id, words.say("step-left-question"))?;
    let target = advice.target.as_ref().map(|target| &target.torque);
    card.figure = Some(figure(words, &advice, target));
    let holds = point
        .terminal()
        .map(|terminal| crate::holds::holds(words, terminal));
    card.lines.extend(holds);
    let text = words.advice(&advice);
    card.lines.push(text.left);
    card.lines.extend(text.set);
    card.lines.extend(tool::lines(here, setting.as_ref()));
    card.cautions = text.cautions;
    card.keys = keys(here, id, &advice, setting.as_ref());
    Ok(card)
}

fn keys(here: &Here<'_>, id: PointId, advice: &Advice, setting: Option<&Setting>) -> Vec<Key> {
    let words = here.words;
    let mut keys = Vec::new();
    if let (Action::CheckThenSet, Some(setting)) = (advice.action, setting) {
        let word = words.fill(
            "step-left-set",
            &[("torque", words.torque(&setting.at).into())],
        );
        keys.push(Key::plain("set", word));
    }
    keys.push(Key::plain("remade", words.say("step-left-remade")));
    let question = words.say("step-left-how-out");
    keys.push(
        Key::plain("out_of_service", words.say("step-left-out")).asking(Ask::Words { question }),
    );
    let record = here.walk.point(id).and_then(|record| record.found.as_ref());
    if record.is_some_and(|record| matches!(record.found, AsFound::Moved(_))) {
        let options = AloneWhy::ALL
            .iter()
            .map(|why| Named::of(words, *why))
            .collect();
        let question = words.say("step-why");
        keys.push(
            Key::plain("alone", words.say("step-left-alone"))
                .asking(Ask::Choice { question, options }),
        );
    }
    keys
}

pub(super) fn act(
    here: &Here<'_>,
    point: PointId,
    key: &str,
    typed: &Typed<'_>,
) -> Result<Option<Act>, Problem> {
    let setting = here.setting(point);
    let left = match (key, setting) {
        ("set", Some(Setting { at: torque, tool })) => AsLeft::Set { torque, tool },
        ("remade", setting) => AsLeft::Remade {
            set: setting.map(|setting| (setting.at, setting.tool)),
        },
        ("out_of_service", _) => AsLeft::OutOfService {
            how: typed.words(0),
        },
        ("alone", _) => AsLeft::Alone(typed.code(0)?),
        _ => return Ok(None),
    };
    Ok(Some(Act::Left { point, left }))
}
