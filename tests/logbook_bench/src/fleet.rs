//! Rigs that are walked once a year, by a walker who obeys what is next.

use baywalk_crash::walker::Walker;
use baywalk_crash::work::open;
use baywalk_domain::ids::{ActId, PointId, RigId};
use baywalk_domain::rig::{Book, BookChange, Code, Point};
use baywalk_domain::units::Stated;
use baywalk_domain::walk::{Act, Scope};
use baywalk_logbook::{Logbook, rigfile};
use std::path::Path;
use uuid::Uuid;

/// Days from one rig's walk to the next one's; rigs are walked one behind the other.
const APART: i64 = 10;

/// Days of a year, as walks are counted here.
const YEAR: i64 = 365;

/// What the fleet is made of.
#[derive(Debug, Clone, Copy)]
pub struct Law {
    /// The code of the layout that each rig is noted by.
    pub layout: &'static str,
    /// How many rigs.
    pub rigs: u32,
    /// How many points each has.
    pub points: usize,
}

/// The largest logbook that is measured: 20 rigs of 300 points.
pub const LARGE: Law = Law {
    layout: "sample-motorhome",
    rigs: 20,
    points: 300,
};

/// Rigs in a logbook, each with its walker.
#[derive(Debug)]
pub struct Fleet {
    /// The logbook.
    pub logbook: Logbook,
    walkers: Vec<(RigId, Walker)>,
    /// How many walks of whole rigs were made.
    walks: usize,
}

impl Fleet {
    /// Notes the rigs in a new logbook in a folder.
    #[must_use]
    pub fn new(folder: &Path, law: Law) -> Self {
        let mut logbook = open(folder).unwrap();
        let walkers = (0..law.rigs).map(|number| {
            let book = book(law, number);
            let rig = book.rig.id;
            let mut walker = Walker::new(rig, u64::from(number) + 1, "2017-03-20T09:00:00-07:00");
            walker.keeps = false;
            walker.wait(i64::from(number) * APART);
            walker.act(&mut logbook, Act::Book(BookChange::Whole(Box::new(book))));
            walker.wait(YEAR);
            (rig, walker)
        });
        let walkers = walkers.collect();
        Self {
            logbook,
            walkers,
            walks: 0,
        }
    }

    /// Walks the next rig in turn, whole; and the second look at what was set, two days later.
    pub fn walk(&mut self) {
        let (year, place) = (self.year(), self.walks % self.walkers.len());
        let (rig, walker) = &mut self.walkers[place];
        let miles = Stated::parse_pair(&format!("{} mi", 41_230 + year * 7_400)).unwrap();
        walker.act(&mut self.logbook, Act::Odometer(miles));
        walker.walk(&mut self.logbook, Scope::Whole);
        let waiting = self.logbook.unsettled(*rig).unwrap();
        walker.wait(2);
        if !waiting.is_empty() {
            walker.walk(&mut self.logbook, Scope::SecondLook(waiting));
        }
        walker.wait(YEAR - 2);
        self.walks += 1;
    }

    /// Walks all rigs, so many years.
    pub fn years(&mut self, years: usize) {
        for _ in 0..years * self.walkers.len() {
            self.walk();
        }
    }

    /// How many years were walked to their end.
    #[must_use]
    pub const fn year(&self) -> usize {
        self.walks / self.walkers.len()
    }

    /// The first rig.
    #[must_use]
    pub fn rig(&self) -> RigId {
        self.walkers[0].0
    }

    /// The walker whose turn it is, and the logbook.
    pub fn in_turn(&mut self) -> (&mut Walker, &mut Logbook) {
        let place = self.walks % self.walkers.len();
        (&mut self.walkers[place].1, &mut self.logbook)
    }
}

/// A rig of a layout with so many points: terminals are noted again under codes of their own, or
/// left out from the end.
fn book(law: Law, number: u32) -> Book {
    let layout = rigfile::layouts()
        .iter()
        .find(|each| each.code == law.layout);
    let named = |name: &str| Uuid::new_v5(&Uuid::NAMESPACE_OID, name.as_bytes());
    let act = ActId::new(named(&format!("rig {number}")));
    let mut book = layout.unwrap().book(act).map_err(|_| "unsound").unwrap();
    book.rig.name = format!("Number {number}");
    let terminals = book
        .points
        .iter()
        .filter(|point| point.terminal().is_some());
    let terminals: Vec<Point> = terminals.cloned().collect();
    for place in book.points.len()..law.points {
        let mut point = terminals[place % terminals.len()].clone();
        point.id = PointId::new(named(&format!("rig {number}, point {place}")));
        let bay = point.code.as_str().trim_end_matches(char::is_numeric);
        point.code = Code::parse(&format!("{bay}{}", 100 + place)).unwrap();
        book.points.push(point);
    }
    book.points.truncate(law.points);
    book
}
