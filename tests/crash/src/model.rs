//! A plain model of what a logbook must know after any acts, kept in memory and told apart from it.

use baywalk_domain::ids::{ActId, PointId};
use baywalk_domain::walk::{Act, Call, Grade};
use baywalk_logbook::Logbook;
use std::collections::BTreeMap;

/// What an act means to the model.
#[derive(Debug, Clone, PartialEq)]
enum Effect {
    Begin,
    End,
    Found(PointId, Grade),
    Left(PointId),
    Other,
}

/// What must be known.
#[derive(Debug, Clone, Default)]
pub struct Model {
    /// How many entries there are.
    pub entries: u64,
    /// The odometer notes that stand, as typed.
    miles: Vec<(ActId, String)>,
    /// The acts of the open walk that stand, in order.
    standing: Vec<(ActId, Effect)>,
    walking: bool,
}

impl Model {
    /// Whether a walk is open.
    #[must_use]
    pub const fn is_walking(&self) -> bool {
        self.walking
    }

    /// The act that a strike may take back: the newest that stands, never the start.
    #[must_use]
    pub fn newest(&self) -> Option<ActId> {
        match self.standing.as_slice() {
            [] | [_] => None,
            [.., (act, _)] => Some(*act),
        }
    }

    /// Takes an act that was accepted.
    pub fn take(&mut self, call: &Call) {
        self.entries += 1;
        let effect = match &call.act {
            Act::Odometer(miles) => {
                self.miles.push((call.id, miles.text().to_owned()));
                Effect::Other
            }
            Act::Strike { act } => {
                self.standing.pop();
                self.miles.retain(|(noted, _)| noted != act);
                return;
            }
            Act::Start { .. } => {
                (self.walking, self.standing) = (true, Vec::new());
                Effect::Begin
            }
            Act::End(_) => Effect::End,
            Act::Found { point, found } => Effect::Found(*point, found.grade()),
            Act::Left { point, .. } => Effect::Left(*point),
            _ => Effect::Other,
        };
        if self.walking {
            self.walking = effect != Effect::End;
            self.standing.push((call.id, effect));
        }
    }

    /// Sees that a logbook knows the same.
    ///
    /// # Errors
    /// What it says otherwise.
    pub fn same(&self, logbook: &Logbook, rig: baywalk_domain::ids::RigId) -> Result<(), String> {
        let told = |what: &str, found: String, expected: String| {
            Err(format!("{what}: {found}, expected {expected}"))
        };
        let entries = logbook.digest().seq;
        if entries != self.entries {
            return told("entries", entries.to_string(), self.entries.to_string());
        }
        let notes = logbook.odometer(rig).map_err(|fault| fault.to_string())?;
        let miles: Vec<String> = notes
            .iter()
            .map(|note| note.reading.text().to_owned())
            .collect();
        if !miles.iter().eq(self.miles.iter().map(|(_, text)| text)) {
            let expected = format!("{:?}", self.miles);
            return told("odometer", format!("{miles:?}"), expected);
        }
        let walk = logbook.open_walk(rig).map_err(|fault| fault.to_string())?;
        let Some(walk) = walk else {
            return match self.walking {
                false => Ok(()),
                true => told("walk", "none".to_owned(), "one".to_owned()),
            };
        };
        let standing: Vec<ActId> = self.standing.iter().map(|(act, _)| *act).collect();
        if walk.standing != standing {
            return told(
                "standing",
                format!("{:?}", walk.standing),
                format!("{standing:?}"),
            );
        }
        let mut grades = BTreeMap::new();
        for (_, effect) in &self.standing {
            if let Effect::Found(point, grade) = effect {
                grades.insert(*point, *grade);
            }
        }
        let known: BTreeMap<PointId, Grade> = walk
            .points
            .iter()
            .filter_map(|(point, record)| Some((*point, record.found.as_ref()?.found.grade())))
            .collect();
        let left = |point: &PointId| {
            walk.points
                .get(point)
                .is_some_and(|record| record.left.is_some())
        };
        let lefts = self.standing.iter().filter_map(|(_, effect)| match effect {
            Effect::Left(point) => Some(point),
            _ => None,
        });
        match known == grades && lefts.into_iter().all(left) {
            true => Ok(()),
            false => told("grades", format!("{known:?}"), format!("{grades:?}")),
        }
    }
}
