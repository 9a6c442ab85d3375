//! `calc tool-setting`: what a torque tool is set to, and which one would do.

use super::shape::{BandOut, TorqueOut, Word};
use super::{Calculate, Fault, at};
use baywalk_domain::ids::ToolId;
use baywalk_domain::rig::{Code, Tool, ToolKind};
use baywalk_domain::torque::{Adapter, Calibration, Setting, backs_off, calibration, choose};
use baywalk_domain::units::{Stated, StatedLength, TorqueUnit};
use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use uuid::Uuid;

/// The calculation.
pub(super) struct Calculation;

/// A torque that is wanted at a joint, and the tools at hand.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct Given {
    /// The torque, such as 45 lbf.in.
    torque: String,
    /// The tools; none where left out.
    #[serde(default)]
    tools: Vec<ToolIn>,
    /// An adapter that lengthens the lever.
    adapter: Option<AdapterIn>,
    /// The day, as 2027-03-20, to tell whether a calibration holds.
    today: Option<String>,
}

/// A torque tool; range and step in its own unit.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct ToolIn {
    /// Its code, such as T1.
    code: String,
    kind: Word<ToolKind>,
    /// The least it can be set to, such as 10 lbf.in.
    least: String,
    /// The most it can be set to.
    most: String,
    /// The step of its scale.
    step: String,
    /// The day of its last calibration, as 2026-03-01.
    calibrated: Option<String>,
    /// Clicks since then.
    #[serde(default)]
    cycles: u32,
}

/// An adapter between wrench and joint.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct AdapterIn {
    /// Middle of the wrench's square to middle of its grip, such as 10 in.
    lever: String,
    /// Length of the adapter between middles, such as 1.5 in.
    length: String,
    /// Angle to the lever in degrees: 0 in line, 90 across, 180 back.
    #[serde(default)]
    degrees: f64,
}

/// What the wrench must give, and what each tool is set to.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Found {
    wanted: TorqueOut,
    /// What the wrench must give so that the joint gets the torque, in N·m.
    at_tool_newton_metres: f64,
    /// The same in the unit of the torque.
    at_tool: f64,
    /// The tools that would do, the nearest first.
    fit: Vec<FitOut>,
    /// The tools that would not, and why.
    unfit: Vec<UnfitOut>,
}

/// A tool that would do.
#[derive(Debug, Serialize, JsonSchema)]
struct FitOut {
    code: String,
    setting: TorqueOut,
    /// What the joint gets at that setting, in N·m.
    joint_newton_metres: f64,
    class_percent: f64,
    /// What the joint may get within the tool's class.
    band: BandOut,
    /// Whether it is backed off to its least setting at the end.
    backs_off: bool,
    /// `holds`, `due` or `unknown`; left out where no day was given.
    calibration: Option<&'static str>,
    /// The day on which it is due by time.
    calibration_due: Option<String>,
}

/// A tool that would not do.
#[derive(Debug, Serialize, JsonSchema)]
struct UnfitOut {
    code: String,
    why: String,
}

impl TryFrom<&ToolIn> for Tool {
    type Error = Fault;
    fn try_from(given: &ToolIn) -> Result<Self, Fault> {
        let stated = |text: &str, field| Stated::parse_pair(text).map_err(at(field));
        Ok(Self {
            id: ToolId::new(Uuid::new_v5(&Uuid::NAMESPACE_OID, given.code.as_bytes())),
            code: Code::parse(&given.code).map_err(at("tools.code"))?,
            name: String::new(),
            kind: given.kind.0,
            least: stated(&given.least, "tools.least")?,
            most: stated(&given.most, "tools.most")?,
            step: stated(&given.step, "tools.step")?,
            calibrated: day(given.calibrated.as_deref(), "tools.calibrated")?,
            cycles: given.cycles,
            retired: false,
        })
    }
}

impl TryFrom<&AdapterIn> for Adapter {
    type Error = Fault;
    fn try_from(given: &AdapterIn) -> Result<Self, Fault> {
        let length = |text: &str, field| {
            StatedLength::parse(text)
                .map(|stated| stated.length())
                .map_err(at(field))
        };
        let lever = length(&given.lever, "adapter.lever")?;
        let extension = length(&given.length, "adapter.length")?;
        Self::new(lever, extension, given.degrees).map_err(at("adapter"))
    }
}

impl Calculate for Calculation {
    const NAME: &'static str = "tool-setting";
    const ABOUT: &'static str =
        "What a torque tool is set to for a torque, with its class, and which tool would do.";
    type In = Given;
    type Out = Found;

    fn calculate(given: Given) -> Result<Found, Fault> {
        let wanted: Stated<TorqueUnit> = Stated::parse_pair(&given.torque).map_err(at("torque"))?;
        let tools: Vec<Tool> = given
            .tools
            .iter()
            .map(Tool::try_from)
            .collect::<Result<_, _>>()?;
        let adapter = given.adapter.as_ref().map(Adapter::try_from).transpose()?;
        let at_tool = match adapter {
            Some(adapter) => adapter.at_tool(wanted.quantity()).map_err(at("torque"))?,
            None => wanted.quantity(),
        };
        let today = day(given.today.as_deref(), "today")?;
        let choice = choose(&tools, &wanted, adapter);
        Ok(Found {
            wanted: (&wanted).into(),
            at_tool_newton_metres: at_tool.newton_metres(),
            at_tool: at_tool.in_unit(wanted.unit()),
            fit: choice
                .fit
                .iter()
                .map(|(tool, setting)| fit(tool, setting, today))
                .collect(),
            unfit: choice
                .unfit
                .iter()
                .map(|(tool, fault)| UnfitOut {
                    code: tool.code.as_str().to_owned(),
                    why: fault.to_string(),
                })
                .collect(),
        })
    }
}

/// Reads a day written as 2027-03-20.
fn day(text: Option<&str>, field: &str) -> Result<Option<NaiveDate>, Fault> {
    text.map(str::parse)
        .transpose()
        .map_err(at::<chrono::ParseError>(field))
}

fn fit(tool: &Tool, setting: &Setting, today: Option<NaiveDate>) -> FitOut {
    let (calibration, calibration_due) = match today.map(|today| calibration(tool, today)) {
        None => (None, None),
        Some(Calibration::Unknown) => (Some("unknown"), None),
        Some(Calibration::Holds { due, .. }) => (Some("holds"), Some(due)),
        Some(Calibration::Due { since, .. }) => (Some("due"), Some(since)),
    };
    FitOut {
        code: tool.code.as_str().to_owned(),
        setting: (&setting.at).into(),
        joint_newton_metres: setting.joint.newton_metres(),
        class_percent: setting.class_percent,
        band: setting.band.into(),
        backs_off: backs_off(tool.kind),
        calibration,
        calibration_due: calibration_due.map(|day| day.to_string()),
    }
}

#[cfg(test)]
mod tests {
    use crate::calc::{Fault, run};
    use serde_json::Value;

    const TOOLS: &str = r#""tools": [
        { "code": "T1", "kind": "click_driver", "least": "10 lbf.in", "most": "50 lbf.in",
          "step": "1 lbf.in", "calibrated": "2026-03-01" },
        { "code": "T2", "kind": "click_wrench", "least": "5 N.m", "most": "25 N.m",
          "step": "0.5 N.m" }], "today": "2027-03-01""#;

    #[test]
    fn names_the_tool_that_would_do_and_why_the_other_would_not() {
        let input = format!(r#"{{ "torque": "120 lbf.in", {TOOLS} }}"#);
        let found: Value = serde_json::from_str(&run("tool-setting", &input).unwrap()).unwrap();
        assert_eq!(found["fit"][0]["code"], "T2");
        assert_eq!(found["fit"][0]["setting"]["text"], "13.5");
        assert_eq!(found["fit"][0]["calibration"], "unknown");
        assert_eq!(found["unfit"][0]["code"], "T1");
    }

    #[test]
    fn tells_a_calibration_that_is_due() {
        let input = format!(r#"{{ "torque": "45 lbf.in", {TOOLS} }}"#);
        let found: Value = serde_json::from_str(&run("tool-setting", &input).unwrap()).unwrap();
        let driver = &found["fit"][0];
        assert_eq!(
            (&driver["code"], &driver["calibration"]),
            (&"T1".into(), &"due".into())
        );
        assert_eq!(driver["calibration_due"], "2027-03-01");
    }

    #[test]
    fn refuses_with_the_field() {
        for (field, input) in [
            ("torque", r#"{ "torque": "45" }"#),
            (
                "today",
                r#"{ "torque": "45 lbf.in", "today": "2027-02-30" }"#,
            ),
            (
                "adapter",
                r#"{ "torque": "4 N.m", "adapter": { "lever": "2 in", "length": "3 in", "degrees": 180 } }"#,
            ),
        ] {
            match run("tool-setting", input) {
                Err(Fault::Field { field: found, .. }) => assert_eq!(found, field),
                other => panic!("{input}: {other:?}"),
            }
        }
    }
}
