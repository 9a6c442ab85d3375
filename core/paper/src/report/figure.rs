//! The torque of a point: the figure in the frame that tells its basis, with basis and source.

use super::view::View;
use crate::sheet::Cell;
use baywalk_domain::rig::{Point, TorqueBasis};
use baywalk_domain::torque::{Action, BasisKind};
use baywalk_domain::units::{Stated, TorqueUnit};
use baywalk_domain::walk::{AdviceShown, PointRecord};
use baywalk_shapes::frame::Frame;

/// A figure with where it comes from.
pub(super) struct Figure<'a> {
    pub(super) torque: &'a Stated<TorqueUnit>,
    pub(super) basis: BasisKind,
    pub(super) source: &'a str,
}

/// The figure that stood on the screen; where none was shown, the maker's from the rig's book.
pub(super) fn figure<'a>(point: &'a Point, record: Option<&'a PointRecord>) -> Option<Figure<'a>> {
    match advice(record) {
        Some(advice) => advice
            .target
            .as_ref()
            .zip(advice.basis)
            .map(|(torque, basis)| Figure {
                torque,
                basis,
                source: &advice.source,
            }),
        None => point.terminal().and_then(|terminal| {
            terminal.maker.as_ref().map(|maker| Figure {
                torque: &maker.torque,
                basis: match maker.basis {
                    TorqueBasis::Label => BasisKind::Label,
                    TorqueBasis::Document => BasisKind::Document,
                },
                source: &maker.source,
            })
        }),
    }
}

/// The torque cell of a point.
pub(super) fn cell(view: &View<'_>, point: &Point, record: Option<&PointRecord>) -> Cell {
    let advice = advice(record);
    if let Some(figure) = figure(point, record) {
        return Cell::default()
            .framed(figure.basis.into(), view.torque(figure.torque))
            .with([from(view, figure.basis, figure.source)]);
    }
    match advice.map(|advice| advice.action) {
        Some(action @ (Action::AskMaker | Action::CheckThenSet)) => Cell::default()
            .framed(Frame::Unknown, view.say("report-no-figure"))
            .with([view.headed(action)]),
        Some(action) => Cell::default().with([view.headed(action)]),
        None => Cell::default().with([view.say("report-nothing-shown")]),
    }
}

/// The basis with its source, in words.
pub(super) fn from(view: &View<'_>, basis: BasisKind, source: &str) -> String {
    let basis = view.code(basis);
    if source.trim().is_empty() {
        return basis;
    }
    view.fill("report-basis", &[("basis", &basis), ("source", source)])
}

fn advice(record: Option<&PointRecord>) -> Option<&AdviceShown> {
    record?.found.as_ref()?.advice.as_ref()
}
