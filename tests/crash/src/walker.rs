//! A walker who obeys what is next, on any rig, and finds things by a number that is drawn.

use baywalk_domain::finding::About;
use baywalk_domain::ids::{ActId, DeviceId, PointId, RigId, SourceId, ToolId};
use baywalk_domain::isolation::{Meter, MeterCategory};
use baywalk_domain::moment::{Boot, Moment};
use baywalk_domain::rig::{Book, Isolation, Point, PointKind, Presence, SupplyKind};
use baywalk_domain::supply::{Measured, Reading, ReadingStep};
use baywalk_domain::torque::Practice;
use baywalk_domain::units::{Stated, TorqueUnit, VoltageUnit};
use baywalk_domain::walk::{
    Act, Angle, AsFound, AsLeft, Away, Call, Counted, Damage, Ending, Movement, Next, NotJudgedWhy,
    Outlook, ReadyAnswer, Scope, Seen, Setting, Test, WalkState,
};
use baywalk_logbook::{ActFault, Logbook, Outcome};
use chrono::{DateTime, Duration, FixedOffset};
use std::collections::BTreeMap;
use uuid::Uuid;

/// A walker with a clock and names of its own, so that the same walk gives the same bytes.
#[derive(Debug)]
pub struct Walker {
    rig: RigId,
    rng: fastrand::Rng,
    now: DateTime<FixedOffset>,
    acts: u128,
    moved: BTreeMap<PointId, u8>,
    /// Digests of photos to be noted, one after another.
    pub photos: Vec<String>,
    /// What was done, with its moment.
    pub calls: Vec<(Call, Moment)>,
    /// Whether what was done is kept in `calls`.
    pub keeps: bool,
}

impl Walker {
    /// A walker of a rig, from a moment on.
    #[must_use]
    pub fn new(rig: RigId, seed: u64, start: &str) -> Self {
        Self {
            rig,
            rng: fastrand::Rng::with_seed(seed),
            now: DateTime::parse_from_rfc3339(start).unwrap(),
            acts: u128::from(seed) << 64,
            moved: BTreeMap::new(),
            photos: Vec::new(),
            calls: Vec::new(),
            keeps: true,
        }
    }

    /// Lets time pass.
    pub fn wait(&mut self, days: i64) {
        self.now += Duration::days(days);
    }

    /// Does an act.
    pub fn act(&mut self, logbook: &mut Logbook, act: Act) -> Outcome {
        self.attempt(logbook, act.clone())
            .unwrap_or_else(|fault| panic!("{fault}: {act:?}"))
    }

    /// Does an act that may be refused.
    ///
    /// # Errors
    /// As [`Logbook::call`].
    pub fn attempt(&mut self, logbook: &mut Logbook, act: Act) -> Result<Outcome, ActFault> {
        self.acts += 1;
        self.now += Duration::seconds(5);
        let wall = self.now;
        let seconds = u64::try_from(wall.timestamp()).unwrap();
        let boot = Boot::new("walker", seconds);
        let call = Call {
            id: ActId::new(Uuid::from_u128(self.acts)),
            rig: self.rig,
            act,
        };
        let at = Moment { wall, boot };
        let outcome = logbook.call(&call, &at)?;
        if self.keeps {
            self.calls.push((call, at));
        }
        Ok(outcome)
    }

    /// Walks the whole rig, or some of it, to the end.
    pub fn walk(&mut self, logbook: &mut Logbook, scope: Scope) {
        self.begin(logbook, scope);
        let book = logbook.book(self.rig).unwrap();
        while let Some(walk) = logbook.open_walk(self.rig).unwrap() {
            self.obey(logbook, &book, &walk);
        }
    }

    /// Begins a walk.
    pub fn begin(&mut self, logbook: &mut Logbook, scope: Scope) {
        let person = "Tove Hallin".to_owned();
        self.act(logbook, Act::Start { person, scope });
        self.moved = logbook.moved_running(self.rig).unwrap();
    }

    /// Does what is next in a walk.
    pub fn obey(&mut self, logbook: &mut Logbook, book: &Book, walk: &WalkState) {
        let next = self.told(|outlook| walk.next(book, outlook));
        let act = match next {
            Next::Resume => Act::Resume,
            Next::Ready(item) => Act::Ready {
                item,
                answer: ReadyAnswer::Done,
            },
            Next::Isolate(source) => away(book, source),
            Next::Open(bay) => Act::Open { bay },
            Next::Except { device, set } => return self.except(logbook, book, (device, set)),
            Next::KnownLive { bay, supply, .. } => Act::KnownLive {
                bay,
                supply,
                place: "supply outlet at the post".to_owned(),
                meter: Meter::contact("blue meter", MeterCategory::Three),
                volts: volts(if supply == SupplyKind::Ac {
                    "121.3"
                } else {
                    "12.71"
                }),
            },
            Next::Read { device, check } => Act::Read {
                device,
                check,
                volts: volts("0.0"),
            },
            Next::SetTool(Setting { tool, at }) => Act::SetTool { tool, at },
            Next::Point(point) => return self.judge(logbook, book, walk, point),
            Next::Left(point) => self.left(book, walk, point),
            Next::Close(bay) => Act::Close {
                bay,
                counted: Counted::ALL,
            },
            Next::PowerUp => Act::PowerUp,
            Next::Restore(source) => Act::Restore { source },
            Next::Measure(step) => measure(step),
            Next::Unsafe(step) => panic!("not safe: {step:?}"),
            Next::End => Act::End(Ending::Whole),
        };
        self.act(logbook, act);
    }

    fn told<T>(&self, tell: impl FnOnce(&Outlook<'_>) -> T) -> T {
        tell(&Outlook {
            moved_running: &self.moved,
            practice: &Practice::default(),
        })
    }

    /// Leaves the terminals of a device that stays live, where the rules let nobody go on.
    fn except(&mut self, logbook: &mut Logbook, book: &Book, of: (DeviceId, String)) {
        let (device, _) = of;
        let bay = book.device(device).unwrap().bay;
        let walk = logbook.open_walk(self.rig).unwrap().unwrap();
        for point in book.points_of(bay) {
            let done = walk.point(point.id).is_some_and(|record| record.is_done());
            if point.device == device && point.terminal().is_some() && !done {
                let why = NotJudgedWhy::Alive;
                let note = String::new();
                let found = AsFound::NotJudged { why, note };
                let point = point.id;
                self.act(logbook, Act::Found { point, found });
            }
        }
    }

    fn judge(&mut self, logbook: &mut Logbook, book: &Book, walk: &WalkState, id: PointId) {
        if let Some(digest) = self.photos.pop() {
            let caption = "as found".to_owned();
            let about = About::Point(id);
            self.act(
                logbook,
                Act::Photo {
                    about,
                    digest,
                    caption,
                },
            );
        }
        let point = book.point(id).unwrap();
        if self.rng.u8(..) < 6 {
            let note = "white crust".to_owned();
            let damage = Damage::Corrosion;
            self.act(
                logbook,
                Act::Damage {
                    point: id,
                    damage,
                    note,
                },
            );
        }
        let act = match &point.kind {
            PointKind::Look(_) => {
                let seen = if self.rng.u8(..) < 10 {
                    Seen::Trouble("sleeve worn bright".to_owned())
                } else {
                    Seen::Clear
                };
                Act::Look { point: id, seen }
            }
            PointKind::Terminal(terminal) => {
                let tug = !terminal.fastening.kind.takes_torque();
                let found = self.found(self.setting(book, walk, point), tug);
                Act::Found { point: id, found }
            }
        };
        self.act(logbook, act);
    }

    fn found(&mut self, tool: Option<(Stated<TorqueUnit>, ToolId)>, tug: bool) -> AsFound {
        match (tool, self.rng.u8(..)) {
            (Some((below, tool)), 0..10) => AsFound::Moved(Movement::Turned {
                angle: Angle::Eighth,
                below,
                tool,
            }),
            (Some(_), 10..14) => AsFound::Loose,
            (Some((at, tool)), _) => AsFound::Held(Test::Torque { at, tool }),
            (None, _) if tug => AsFound::Held(Test::Tug),
            (None, _) => AsFound::LookedAt { tugged: true },
        }
    }

    fn left(&self, book: &Book, walk: &WalkState, id: PointId) -> Act {
        let point = book.point(id).unwrap();
        let advice = self.told(|outlook| walk.advice(point, outlook)).unwrap();
        let sets = advice.action == baywalk_domain::torque::Action::CheckThenSet;
        let left = match self.setting(book, walk, point) {
            Some((torque, tool)) if sets => AsLeft::Set { torque, tool },
            set => AsLeft::Remade { set },
        };
        Act::Left { point: id, left }
    }

    fn setting(
        &self,
        book: &Book,
        walk: &WalkState,
        point: &Point,
    ) -> Option<(Stated<TorqueUnit>, ToolId)> {
        let setting = self.told(|outlook| walk.setting_for(book, point, outlook));
        setting.map(|setting| (setting.at, setting.tool))
    }
}

fn volts(text: &str) -> Stated<VoltageUnit> {
    Stated::parse(text, VoltageUnit::Volts).unwrap()
}

fn away(book: &Book, id: SourceId) -> Act {
    let source = book.source(id).unwrap();
    let away = match (source.presence, source.isolation) {
        (Presence::NotSure, _) => Away::NotFound("every cupboard".to_owned()),
        (_, Isolation::Never) => Away::Stays("its own posts".to_owned()),
        _ => Away::Isolated("open, locked, tagged".to_owned()),
    };
    Act::Isolate { source: id, away }
}

fn measure(step: ReadingStep) -> Act {
    let measured = match step {
        ReadingStep::DcBus => Measured::Volts(volts("12.9")),
        ReadingStep::SupplyL1L2 => Measured::Volts(volts("240.4")),
        ReadingStep::SupplyNG | ReadingStep::OutletNG | ReadingStep::HotSkin => {
            Measured::Volts(volts("0.4"))
        }
        ReadingStep::Load1Leg1 | ReadingStep::Load2Leg2 => Measured::Volts(volts("117.5")),
        step if step.is_voltage() => Measured::Volts(volts("120.2")),
        _ => Measured::Works,
    };
    let place = "outlet by the door".to_owned();
    Act::Measure(Reading {
        step,
        place,
        measured,
    })
}
