//! What a tool is set to for a torque.

use super::Adapter;
use crate::rig::{Tool, ToolKind};
use crate::torque::Band;
use crate::torque::exact::Exact;
use crate::units::{OutOfRange, Stated, Torque, TorqueUnit};

/// By what share the nearest step below may miss a torque before the tool is too coarse; ours.
const COARSEST: f64 = 0.10;
/// Noise of conversion that still counts as reaching a step, in steps.
const NOISE: f64 = 1e-9;

/// What a tool is set to, and what the joint then gets.
#[derive(Debug, Clone, PartialEq)]
pub struct Setting {
    /// The setting in the tool's own unit, on a step of its scale.
    pub at: Stated<TorqueUnit>,
    /// What the joint gets at that setting; with an adapter it differs from the setting.
    pub joint: Torque,
    /// The tool's class in percent, plus and minus.
    pub class_percent: f64,
    /// What the joint may get within the tool's class.
    pub band: Band,
}

/// What was wanted of a tool, and what the tool can.
#[derive(Debug, Clone, PartialEq)]
pub struct Misfit {
    /// The torque that is wanted at the joint.
    pub wanted: Stated<TorqueUnit>,
    /// The least of the tool.
    pub least: Stated<TorqueUnit>,
    /// The most of the tool.
    pub most: Stated<TorqueUnit>,
    /// The step of its scale.
    pub step: Stated<TorqueUnit>,
}

impl std::fmt::Display for Misfit {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let (wanted, least) = (self.wanted.pair(), self.least.pair());
        let (most, step) = (self.most.pair(), self.step.pair());
        write!(
            f,
            "wanted {wanted}; the tool goes from {least} to {most} by {step}"
        )
    }
}

/// Why a tool is not set to a torque.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum SettingFault {
    /// The tool does not reach so low or so high.
    #[error("the torque is outside the range of the tool: {0}")]
    OutsideRange(Box<Misfit>),
    /// The step below is over a tenth below.
    #[error("the scale of the tool is too coarse: {0}")]
    TooCoarse(Box<Misfit>),
    /// Range and step of the tool are in different units, or its least is above its most.
    #[error("range and step of the tool do not fit together: {0}")]
    Tool(Box<Misfit>),
    /// The torque at the tool is none that can be.
    #[error(transparent)]
    Range(#[from] OutOfRange),
}

/// What to set a tool to so that a joint gets a torque: the step of its scale at or below it, never
/// above. Steps are counted from the tool's least.
///
/// # Errors
/// [`SettingFault`] where the torque is outside the tool's range, or the scale too coarse.
///
/// # Example
/// ```
/// use baywalk_domain::ids::ToolId;
/// use baywalk_domain::rig::{Code, Tool, ToolKind};
/// use baywalk_domain::torque::{SettingFault, setting};
/// use baywalk_domain::units::Stated;
/// let tool = Tool {
///     id: ToolId::new(uuid::Uuid::nil()),
///     code: Code::parse("T1")?,
///     name: "driver".into(),
///     kind: ToolKind::ClickDriver,
///     least: Stated::parse_pair("1.0 N.m")?,
///     most: Stated::parse_pair("6.0 N.m")?,
///     step: Stated::parse_pair("0.2 N.m")?,
///     calibrated: None,
///     cycles: 0,
///     retired: false,
/// };
/// let set = setting(&tool, &Stated::parse_pair("45 lbf.in")?, None)?;
/// assert_eq!(set.at.pair(), "5 N.m");
/// let above = setting(&tool, &Stated::parse_pair("120 lbf.in")?, None);
/// assert!(matches!(above, Err(SettingFault::OutsideRange(_))));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn setting(
    tool: &Tool,
    wanted: &Stated<TorqueUnit>,
    adapter: Option<Adapter>,
) -> Result<Setting, SettingFault> {
    let at_tool = match adapter {
        Some(adapter) => adapter.at_tool(wanted.quantity())?,
        None => wanted.quantity(),
    };
    let at = step_below(tool, wanted, at_tool)?;
    let short = 1.0 - at.quantity().newton_metres() / at_tool.newton_metres();
    if short > COARSEST {
        return Err(SettingFault::TooCoarse(misfit(tool, wanted)));
    }
    let joint = match adapter {
        Some(adapter) => adapter.at_joint(at.quantity())?,
        None => at.quantity(),
    };
    let class_percent = class_percent(tool.kind, at.quantity());
    let spread = |share: f64| Torque::from_newton_metres(joint.newton_metres() * share);
    Ok(Setting {
        band: Band {
            lowest: spread(1.0 - class_percent / 100.0)?,
            highest: spread(1.0 + class_percent / 100.0)?,
        },
        at,
        joint,
        class_percent,
    })
}

/// The largest step of the tool that is not above a torque.
fn step_below(
    tool: &Tool,
    wanted: &Stated<TorqueUnit>,
    at_tool: Torque,
) -> Result<Stated<TorqueUnit>, SettingFault> {
    let unit = tool.least.unit();
    let unsound = || SettingFault::Tool(misfit(tool, wanted));
    if tool.most.unit() != unit
        || tool.step.unit() != unit
        || tool.least.value() > tool.most.value()
    {
        return Err(unsound());
    }
    let value = at_tool.in_unit(unit);
    let noise = NOISE * tool.step.value();
    let reach = tool.most.value() - tool.least.value();
    let above = value - tool.least.value();
    // A torque over the range by less than a step is refused too: the range is the maker's.
    if above < -noise || above > reach + noise {
        return Err(SettingFault::OutsideRange(misfit(tool, wanted)));
    }
    let steps = whole((above / tool.step.value() + NOISE).floor()).ok_or_else(unsound)?;
    let least = Exact::read(tool.least.text()).ok_or_else(unsound)?;
    let step = Exact::read(tool.step.text()).ok_or_else(unsound)?;
    let text = least.plus_steps(step, steps).ok_or_else(unsound)?.text();
    Stated::parse(&text, unit).map_err(|_| unsound())
}

fn misfit(tool: &Tool, wanted: &Stated<TorqueUnit>) -> Box<Misfit> {
    Box::new(Misfit {
        wanted: wanted.clone(),
        least: tool.least.clone(),
        most: tool.most.clone(),
        step: tool.step.clone(),
    })
}

/// A count as a whole number; `None` above 4,294,967,295.
fn whole(count: f64) -> Option<u32> {
    format!("{count:.0}").parse().ok()
}

/// The class of a tool in percent, plus and minus: setting wrenches ±4 % above 10 N·m and ±6 % up
/// to it (ISO 6789-1, second hand); everything else ±6 % (from memory).
#[must_use]
pub fn class_percent(kind: ToolKind, at: Torque) -> f64 {
    if kind == ToolKind::ClickWrench && at.newton_metres() > 10.0 {
        4.0
    } else {
        6.0
    }
}

/// Whether a tool is backed off to its least setting at the end of a walk (common practice, no
/// source): one that clicks at a set value.
#[must_use]
pub const fn backs_off(kind: ToolKind) -> bool {
    matches!(kind, ToolKind::ClickWrench | ToolKind::ClickDriver)
}
