//! Invented rigs of any number of bays.

use baywalk_domain::ids::{BayId, RigId};
use baywalk_domain::rig::{Bay, Book, Code, Rig, RigKind, ServiceKind, Side, Station, YearlyRule};
use baywalk_domain::walk::{BayStage, Grade};
use baywalk_shapes::line::Power;
use baywalk_shapes::strip::Standing;
use std::collections::BTreeMap;
use uuid::Uuid;

/// A bay in short: code, thousandths from the nose, side.
pub(crate) type Short<'a> = (&'a str, u16, Side);

pub(crate) fn book(kind: RigKind, bays: &[Short<'_>]) -> Book {
    let mut book = Book::new(Rig {
        id: RigId::new(Uuid::from_u128(1)),
        name: "Alder".to_owned(),
        kind,
        service: ServiceKind::Amp50,
        rule: YearlyRule {
            months: 12,
            distance: None,
        },
        note: String::new(),
    });
    book.bays = bays.iter().enumerate().map(bay).collect();
    book
}

pub(crate) fn id(place: usize) -> BayId {
    BayId::new(Uuid::from_u128(100 + u128::try_from(place).unwrap()))
}

fn bay((place, (code, station, side)): (usize, &Short<'_>)) -> Bay {
    Bay {
        id: id(place),
        code: Code::parse(code).unwrap(),
        name: "a bay".to_owned(),
        place: String::new(),
        station: Station::new(*station).unwrap(),
        side: *side,
        open_minutes: 1,
        close_minutes: 1,
        fed_by: Vec::new(),
        keep_out: String::new(),
        retired: false,
    }
}

/// A standing in short: points, then held, moved, loose, apart, looked at.
pub(crate) fn standing(total: usize, counts: [usize; 5], stage: BayStage) -> Standing {
    let grades = [
        Grade::Held,
        Grade::Moved,
        Grade::Loose,
        Grade::Apart,
        Grade::LookedAt,
    ];
    Standing {
        total,
        grades: grades.into_iter().zip(counts).collect(),
        stage,
        ..Standing::default()
    }
}

/// A motorhome in the middle of a walk: twelve bays, one of them open and next.
pub(crate) fn motorhome() -> (Book, BTreeMap<BayId, Standing>) {
    use Side::{Inside, Left, Right, Roof};
    let bays = [
        ("A", 70, Right),
        ("B", 180, Left),
        ("C", 300, Right),
        ("D", 370, Roof),
        ("E", 450, Left),
        ("F", 540, Left),
        ("G", 600, Left),
        ("H", 660, Inside),
        ("J", 720, Inside),
        ("K", 780, Right),
        ("L", 860, Right),
        ("M", 950, Left),
    ];
    let closed = BayStage::Closed;
    let told = [
        standing(6, [6, 0, 0, 0, 0], closed),
        standing(7, [5, 0, 0, 0, 2], closed),
        standing(9, [7, 2, 0, 0, 0], closed),
        standing(4, [0, 0, 0, 0, 4], closed),
        standing(9, [6, 1, 1, 1, 0], closed),
        standing(14, [4, 0, 0, 0, 0], BayStage::Open),
        standing(10, [0, 0, 1, 0, 0], BayStage::Shut),
        standing(22, [20, 1, 1, 0, 0], closed),
        standing(8, [8, 0, 0, 0, 0], closed),
        standing(5, [0, 0, 0, 0, 0], BayStage::Shut),
        standing(3, [1, 0, 0, 1, 0], closed),
        standing(6, [0, 0, 0, 0, 0], BayStage::Shut),
    ];
    let mut told: BTreeMap<BayId, Standing> = told
        .into_iter()
        .enumerate()
        .map(|(place, told)| (id(place), told))
        .collect();
    told.get_mut(&id(5)).unwrap().next = true;
    for (place, standing) in told.values_mut().enumerate() {
        standing.power = Some(if place == 5 { Power::Dead } else { Power::Live });
    }
    (book(RigKind::Motorhome, &bays), told)
}

/// A trailer of six bays, two of them at one station, each with a word.
pub(crate) fn trailer(words: [&str; 6]) -> (Book, BTreeMap<BayId, Standing>) {
    use Side::{Front, Inside, Left, Roof};
    let bays = [
        ("A", 120, Front),
        ("B", 260, Front),
        ("C", 450, Roof),
        ("D", 450, Inside),
        ("E", 680, Inside),
        ("F", 860, Left),
    ];
    let told = words.into_iter().enumerate().map(|(place, word)| {
        let mut told = standing(8, [5, 1, 0, 0, 1], BayStage::Closed);
        word.clone_into(&mut told.word);
        (id(place), told)
    });
    (book(RigKind::Trailer, &bays), told.collect())
}

/// A rig with so many bays, spread evenly, sides in turn.
pub(crate) fn many(kind: RigKind, count: u16) -> Book {
    use Side::{Left, Right};
    let codes: Vec<String> = (1..=count).map(|number| format!("B{number}")).collect();
    let bays: Vec<Short<'_>> = codes
        .iter()
        .zip(0..count)
        .map(|(code, number)| {
            let side = if number % 3 == 0 { Right } else { Left };
            (code.as_str(), (number * 2 + 1) * 500 / count, side)
        })
        .collect();
    book(kind, &bays)
}
