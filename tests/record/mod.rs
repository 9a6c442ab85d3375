//! Records the script of the sample walk: a walker who obeys what is next, in a scenario of our own.
//!
//! The script that comes with the command is what this writes; a test holds the two equal.

mod line;
mod scene;

use baywalk_domain::ids::{ActId, RigId};
use baywalk_domain::isolation::MeterKind;
use baywalk_domain::moment::{Boot, Moment};
use baywalk_domain::rig::{
    Book, BookChange, Isolation, PointKind, Presence, SourceKind, SupplyKind,
};
use baywalk_domain::supply::{Measured, Reading, ReadingStep};
use baywalk_domain::torque::{Past, Practice, advise, choose};
use baywalk_domain::units::{Stated, VoltageUnit};
use baywalk_domain::walk::{
    Act, Away, Call, Counted, Ending, Next, NotJudgedWhy, ReadyAnswer, ReadyItem, Scope, WalkState,
};
use baywalk_domain::walk::{AsFound, AsLeft, Movement, Seen, Test};
use baywalk_logbook::{Logbook, SystemClock, rigfile};
use chrono::{DateTime, Duration, FixedOffset};
use serde_json::{Value, json};
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
            let next = walk.next(&self.book(), &[]);
            self.before(&next);
            let now = self.state().unwrap().next(&self.book(), &[]);
            self.obey(&now);
        }
        self.after();
    }

    fn obey(&mut self, next: &Next) {
        match next {
            Next::Resume => self.act(Act::Resume, 20 * 60),
            Next::Ready(item) => {
                let answer = match item {
                    ReadyItem::Company => {
                        ReadyAnswer::Without("alone today; neighbour knows".to_owned())
                    }
                    _ => ReadyAnswer::Done,
                };
                self.act(
                    Act::Ready {
                        item: *item,
                        answer,
                    },
                    4,
                );
            }
            Next::Isolate(source) => self.away(*source),
            Next::Open(bay) => self.act(Act::Open { bay: *bay }, 40),
            Next::Except { device, set } => self.except(*device, set),
            Next::KnownLive { bay, supply, .. } => {
                let (place, volts) = match supply {
                    SupplyKind::Ac => ("supply outlet at the post", "121.3"),
                    SupplyKind::Dc => ("jump battery on the step", "12.71"),
                };
                let act = Act::KnownLive {
                    bay: *bay,
                    supply: *supply,
                    place: place.to_owned(),
                    meter: MeterKind::Contact,
                    volts: Stated::parse(volts, VoltageUnit::Volts).unwrap(),
                };
                self.act(act, 12);
            }
            Next::Read { device, check } => {
                let volts = scene::dead_reading(self.acts, check.supply);
                let act = Act::Read {
                    device: *device,
                    check: check.clone(),
                    volts,
                };
                self.act(act, 3);
            }
            Next::Point(point) => self.judge(*point),
            Next::Left(point) => self.leave(*point),
            Next::Close(bay) => self.act(
                Act::Close {
                    bay: *bay,
                    counted: Counted::ALL,
                },
                45,
            ),
            Next::PowerUp => self.act(Act::PowerUp, 30),
            Next::Restore(source) => self.act(Act::Restore { source: *source }, 25),
            Next::Measure(step) => self.measure(*step),
            Next::Unsafe(step) => panic!("not safe: {step:?}"),
            Next::End => self.act(Act::End(Ending::Whole), 15),
        }
    }

    fn away(&mut self, id: baywalk_domain::ids::SourceId) {
        let book = self.book();
        let source = book.source(id).unwrap();
        let away = match (source.presence, source.isolation) {
            (Presence::NotSure, _) => Away::NotFound("every cupboard and the boot".to_owned()),
            (_, Isolation::Never) => Away::Stays("its own posts".to_owned()),
            (_, Isolation::Unplug) => Away::Isolated("plug locked in its box".to_owned()),
            (_, Isolation::Switch) => Away::Isolated("open, locked, tagged".to_owned()),
            (_, Isolation::LeadOff) => Away::Isolated("lead off and taped".to_owned()),
        };
        let seconds = if source.kind == SourceKind::Shore {
            150
        } else {
            70
        };
        self.act(Act::Isolate { source: id, away }, seconds);
    }

    /// Goes on by exception where the rules let it; else the device's points are look only.
    fn except(&mut self, device: baywalk_domain::ids::DeviceId, set: &str) {
        let reason =
            "the bank's own posts: nothing upstream to open; negative off and taped".to_owned();
        let act = Act::Except {
            device,
            set: set.to_owned(),
            reason,
        };
        let call = self.call(act.clone());
        let seen = self.logbook.call(&call, &{
            self.clock += Duration::seconds(15);
            self.moment()
        });
        let written = line::written(&self.book(), &act);
        self.write(written, seen.is_err(), 0);
        if seen.is_err() {
            let book = self.book();
            let walk = self.state().unwrap();
            let bay = book.device(device).unwrap().bay;
            for point in book.points_of(bay) {
                let done = walk
                    .point(point.id)
                    .is_some_and(baywalk_domain::walk::PointRecord::is_done);
                if point.device == device && point.terminal().is_some() && !done {
                    let found = AsFound::NotJudged {
                        why: NotJudgedWhy::Alive,
                        note: String::new(),
                    };
                    self.act(
                        Act::Found {
                            point: point.id,
                            found,
                        },
                        4,
                    );
                }
            }
        }
    }

    fn judge(&mut self, id: baywalk_domain::ids::PointId) {
        let book = self.book();
        let point = book.point(id).unwrap();
        let code = point.code.as_str();
        for (damage, note) in scene::damage(code) {
            self.act(
                Act::Damage {
                    point: id,
                    damage,
                    note: note.to_owned(),
                },
                6,
            );
        }
        match &point.kind {
            PointKind::Look(_) => {
                let seen =
                    scene::seen(code).map_or(Seen::Clear, |words| Seen::Trouble(words.to_owned()));
                self.act(Act::Look { point: id, seen }, 5);
            }
            PointKind::Terminal(terminal) => {
                let advice = advise(terminal, Past::default(), &Practice::default());
                let tool = advice.check.as_ref().and_then(|check| {
                    let choice = choose(&book.tools, check, None);
                    choice
                        .fit
                        .first()
                        .map(|(tool, setting)| (setting.at.clone(), tool.id))
                });
                let tugged = !terminal.fastening.kind.takes_torque();
                let found =
                    scene::found(code).unwrap_or_else(|| scene::ordinary(tool.clone(), tugged));
                let found = match (found, tool) {
                    (AsFound::Moved(Movement::MarkOff { angle }), Some((below, tool))) => {
                        AsFound::Moved(Movement::Turned { angle, below, tool })
                    }
                    (found, _) => found,
                };
                self.act(Act::Found { point: id, found }, 9);
            }
        }
    }

    fn leave(&mut self, id: baywalk_domain::ids::PointId) {
        let book = self.book();
        let walk = self.state().unwrap();
        let point = book.point(id).unwrap();
        let terminal = point.terminal().unwrap();
        let past = baywalk_domain::walk::past(&walk, id, 0);
        let advice = advise(terminal, past, &Practice::default());
        let setting = advice.target.as_ref().and_then(|target| {
            let choice = choose(&book.tools, &target.torque, None);
            choice
                .fit
                .first()
                .map(|(tool, setting)| (setting.at.clone(), tool.id))
        });
        let left = scene::left(point.code.as_str()).unwrap_or_else(|| match setting {
            Some((torque, tool))
                if advice.action == baywalk_domain::torque::Action::CheckThenSet =>
            {
                AsLeft::Set { torque, tool }
            }
            set => AsLeft::Remade { set },
        });
        self.act(Act::Left { point: id, left }, 25);
    }

    fn measure(&mut self, step: ReadingStep) {
        let measured = match scene::reading(step) {
            Some(volts) => Measured::Volts(Stated::parse(volts, VoltageUnit::Volts).unwrap()),
            None if step.is_voltage() => {
                Measured::Not("no display at the post, probes do not reach".to_owned())
            }
            None => Measured::Works,
        };
        let place = scene::place(step).to_owned();
        self.act(
            Act::Measure(Reading {
                step,
                place,
                measured,
            }),
            20,
        );
    }
}

/// What is done once on the way, and tries that the rules refuse.
impl Recorder {
    fn before(&mut self, next: &Next) {
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
        let toml = rigfile::NamedText {
            name: "rig.toml",
            text: &files.toml,
        };
        let csv = rigfile::NamedText {
            name: "points.csv",
            text: &files.csv,
        };
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
    fn after(&mut self) {
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
