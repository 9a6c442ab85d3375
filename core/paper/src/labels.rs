//! Labels for bays and terminals: words that are read in a bay, torque with its basis, and the id.

use crate::pdf::{self, Front, Paper, Unwritten};
use crate::sheet::Tag;
use baywalk_domain::rig::{Bay, Book, Point, PointKind};
use baywalk_domain::torque::{Action, Advice, Past, Practice, advise};
use baywalk_shapes::frame::Frame;
use baywalk_words::{Arg, Words};

/// One label.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Label {
    pub(crate) tag: Tag,
    pub(crate) name: String,
    /// The full torque in the frame of its basis, or what is done without one.
    pub(crate) figure: Option<(Frame, String)>,
    /// What stands small under it.
    pub(crate) lines: Vec<String>,
    /// What the QR code says: the id of the bay or point.
    pub(crate) id: String,
}

/// A sheet of labels, and what is told of it.
#[derive(Debug, Clone, PartialEq)]
pub struct Labels {
    language: String,
    title: String,
    note: String,
    edition: String,
    identity: String,
    labels: Vec<Label>,
}

/// The labels of a rig, nose to tail: each bay, then its terminals. Where codes are named, only
/// those. The torque is the full value; under it stands at what the joint is checked first.
#[must_use]
pub fn labels(
    book: &Book,
    practice: &Practice,
    only: &[String],
    edition: &str,
    words: &Words,
) -> Labels {
    let wanted = |code: &str| only.is_empty() || only.iter().any(|named| named == code);
    let mut labels = Vec::new();
    for bay in book.bays_in_order() {
        if wanted(bay.code.as_str()) {
            labels.push(of_bay(bay, words));
        }
        let mut points = book.points_of(bay.id);
        points.sort_by(|a, b| a.code.cmp(&b.code));
        let points = points
            .into_iter()
            .filter(|point| wanted(point.code.as_str()));
        labels.extend(points.map(|point| of_point(point, practice, words)));
    }
    let rig = [("rig", Arg::from(book.rig.name.as_str()))];
    Labels {
        language: words.locale().to_owned(),
        title: words.fill("report-labels-title", &rig),
        note: words.say("report-labels-note"),
        edition: edition.to_owned(),
        identity: format!("labels {}", book.rig.id),
        labels,
    }
}

impl Labels {
    /// How many labels there are.
    #[must_use]
    pub const fn len(&self) -> usize {
        self.labels.len()
    }

    /// Whether there are none.
    #[must_use]
    pub const fn is_empty(&self) -> bool {
        self.labels.is_empty()
    }

    /// The sheet as PDF.
    ///
    /// # Errors
    /// [`Unwritten`], which is a fault of this program.
    pub fn pdf(&self, paper: Paper, words: &Words) -> Result<Vec<u8>, Unwritten> {
        let front = Front {
            title: &self.title,
            language: &self.language,
            edition: &self.edition,
            identity: &self.identity,
            foot: &self.title,
        };
        let head = (self.title.as_str(), self.note.as_str());
        pdf::labels(head, &self.labels, paper, words, &front)
    }
}

fn of_bay(bay: &Bay, words: &Words) -> Label {
    let keep_out = (!bay.keep_out.trim().is_empty()).then(|| {
        let args = [("what", Arg::from(bay.keep_out.as_str()))];
        words.fill("report-label-keep-out", &args)
    });
    let place = [words.code(bay.side), bay.place.clone()];
    let place = place.into_iter().filter(|part| !part.trim().is_empty());
    let lines = keep_out
        .into_iter()
        .chain([place.collect::<Vec<_>>().join("; ")])
        .chain([words.say("report-label-bay")]);
    Label {
        tag: Tag::Bay(bay.code.as_str().to_owned()),
        name: bay.name.clone(),
        figure: None,
        lines: lines.collect(),
        id: bay.id.to_string(),
    }
}

fn of_point(point: &Point, practice: &Practice, words: &Words) -> Label {
    let (figure, told) = match &point.kind {
        PointKind::Look(kind) => (None, vec![words.code(*kind)]),
        PointKind::Terminal(terminal) => {
            let advice = advise(terminal, Past::default(), practice);
            let lines = basis(&advice, words);
            (Some(framed(&advice, words)), lines)
        }
    };
    let place = (!point.place.trim().is_empty()).then(|| point.place.clone());
    Label {
        tag: Tag::Point(point.code.as_str().to_owned()),
        name: point.name.clone(),
        figure,
        lines: told.into_iter().chain(place).collect(),
        id: point.id.to_string(),
    }
}

/// The full value, or the action where there is none to set.
fn framed(advice: &Advice, words: &Words) -> (Frame, String) {
    match (&advice.target, advice.action) {
        (Some(target), Action::CheckThenSet) => {
            (target.basis.kind().into(), words.torque(&target.torque))
        }
        (_, action) => (Frame::Unknown, words.code(action)),
    }
}

/// At what the joint is checked first, and where the figure comes from.
fn basis(advice: &Advice, words: &Words) -> Vec<String> {
    match (&advice.target, advice.action) {
        (Some(target), Action::CheckThenSet) => {
            let check = advice.check.as_ref().map(|check| {
                let check = [("check", Arg::from(words.torque(check)))];
                words.fill("report-label-check", &check)
            });
            check
                .into_iter()
                .chain([words.basis(&target.basis)])
                .collect()
        }
        _ => Vec::new(),
    }
}
