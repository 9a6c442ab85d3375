//! A short but whole walk as a script, and a clock that tells what it is told.

use crate::rehearsal::rig::RIG;
use crate::rehearsal::{
    AC_BAY, BANK, BATTERY, CLAMP, DC_BAY, DRIVER, LINE, NEUTRAL, POST, SHORE, SMELL, SOLAR, SWITCH,
    book, id, torque, volts,
};
use baywalk_domain::coded::Coded;
use baywalk_domain::finding::About;
use baywalk_domain::ids::{ActId, BayId, DeviceId, PointId, RigId, SourceId, ToolId};
use baywalk_domain::isolation::{Meter, MeterCategory, checks_of};
use baywalk_domain::moment::{Boot, Moment};
use baywalk_domain::rig::{BookChange, SupplyKind};
use baywalk_domain::supply::{Measured, Reading, ReadingStep, steps_of};
use baywalk_domain::units::{DistanceUnit, Stated, TorqueUnit};
use baywalk_domain::walk::{
    Act, Angle, AsFound, AsLeft, Away, Call, Counted, Damage, Ending, Movement, ReadyAnswer,
    ReadyItem, Scope, Seen, Test,
};
use baywalk_logbook::{Clock, Logbook};
use chrono::{DateTime, Duration};
use std::path::Path;
use std::sync::atomic::{AtomicU64, Ordering};
use uuid::Uuid;

pub(crate) fn rig() -> RigId {
    RigId::new(id(RIG))
}
pub(crate) fn point(n: u128) -> PointId {
    PointId::new(id(n))
}
pub(crate) fn bay(n: u128) -> BayId {
    BayId::new(id(n))
}
fn driver() -> ToolId {
    ToolId::new(id(DRIVER))
}

/// Where live acts begin, behind those of the scripts.
const AFTER: u64 = 150;

/// A clock for live acts: five seconds from one look at it to the next.
#[derive(Debug, Default)]
pub(crate) struct TestClock {
    pub(crate) looks: AtomicU64,
    pub(crate) ids: AtomicU64,
    /// Seconds by which the wall clock stands off.
    pub(crate) off: i64,
}

impl Clock for TestClock {
    fn now(&self) -> Moment {
        let mut now = moment(AFTER + self.looks.fetch_add(1, Ordering::Relaxed));
        now.wall += Duration::seconds(self.off);
        now
    }
    fn new_id(&self) -> Uuid {
        id(900_000 + u128::from(self.ids.fetch_add(1, Ordering::Relaxed)))
    }
}

pub(crate) fn moment(n: u64) -> Moment {
    let start = DateTime::parse_from_rfc3339("2027-03-20T09:00:00-07:00").unwrap();
    Moment {
        wall: start + Duration::seconds(i64::try_from(n * 5).unwrap()),
        boot: Boot::new("first", n * 5),
    }
}

pub(crate) fn open(folder: &Path) -> Logbook {
    Logbook::open(folder, Box::new(TestClock::default())).unwrap()
}

/// Acts with names and moments, one after another.
#[derive(Debug, Clone, Default)]
pub(crate) struct Script {
    pub(crate) setting: Option<Stated<TorqueUnit>>,
    pub(crate) calls: Vec<(Call, Moment)>,
    pub(crate) from: u64,
}

impl Script {
    /// Adds an act, and before it that the driver is set as the act uses it.
    pub(crate) fn add(&mut self, act: Act) -> ActId {
        let used = match &act {
            Act::Found { found, .. } | Act::Correct { found, .. } => match found {
                AsFound::Held(Test::Torque { at, .. }) => Some(at.clone()),
                AsFound::Moved(Movement::Turned { below, .. }) => Some(below.clone()),
                _ => None,
            },
            Act::Left {
                left: AsLeft::Set { torque, .. },
                ..
            } => Some(torque.clone()),
            Act::SetTool { at, .. } => {
                self.setting = Some(at.clone());
                None
            }
            Act::Resume => {
                self.setting = None;
                None
            }
            _ => None,
        };
        if let Some(at) = used.filter(|at| self.setting.as_ref() != Some(at)) {
            self.setting = Some(at.clone());
            let tool = driver();
            self.push(Act::SetTool { tool, at });
        }
        self.push(act)
    }

    fn push(&mut self, act: Act) -> ActId {
        let n = self.from + u64::try_from(self.calls.len()).unwrap();
        let id = ActId::new(id(1000 + u128::from(n)));
        let rig = rig();
        self.calls.push((Call { id, rig, act }, moment(n)));
        id
    }

    pub(crate) fn play(&self, logbook: &mut Logbook) {
        for (call, at) in &self.calls {
            logbook.call(call, at).unwrap();
        }
    }

    pub(crate) fn start(&mut self, scope: Scope) {
        let person = "Ada".to_owned();
        self.add(Act::Start { person, scope });
        for item in ReadyItem::ALL {
            let answer = if *item == ReadyItem::Company {
                ReadyAnswer::Without("alone today".to_owned())
            } else {
                ReadyAnswer::Done
            };
            self.add(Act::Ready {
                item: *item,
                answer,
            });
        }
        for source in [SHORE, SOLAR, BANK] {
            self.add(Act::Isolate {
                source: SourceId::new(id(source)),
                away: Away::Isolated("tagged".to_owned()),
            });
        }
    }

    pub(crate) fn open_and_prove(&mut self, of: u128, device: u128) {
        self.add(Act::Open { bay: bay(of) });
        let device = book().device(DeviceId::new(id(device))).unwrap().clone();
        for supply in SupplyKind::ALL {
            let checks: Vec<_> = checks_of(&device.sets)
                .into_iter()
                .filter(|check| check.supply == *supply)
                .collect();
            if checks.is_empty() {
                continue;
            }
            self.known_live(of, *supply);
            for check in checks {
                self.add(Act::Read {
                    device: device.id,
                    check,
                    volts: volts("0.0"),
                });
            }
            self.known_live(of, *supply);
        }
    }

    fn known_live(&mut self, of: u128, supply: SupplyKind) {
        let reading = if supply == SupplyKind::Ac {
            "121,3"
        } else {
            "12.8"
        };
        self.add(Act::KnownLive {
            bay: bay(of),
            supply,
            place: "supply outlet".to_owned(),
            meter: Meter::contact("blue meter", MeterCategory::Three),
            volts: volts(reading),
        });
    }

    pub(crate) fn close(&mut self, of: u128) {
        self.add(Act::Close {
            bay: bay(of),
            counted: Counted::ALL,
        });
    }

    pub(crate) fn power_up_and_end(&mut self) {
        self.add(Act::PowerUp);
        for source in [BANK, SOLAR] {
            self.add(Act::Restore {
                source: SourceId::new(id(source)),
            });
        }
        let (before, after): (Vec<_>, Vec<_>) = steps_of(&book())
            .into_iter()
            .partition(|step| step.is_before_shore());
        before.into_iter().for_each(|step| self.measure(step));
        self.add(Act::Restore {
            source: SourceId::new(id(SHORE)),
        });
        after.into_iter().for_each(|step| self.measure(step));
        self.add(Act::End(Ending::Whole));
    }

    fn measure(&mut self, step: ReadingStep) {
        let measured = if step.is_voltage() {
            Measured::Volts(volts(match step {
                ReadingStep::SupplyL1L2 => "240",
                ReadingStep::SupplyNG | ReadingStep::OutletNG | ReadingStep::HotSkin => "0.4",
                ReadingStep::DcBus => "11.2",
                ReadingStep::Load1Leg1 | ReadingStep::Load2Leg2 => "117.5",
                _ => "120",
            }))
        } else {
            Measured::Works
        };
        self.add(Act::Measure(Reading {
            step,
            place: "outlet by the door".to_owned(),
            measured,
        }));
    }
}

pub(crate) fn tool_at(setting: &str) -> Act {
    Act::SetTool {
        tool: driver(),
        at: torque(setting),
    }
}
pub(crate) fn found(n: u128, found: AsFound) -> Act {
    Act::Found {
        point: point(n),
        found,
    }
}
pub(crate) fn held() -> AsFound {
    AsFound::Held(Test::Torque {
        at: torque("36 lbf.in"),
        tool: driver(),
    })
}
pub(crate) fn moved() -> AsFound {
    AsFound::Moved(Movement::Turned {
        angle: Angle::Quarter,
        below: torque("36 lbf.in"),
        tool: driver(),
    })
}
pub(crate) fn set(n: u128) -> Act {
    Act::Left {
        point: point(n),
        left: AsLeft::Set {
            torque: torque("45 lbf.in"),
            tool: driver(),
        },
    }
}

/// A rig is noted.
pub(crate) fn rig_noted() -> Script {
    let mut script = Script::default();
    script.add(Act::Book(BookChange::Whole(Box::new(book()))));
    let miles = |text| Stated::parse(text, DistanceUnit::Miles).unwrap();
    script.add(Act::Odometer(miles("41250")));
    script
}

/// Up to the open and proved AC bay.
pub(crate) fn at_ac_bay() -> Script {
    let mut script = rig_noted();
    script.start(Scope::Whole);
    script.open_and_prove(AC_BAY, SWITCH);
    script.add(tool_at("36 lbf.in"));
    script
}

/// A whole walk: moved and set, a note corrected, one struck, damage, a look, a photo, a pause.
pub(crate) fn whole_walk() -> Script {
    let mut script = at_ac_bay();
    script.add(found(LINE, moved()));
    script.add(set(LINE));
    script.add(found(NEUTRAL, held()));
    script.add(Act::Correct {
        point: point(NEUTRAL),
        found: AsFound::Loose,
        why: "wrong screw".to_owned(),
    });
    script.add(set(NEUTRAL));
    let wrong = script.add(found(CLAMP, AsFound::Held(Test::Tug)));
    script.add(Act::Strike { act: wrong });
    script.add(found(CLAMP, AsFound::LookedAt { tugged: false }));
    script.add(Act::Look {
        point: point(SMELL),
        seen: Seen::Trouble("brown at the edge".to_owned()),
    });
    script.add(Act::Damage {
        point: point(CLAMP),
        damage: Damage::Corrosion,
        note: "green".to_owned(),
    });
    script.add(Act::Photo {
        about: About::Point(point(CLAMP)),
        digest: "ab".repeat(32),
        caption: String::new(),
    });
    script.add(Act::Pause);
    script.add(Act::Resume);
    script.close(AC_BAY);
    script.open_and_prove(DC_BAY, BATTERY);
    script.add(found(POST, AsFound::LookedAt { tugged: true }));
    script.close(DC_BAY);
    script.power_up_and_end();
    script
}
