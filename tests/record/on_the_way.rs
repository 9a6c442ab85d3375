//! What happens on the way, and tries that the rules refuse.

use super::{Recorder, scene};
use baywalk_domain::ids::ActId;
use baywalk_domain::rig::{Book, BookChange, SupplyKind};
use baywalk_domain::walk::{Act, Next, WalkState};
use baywalk_domain::walk::{AsFound, Test};
use baywalk_logbook::rigfile;
use serde_json::{Value, json};
use uuid::Uuid;

/// What is done once on the way, and tries that the rules refuse.
impl Recorder {
    pub(super) fn before(&mut self, next: &Next) {
        let book = self.book();
        let walk = self.state().unwrap();
        match next {
            Next::KnownLive {
                bay,
                supply: SupplyKind::Ac,
                again: false,
            } if is(&book, *bay, "F") => {
                let held = AsFound::Held(Test::Tug);
                let point = book.points_of(*bay).first().unwrap().id;
                self.refused(Act::Found { point, found: held });
                self.refused(Act::PowerUp);
            }
            Next::Point(point) => self.on_the_way(&book, &walk, *point),
            _ => {}
        }
    }

    fn on_the_way(&mut self, book: &Book, walk: &WalkState, id: baywalk_domain::ids::PointId) {
        let point = book.point(id).unwrap();
        let last = *walk.standing.last().unwrap();
        match point.code.as_str() {
            "F10" if !self.has("\"undo\"") => self.act_undo(last),
            "H6" if !self.has("\"pause\"") => {
                self.act(Act::Pause, 5);
                self.act(Act::Resume, 25 * 60);
            }
            "K3" if !self.has("\"add\"") => self.add_point(),
            _ => {}
        }
    }

    fn has(&self, word: &str) -> bool {
        let word = format!("\"act\":{word}");
        self.lines.iter().any(|line| line.contains(&word))
    }

    fn act_undo(&mut self, act: ActId) {
        self.put(json!({"act": "undo"}), Act::Strike { act }, 3);
    }

    /// A terminal that nobody had noted is met and added where one stands.
    fn add_point(&mut self) {
        let fields = [
            ("code", "K20"),
            ("device", "KSL"),
            ("name", "spare motor lead, capped"),
            ("place", "left of the board"),
            ("set", "supply"),
            ("conductor", "plus"),
            ("role", "power"),
            ("fastening", "wire_connector"),
        ];
        let pairs: Vec<(String, String)> = fields
            .iter()
            .map(|(name, text)| ((*name).to_owned(), (*text).to_owned()))
            .collect();
        let book = self.book();
        let files = rigfile::add(&rigfile::write(&book), "point", &pairs).unwrap();
        let (toml, csv) = files.named();
        let ids = ActId::new(Uuid::from_u128(self.acts));
        let new = rigfile::read(&toml, &csv, ids).unwrap_or_else(|faults| panic!("{faults:?}"));
        let change = baywalk_screens::book::difference(&book, new);
        let [change] = <[BookChange; 1]>::try_from(change).unwrap_or_else(|all| panic!("{all:?}"));
        let map: serde_json::Map<String, Value> = fields
            .iter()
            .map(|(name, text)| ((*name).to_owned(), json!(text)))
            .collect();
        self.put(
            json!({"act": "add", "record": "point", "fields": map}),
            Act::Book(change),
            40,
        );
    }

    /// After the walk: what is decided about the findings.
    pub(super) fn after(&mut self) {
        let findings = self.logbook.findings(self.rig).unwrap();
        for finding in &findings {
            if let Some((follow_up, written)) = scene::follow_up(&self.book(), finding) {
                self.put(
                    written,
                    Act::Decide {
                        finding: finding.raised.id,
                        follow_up,
                    },
                    30,
                );
            }
        }
    }
}

fn is(book: &Book, bay: baywalk_domain::ids::BayId, code: &str) -> bool {
    book.bay(bay).is_some_and(|bay| bay.code.as_str() == code)
}
