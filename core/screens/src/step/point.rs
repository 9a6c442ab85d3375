//! The point card: where, what holds it, the torque, the question, the grades.

use super::{Typed, blank, found, look};
use crate::Problem;
use crate::card::{Card, Count};
use crate::here::Here;
use baywalk_domain::ids::PointId;
use baywalk_domain::rig::{Point, PointKind};
use baywalk_domain::torque::Advice;
use baywalk_domain::walk::Act;

impl Here<'_> {
    /// The advice for a terminal as it stands now.
    pub(crate) fn advice(&self, point: &Point) -> Result<Advice, Problem> {
        let advice = self.walk.advice(point, &self.outlook());
        advice.ok_or_else(|| Problem::not_found(self.words.say("refused-not-in-book")))
    }

    /// A card that is about one point, with its place and count.
    pub(super) fn point_card(
        &self,
        kind: &'static str,
        id: PointId,
        question: String,
    ) -> Result<Card, Problem> {
        let (point, device, bay) = self.point(id)?;
        let title = self.words.point_name(id, &*self.book);
        let mut card = blank(kind, self.line_of(bay.id), title, question);
        card.point = Some(id.to_string());
        card.tag = Some(bay.code.to_string());
        card.place = [device.name.as_str(), point.place.as_str()]
            .into_iter()
            .filter(|part| !part.is_empty())
            .collect::<Vec<_>>()
            .join(", ");
        let points = self.book.points_of(bay.id);
        let at = points.iter().position(|other| other.id == id).unwrap_or(0);
        card.count = Some(Count::new(at + 1, points.len()));
        Ok(card)
    }
}

pub(super) fn card(here: &Here<'_>, id: PointId) -> Result<Card, Problem> {
    let (point, _, _) = here.point(id)?;
    let mut card = match &point.kind {
        PointKind::Look(kind) => look::card(here, id, *kind)?,
        PointKind::Terminal(terminal) => found::card(here, id, terminal)?,
    };
    if !point.note.is_empty() {
        card.lines.push(point.note.clone());
    }
    Ok(card)
}

pub(super) fn act(
    here: &Here<'_>,
    id: PointId,
    key: &str,
    typed: &Typed<'_>,
) -> Result<Option<Act>, Problem> {
    let (point, _, _) = here.point(id)?;
    match &point.kind {
        PointKind::Look(_) => Ok(look::act(id, key, typed)),
        PointKind::Terminal(_) => found::act(here, id, key, typed),
    }
}
