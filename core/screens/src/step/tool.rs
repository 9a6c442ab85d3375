//! Setting the tool: each change of setting is said before the tool is used.

use super::blank;
use crate::card::{Card, Key};
use crate::here::Here;
use baywalk_domain::torque::{Calibration, calibration, choose, setting};
use baywalk_domain::units::{Stated, TorqueUnit};
use baywalk_domain::walk::{Act, Setting};

pub(super) fn card(here: &Here<'_>, wanted: &Setting) -> Card {
    let words = here.words;
    let bay = here.walk.open_bays().next();
    let line = bay.map_or_else(|| here.line(), |bay| here.line_of(bay));
    let args = [
        ("tool", words.tool_name(wanted.tool, &*here.book).into()),
        ("torque", words.torque(&wanted.at).into()),
    ];
    let question = words.fill("step-tool-question", &args);
    let mut card = blank("set_tool", line, words.say("step-tool-title"), question);
    card.tag = bay
        .and_then(|bay| here.book.bay(bay))
        .map(|bay| bay.code.to_string());
    card.lines = lines(here, Some(wanted));
    card.keys
        .push(Key::plain("set", words.say("step-tool-key")));
    card
}

pub(super) fn act(wanted: Setting, key: &str) -> Option<Act> {
    (key == "set").then_some(Act::SetTool {
        tool: wanted.tool,
        at: wanted.at,
    })
}

/// The tool, the band of its class around the setting, and its calibration where that is not sure.
pub(super) fn lines(here: &Here<'_>, wanted: Option<&Setting>) -> Vec<String> {
    let words = here.words;
    let known = wanted.and_then(|wanted| Some((here.book.tool(wanted.tool)?, wanted)));
    let Some((tool, wanted)) = known else {
        return Vec::new();
    };
    let mut lines = vec![words.tool_name(tool.id, &*here.book)];
    if let Ok(set) = setting(tool, &wanted.at, None) {
        let unit = wanted.at.unit();
        let args = [
            ("percent", words.number(set.class_percent, 0).into()),
            ("low", words.torque_in(set.band.lowest, unit).into()),
            ("high", words.torque_in(set.band.highest, unit).into()),
        ];
        lines.push(words.fill("step-tool-band", &args));
    }
    let held = calibration(tool, here.now.date());
    if !matches!(held, Calibration::Holds { .. }) {
        lines.push(words.calibration(held));
    }
    lines
}

/// Why none of the owner's tools reaches a torque.
pub(super) fn out_of_reach(here: &Here<'_>, wanted: Option<&Stated<TorqueUnit>>) -> Vec<String> {
    let words = here.words;
    let choice = wanted.map(|wanted| choose(&here.book.tools, wanted, None));
    let unfit = choice
        .filter(|choice| choice.fit.is_empty())
        .map(|choice| choice.unfit);
    let told = unfit.into_iter().flatten().map(|(tool, fault)| {
        format!(
            "{}: {}",
            words.tool_name(tool.id, &*here.book),
            words.setting_fault(&fault)
        )
    });
    told.collect()
}
