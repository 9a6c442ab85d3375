//! Records the script of the sample walk: a walker who obeys what is next, in a scenario of our own.
//!
//! The script that comes with the command is what this writes; a test holds the two equal.

mod line;
mod obey;
mod on_the_way;
mod scene;

use baywalk_domain::ids::{ActId, RigId};
use baywalk_domain::moment::{Boot, Moment};
use baywalk_domain::rig::{Book, BookChange};
use baywalk_domain::torque::Practice;
use baywalk_domain::units::Stated;
use baywalk_domain::walk::{Act, Call, Next, Outlook, Scope, WalkState};
use baywalk_logbook::{Logbook, SystemClock, rigfile};
use chrono::{DateTime, Duration, FixedOffset};
use serde_json::{Value, json};
use std::collections::BTreeMap;
use uuid::Uuid;

/// The seed of the sample walk.
const SEED: &str = "wren-2027";
/// The layout that is walked.
const LAYOUT: &str = "sample-motorhome";

/// Walks the sample motorhome and gives the script of it.
#[must_use]
pub fn wren() -> String {
    let folder = tempfile::tempdir().unwrap();
    let mut recorder = Recorder::new(folder.path());
    recorder.walk();
    recorder.lines.join("\n") + "\n"
}

struct Recorder {
    logbook: Logbook,
    rig: RigId,
    lines: Vec<String>,
    clock: DateTime<FixedOffset>,
    started: DateTime<FixedOffset>,
    acts: u128,
    practice: Practice,
}

impl Recorder {
    fn new(folder: &std::path::Path) -> Self {
        let start = DateTime::parse_from_rfc3339("2027-03-20T09:02:00-07:00").unwrap();
        let logbook = Logbook::open(folder, Box::new(SystemClock::new())).unwrap();
        let layout = rigfile::layouts()
            .iter()
            .find(|layout| layout.code == LAYOUT)
            .unwrap();
        let act = ActId::new(Uuid::from_u128(1));
        let book = layout
            .book(act)
            .unwrap_or_else(|faults| panic!("{faults:?}"));
        let mut recorder = Self {
            logbook,
            rig: book.rig.id,
            lines: vec![json!({"script": 1, "seed": SEED}).to_string()],
            clock: start,
            started: start,
            acts: 1,
            practice: Practice::default(),
        };
        let whole = Act::Book(BookChange::Whole(Box::new(book)));
        recorder.put(json!({"act": "layout", "layout": LAYOUT}), whole, 1);
        recorder
    }

    fn book(&self) -> Book {
        self.logbook.book(self.rig).unwrap()
    }

    fn state(&self) -> Option<WalkState> {
        self.logbook.open_walk(self.rig).unwrap()
    }

    /// Records an act that takes so many seconds.
    fn act(&mut self, act: Act, seconds: i64) {
        let written = line::written(&self.book(), &act);
        self.put(written, act, seconds);
    }

    fn put(&mut self, written: Value, act: Act, seconds: i64) {
        self.write(written, false, seconds);
        let call = self.call(act);
        self.logbook
            .call(&call, &self.moment())
            .unwrap_or_else(|fault| panic!("{fault}: {call:?}"));
    }

    /// Records an act that the rules refuse.
    fn refused(&mut self, act: Act) {
        let written = line::written(&self.book(), &act);
        self.write(written, true, 2);
        let call = self.call(act);
        assert!(
            self.logbook.call(&call, &self.moment()).is_err(),
            "not refused: {call:?}"
        );
    }

    fn call(&mut self, act: Act) -> Call {
        self.acts += 1;
        Call {
            id: ActId::new(Uuid::from_u128(self.acts)),
            rig: self.rig,
            act,
        }
    }

    fn write(&mut self, written: Value, refused: bool, seconds: i64) {
        self.clock += Duration::seconds(seconds);
        let mut line = json!({"at": self.clock.to_rfc3339()});
        let fields = line.as_object_mut().unwrap();
        if refused {
            fields.insert("refused".to_owned(), json!(true));
        }
        fields.extend(written.as_object().unwrap().clone());
        self.lines.push(line.to_string());
    }

    fn moment(&self) -> Moment {
        let seconds = u64::try_from((self.clock - self.started).num_seconds()).unwrap();
        Moment {
            wall: self.clock,
            boot: Boot::new("recorder", seconds),
        }
    }

    fn walk(&mut self) {
        self.act(Act::Odometer(Stated::parse_pair("41230 mi").unwrap()), 5);
        let person = "Tove Hallin".to_owned();
        self.act(
            Act::Start {
                person,
                scope: Scope::Whole,
            },
            5,
        );
        while let Some(walk) = self.state() {
            let next = self.next(&walk);
            self.before(&next);
            let now = self.next(&self.state().unwrap());
            self.obey(&now);
        }
        self.after();
    }

    fn next(&self, walk: &WalkState) -> Next {
        self.told(|outlook| walk.next(&self.book(), outlook))
    }

    /// What is told of a rig that was never walked before.
    fn told<T>(&self, tell: impl FnOnce(&Outlook<'_>) -> T) -> T {
        tell(&Outlook {
            moved_running: &BTreeMap::new(),
            practice: &self.practice,
        })
    }
}
