//! Saying what a tool is set to, and seeing that it was said before it is used.

use super::{Deciding, at_phase};
use crate::ids::ToolId;
use crate::rig::Tool;
use crate::torque::setting;
use crate::units::{Stated, TorqueUnit};
use crate::walk::{Phase, Refusal, Setting, Shown, WalkState};

impl Deciding<'_> {
    pub(super) fn set_tool(
        &self,
        walk: &WalkState,
        tool: ToolId,
        at: &Stated<TorqueUnit>,
    ) -> Result<Shown, Refusal> {
        at_phase(walk, Phase::AtBays)?;
        let tool = self.tool(tool)?;
        setting(tool, at, None)
            .map(|_| Shown::default())
            .map_err(|_| Refusal::NoTool)
    }

    /// The tool with a name, in use.
    pub(super) fn tool(&self, id: ToolId) -> Result<&Tool, Refusal> {
        let known = self.book()?.tool(id).filter(|tool| !tool.retired);
        known.ok_or(Refusal::NoTool)
    }

    /// The tool with a name, where it is said to be set so.
    pub(super) fn tool_set(
        &self,
        walk: &WalkState,
        id: ToolId,
        at: &Stated<TorqueUnit>,
    ) -> Result<&Tool, Refusal> {
        let tool = self.tool(id)?;
        let setting = Setting {
            tool: id,
            at: at.clone(),
        };
        if walk.is_set(self.book()?, &setting) {
            Ok(tool)
        } else {
            Err(Refusal::ToolNotSet(id))
        }
    }
}
