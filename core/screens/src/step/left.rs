//! As left: what was done about what was found. Nothing is chosen beforehand.

use super::Typed;
use crate::Problem;
use crate::card::{Ask, Card, Key, figure};
use crate::here::Here;
use baywalk_domain::coded::Coded;
use baywalk_domain::ids::{PointId, ToolId};
use baywalk_domain::rig::Terminal;
use baywalk_domain::torque::{Action, Advice};
use baywalk_domain::units::{Stated, TorqueUnit};
use baywalk_domain::walk::{Act, AloneWhy, AsFound, AsLeft};

/// What to set, with which tool.
type Setting = (Stated<TorqueUnit>, ToolId);

pub(super) fn card(here: &Here<'_>, id: PointId) -> Result<Card, Problem> {
    let words = here.words;
    let terminal = terminal(here, id)?;
    let advice = here.advice(id, &terminal);
    let setting = setting(here, &advice);
    let mut card = here.point_card("left", id, words.say("step-left-question"))?;
    let target = advice.target.as_ref().map(|target| &target.torque);
    card.figure = Some(figure(words, &advice, target));
    card.lines.push(crate::holds::holds(words, &terminal));
    let text = words.advice(&advice);
    card.lines.push(text.left);
    card.lines.extend(text.set);
    if let Some((_, tool)) = &setting {
        card.lines.push(words.tool_name(*tool, &here.book));
    }
    card.cautions = text.cautions;
    card.keys = keys(here, id, &advice, setting.as_ref());
    Ok(card)
}

fn terminal(here: &Here<'_>, id: PointId) -> Result<Terminal, Problem> {
    let (point, _, _) = here.point(id)?;
    let terminal = point.terminal().cloned();
    terminal.ok_or_else(|| Problem::not_found(here.words.say("refused-not-in-book")))
}

fn setting(here: &Here<'_>, advice: &Advice) -> Option<Setting> {
    let target = advice.target.as_ref()?;
    here.tool_for(&target.torque)
}

fn keys(here: &Here<'_>, id: PointId, advice: &Advice, setting: Option<&Setting>) -> Vec<Key> {
    let words = here.words;
    let mut keys = Vec::new();
    if let (Action::CheckThenSet, Some((at, _))) = (advice.action, setting) {
        let word = words.fill("step-left-set", &[("torque", words.torque(at).into())]);
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
            .map(|why| (why.code().to_owned(), words.code(*why)))
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
    let terminal = terminal(here, point)?;
    let setting = setting(here, &here.advice(point, &terminal));
    let left = match (key, setting) {
        ("set", Some((torque, tool))) => AsLeft::Set { torque, tool },
        ("remade", setting) => AsLeft::Remade { set: setting },
        ("out_of_service", _) => AsLeft::OutOfService {
            how: typed.words(0),
        },
        ("alone", _) => AsLeft::Alone(typed.code(0)?),
        _ => return Ok(None),
    };
    Ok(Some(Act::Left { point, left }))
}
