//! As left: what may be done with what was found.

use super::{Deciding, found, gate, said};
use crate::finding::{About, FindingKind};
use crate::ids::PointId;
use crate::rig::Tool;
use crate::torque::{Action, setting};
use crate::units::{Stated, TorqueUnit};
use crate::walk::{AloneWhy, AsFound, AsLeft, PointRecord, Refusal, Shown, WalkState};

impl Deciding<'_> {
    pub(super) fn left(
        &self,
        walk: &WalkState,
        id: PointId,
        left: &AsLeft,
    ) -> Result<Shown, Refusal> {
        let (point, bay) = self.point(id)?;
        let terminal = point.terminal().ok_or(Refusal::WrongKind(id))?;
        gate::open_bay(walk, bay)?;
        let record = walk.point(id).ok_or(Refusal::NothingNoted(id))?;
        let grade = record.found.as_ref().ok_or(Refusal::NothingNoted(id))?;
        if record.left.is_some() {
            return Err(Refusal::NotedAlready(id));
        }
        if !matches!(left, AsLeft::OutOfService { .. } | AsLeft::Alone(_)) {
            self.unlocked(walk, point)?;
        }
        if matches!(grade.found, AsFound::Held(_)) && matches!(left, AsLeft::Set { .. }) {
            return Err(Refusal::LeaveWhatHeld(id));
        }
        let advice = self.advice(walk, id, terminal);
        let figure = advice.target.as_ref().map(|target| &target.torque);
        let kind = match left {
            AsLeft::Alone(why) => alone(id, *why, &grade.found)?,
            AsLeft::Set { torque, tool } => {
                self.may_set(walk, id, record, advice.action)?;
                let tool = self.tool_set(walk, *tool, torque)?;
                off_figure(torque, figure, tool)
            }
            AsLeft::Remade { set } => {
                let (torque, tool) = set.as_ref().map(|(torque, tool)| (torque, *tool)).unzip();
                let known = torque
                    .zip(tool)
                    .map(|(at, tool)| self.tool_set(walk, tool, at));
                let pair = torque.zip(known.transpose()?);
                pair.and_then(|(torque, tool)| off_figure(torque, figure, tool))
            }
            AsLeft::OutOfService { how } => {
                said(how)?;
                Some(FindingKind::OutOfService)
            }
        };
        Ok(Shown {
            findings: kind
                .map(|kind| self.raise(kind, About::Point(id)))
                .into_iter()
                .collect(),
            ..Shown::default()
        })
    }

    /// Sees that setting is what this joint needs.
    fn may_set(
        &self,
        walk: &WalkState,
        point: PointId,
        record: &PointRecord,
        action: Action,
    ) -> Result<(), Refusal> {
        let remake = |because| Err(Refusal::RemakeNotSet { point, because });
        if record.damage.iter().any(|(damage, _)| damage.spoils()) {
            return remake(FindingKind::Damaged);
        }
        let about = About::Point(point);
        let again = |raised: &crate::finding::Raised| {
            raised.kind == FindingKind::MovedAgain && raised.about == about
        };
        if walk.findings.iter().any(again) {
            return remake(FindingKind::MovedAgain);
        }
        match action {
            Action::CheckThenSet => Ok(()),
            advice => Err(Refusal::NotBy { point, advice }),
        }
    }
}

/// What moved may be left as it is, with a finding; what is loose or out may not.
fn alone(point: PointId, why: AloneWhy, found: &AsFound) -> Result<Option<FindingKind>, Refusal> {
    match (found, why) {
        (AsFound::Loose | AsFound::Apart | AsFound::OpenedByUs, _) => {
            Err(Refusal::CantLeaveSo(point))
        }
        (AsFound::Moved(_), _) => Ok(Some(FindingKind::MovedLeft)),
        _ => Ok(None),
    }
}

/// Whether a joint was set to something else than the figure, or than the step of the tool's scale
/// at or below it.
fn off_figure(
    torque: &Stated<TorqueUnit>,
    figure: Option<&Stated<TorqueUnit>>,
    tool: &Tool,
) -> Option<FindingKind> {
    let step = |figure| setting(tool, figure, None).ok().map(|setting| setting.at);
    let meant = |figure| {
        found::same(torque, figure) || step(figure).is_some_and(|at| found::same(torque, &at))
    };
    figure
        .filter(|figure| !meant(figure))
        .map(|_| FindingKind::SetOffFigure)
}
