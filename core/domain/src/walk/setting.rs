//! Which tool is set to what, for the check and for the full value of a point.

use super::{PointRecord, ReadyAnswer, ReadyItem, WalkState, past};
use crate::ids::{PointId, ToolId};
use crate::rig::{Book, Point, ToolKind};
use crate::torque::{Action, Advice, Practice, advise, choose};
use crate::units::{Stated, TorqueUnit};
use std::collections::BTreeMap;

/// A tool and what it is set to.
#[derive(Debug, Clone, PartialEq)]
pub struct Setting {
    /// The tool.
    pub tool: ToolId,
    /// Its setting, in its own unit.
    pub at: Stated<TorqueUnit>,
}

/// What the next step is told by, beside the walk and the book.
#[derive(Debug, Clone, Copy)]
pub struct Outlook<'a> {
    /// In how many walks running each point had moved before this one.
    pub moved_running: &'a BTreeMap<PointId, u8>,
    /// Our own settings of the check.
    pub practice: &'a Practice,
}

impl WalkState {
    /// The advice for a terminal as this walk has it now; `None` for a look.
    #[must_use]
    pub fn advice(&self, point: &Point, outlook: &Outlook<'_>) -> Option<Advice> {
        let before = outlook.moved_running.get(&point.id).copied().unwrap_or(0);
        let past = past(self, point.id, before);
        point
            .terminal()
            .map(|terminal| advise(terminal, past, outlook.practice))
    }

    /// The tool and its setting for the step that a point waits for: the check, or the full value
    /// where it had moved and is to be set. `None` where no tool is used or none reaches.
    #[must_use]
    pub fn setting_for(
        &self,
        book: &Book,
        point: &Point,
        outlook: &Outlook<'_>,
    ) -> Option<Setting> {
        let without = matches!(
            self.ready.get(&ReadyItem::TorqueTool),
            Some(ReadyAnswer::Without(_))
        );
        let advice = self.advice(point, outlook).filter(|_| !without)?;
        let wanted = match self
            .point(point.id)
            .is_some_and(PointRecord::waits_for_left)
        {
            false => advice.check.as_ref(),
            true => advice.target.as_ref().map(|target| &target.torque),
        };
        let remade = matches!(advice.action, Action::CheckThenSet | Action::Remake);
        let choice = choose(&book.tools, wanted.filter(|_| remade)?, None);
        choice.fit.first().map(|(tool, setting)| Setting {
            tool: tool.id,
            at: setting.at.clone(),
        })
    }

    /// Whether a setting is the one in the hand; a tool that shows the torque, or is made for one
    /// value, is not set.
    #[must_use]
    pub fn is_set(&self, book: &Book, setting: &Setting) -> bool {
        let kind = book.tool(setting.tool).map(|tool| tool.kind);
        let fixed = matches!(kind, Some(ToolKind::Indicating | ToolKind::Preset));
        fixed || self.setting.as_ref() == Some(setting)
    }
}
