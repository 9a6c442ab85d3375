//! A walker: acts go through `decide` and `fold`, as a logbook would do it.

use super::rig::{AC_BAY, BANK, DRIVER, RIG, SHORE, SOLAR, SWITCH, book, id, torque, volts};
use baywalk_domain::coded::Coded;
use baywalk_domain::due::Known;
use baywalk_domain::finding::Finding;
use baywalk_domain::ids::{ActId, BayId, DeviceId, PointId, RigId, SourceId, ToolId};
use baywalk_domain::isolation::{Meter, MeterCategory, checks_of};
use baywalk_domain::moment::{Boot, Moment};
use baywalk_domain::rig::{Book, Check, SupplyKind};
use baywalk_domain::torque::Practice;
use baywalk_domain::walk::{
    Act, Away, Call, Context, Entry, Next, Outlook, ReadyAnswer, ReadyItem, Refusal, Scope,
    WalkState, decide,
};
use chrono::{DateTime, Duration};
use std::collections::BTreeMap;

/// Walks through a book, keeping the entries of one walk.
pub(crate) struct Walker {
    pub(crate) book: Book,
    pub(crate) entries: Vec<Entry>,
    pub(crate) moved_running: BTreeMap<PointId, u8>,
    pub(crate) findings: Vec<Finding>,
    pub(crate) known: Known,
    pub(crate) seconds: u64,
    pub(crate) boot: &'static str,
    next: u128,
}

impl Walker {
    pub(crate) fn new(book: Book) -> Self {
        Self {
            book,
            entries: Vec::new(),
            moved_running: BTreeMap::new(),
            findings: Vec::new(),
            known: Known::default(),
            seconds: 0,
            boot: "first",
            next: 1000,
        }
    }

    pub(crate) fn now(&self) -> Moment {
        let start = DateTime::parse_from_rfc3339("2027-03-20T09:00:00-07:00").unwrap();
        Moment {
            wall: start + Duration::seconds(i64::try_from(self.seconds).unwrap()),
            boot: Boot::new(self.boot, self.seconds),
        }
    }

    pub(crate) fn state(&self) -> Option<WalkState> {
        WalkState::fold(&self.entries, &self.book).filter(|state| state.ending.is_none())
    }

    pub(crate) fn next(&self, walk: &WalkState) -> Next {
        let practice = Practice::default();
        let outlook = Outlook {
            moved_running: &self.moved_running,
            practice: &practice,
        };
        walk.next(&self.book, &outlook)
    }

    /// Says that the driver is set to a torque.
    pub(crate) fn set_tool(&mut self, at: &str) {
        let tool = ToolId::new(id(DRIVER));
        let at = torque(at);
        self.act(Act::SetTool { tool, at }).unwrap();
    }

    pub(crate) fn act(&mut self, act: Act) -> Result<Entry, Refusal> {
        self.seconds += 5;
        self.next += 1;
        let now = self.now();
        let walk = self.state();
        let practice = Practice::default();
        let context = Context {
            book: Some(&self.book),
            walk: walk.as_ref(),
            moved_running: &self.moved_running,
            findings: &self.findings,
            known: &self.known,
            newest: self.entries.last().map(|entry| &entry.at),
            practice: &practice,
        };
        let call = Call {
            id: ActId::new(id(self.next)),
            rig: RigId::new(id(RIG)),
            act,
        };
        let entry = decide(&context, &call, &now)?;
        if let Act::Book(change) = &entry.act {
            self.book.apply(change);
        }
        self.entries.push(entry.clone());
        Ok(entry)
    }

    /// Begins a walk, with the list before still to be gone through.
    pub(crate) fn begin(&mut self) {
        let person = "Ada".to_owned();
        let scope = Scope::Whole;
        self.act(Act::Start { person, scope }).unwrap();
    }

    pub(crate) fn start(&mut self) {
        self.begin();
        for item in ReadyItem::ALL {
            self.act(Act::Ready {
                item: *item,
                answer: ReadyAnswer::Done,
            })
            .unwrap();
        }
    }

    pub(crate) fn isolate(&mut self) {
        for source in [SHORE, SOLAR, BANK] {
            let away = Away::Isolated("tagged".to_owned());
            self.act(Act::Isolate {
                source: SourceId::new(id(source)),
                away,
            })
            .unwrap();
        }
    }

    pub(crate) fn known_live(&mut self, bay: u128, supply: SupplyKind) -> Result<Entry, Refusal> {
        let reading = if supply == SupplyKind::Ac {
            "121.3"
        } else {
            "12.8"
        };
        self.act(Act::KnownLive {
            bay: BayId::new(id(bay)),
            supply,
            place: "supply outlet".to_owned(),
            meter: Meter::contact("blue meter", MeterCategory::Three),
            volts: volts(reading),
        })
    }

    /// The checks of a device in one supply, in the order in which they are read.
    pub(crate) fn checks(&self, of: u128, supply: SupplyKind) -> Vec<Check> {
        let device = self.book.device(DeviceId::new(id(of))).unwrap();
        let mut checks = checks_of(&device.sets);
        checks.retain(|check| check.supply == supply);
        checks
    }

    /// Reads every pair of a device in one supply.
    pub(crate) fn read_all(&mut self, of: u128, supply: SupplyKind, shown: &str) {
        for check in self.checks(of, supply) {
            let device = DeviceId::new(id(of));
            let volts = volts(shown);
            self.act(Act::Read {
                device,
                check,
                volts,
            })
            .unwrap();
        }
    }

    pub(crate) fn prove(&mut self, bay: u128, of: u128) {
        for supply in SupplyKind::ALL {
            if self.checks(of, *supply).is_empty() {
                continue;
            }
            self.known_live(bay, *supply).unwrap();
            self.read_all(of, *supply, "0.0");
            self.known_live(bay, *supply).unwrap();
        }
    }

    /// Up to the open and proved AC bay.
    pub(crate) fn at_ac_bay() -> Self {
        let mut walker = Self::new(book());
        walker.start();
        walker.isolate();
        walker
            .act(Act::Open {
                bay: BayId::new(id(AC_BAY)),
            })
            .unwrap();
        walker.prove(AC_BAY, SWITCH);
        walker.set_tool("36 lbf.in");
        walker
    }
}
