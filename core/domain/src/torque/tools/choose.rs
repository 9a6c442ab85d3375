//! Which of the owner's tools would do.

use super::{Adapter, Setting, SettingFault, setting};
use crate::rig::Tool;
use crate::units::{Stated, TorqueUnit};

/// The tools that would do for a torque, the best first, and why the others would not.
#[derive(Debug, Clone, PartialEq)]
pub struct Choice<'a> {
    /// Those that would do, with what to set them to: those of the torque's own unit first, so that
    /// nobody converts in the dark, and of them the one that comes nearest.
    pub fit: Vec<(&'a Tool, Setting)>,
    /// Those that would not, and why. Where none fits, a tool whose range holds the torque is needed.
    pub unfit: Vec<(&'a Tool, SettingFault)>,
}

/// Tries each tool that is not retired on a torque, with the adapter where one is used.
#[must_use]
pub fn choose<'a>(
    tools: &'a [Tool],
    wanted: &Stated<TorqueUnit>,
    adapter: Option<Adapter>,
) -> Choice<'a> {
    let mut choice = Choice {
        fit: Vec::new(),
        unfit: Vec::new(),
    };
    for tool in tools.iter().filter(|tool| !tool.retired) {
        match setting(tool, wanted, adapter) {
            Ok(set) => choice.fit.push((tool, set)),
            Err(fault) => choice.unfit.push((tool, fault)),
        }
    }
    // Its own unit first, then nearest from below; of equals the smaller range, which is finer.
    choice.fit.sort_by(|(one, set), (other, other_set)| {
        let joint = |setting: &Setting| setting.joint.newton_metres();
        let most = |tool: &Tool| tool.most.quantity().newton_metres();
        let other_unit = |tool: &Tool| tool.least.unit() != wanted.unit();
        other_unit(one)
            .cmp(&other_unit(other))
            .then(joint(other_set).total_cmp(&joint(set)))
            .then(most(one).total_cmp(&most(other)))
    });
    choice
}
