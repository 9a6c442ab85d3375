//! Minutes, voltage, and a point through the years.

use baywalk_domain::moment::{Boot, Moment};
use baywalk_domain::rig::{
    Book, Code, Fastening, FasteningKind, Point, PointKind, Rig, RigKind, ServiceKind, Terminal,
    YearlyRule,
};
use baywalk_domain::supply::ReadingStep;
use baywalk_domain::units::{Stated, TorqueUnit};
use baywalk_domain::walk::{Angle, AsFound, AsLeft, FoundRecord, Movement, PointRecord, Test};
use baywalk_paper::chart::{BayMinutes, PointWalk, VoltWalk, minutes, point, volts};
use baywalk_shapes::Shape;
use baywalk_words::Words;
use chrono::NaiveDate;

fn words() -> Words {
    Words::for_locales(&["en"])
}

fn day(year: i32) -> NaiveDate {
    NaiveDate::from_ymd_opt(year, 3, 20).unwrap()
}

#[test]
fn minutes_are_those_of_the_newest_walk_and_the_usual_of_all() {
    let bay = |code: &str, walks: &[(i32, u32)]| BayMinutes {
        code: code.to_owned(),
        name: format!("bay {code}"),
        walks: walks
            .iter()
            .map(|(year, seconds)| (day(*year), *seconds))
            .collect(),
    };
    let bays = [
        bay("A", &[(2027, 300), (2028, 240)]),
        bay("B", &[(2027, 600)]),
    ];
    let chart = minutes(&bays, &words(), 328.0);
    assert!(chart.told[0].contains("20 March 2028") && chart.told[0].contains("for 4 minutes"));
    assert!(chart.told[0].contains("A, bay A"), "{:?}", chart.told);
    assert_eq!(chart.numbers.csv().lines().count(), 4);
    assert!(chart.numbers.csv().contains("B,bay B,2027-03-20,10\r\n"));
    let none = minutes(&[], &words(), 328.0);
    assert_eq!(none.told, ["No bay was opened in a walk yet."]);
}

#[test]
fn voltage_is_told_by_its_range_and_its_last() {
    let walk = |year, volts| VoltWalk {
        day: day(year),
        read: vec![(ReadingStep::Leg1, volts)],
        limits: Some((110.0, 127.0)),
    };
    let chart = volts(
        &[walk(2027, 120.9), walk(2028, 118.4), walk(2029, 119.0)],
        &words(),
        328.0,
    );
    assert!(chart.told[0].ends_with("118.4 to 120.9 V in 3 walks, 119.0 V in the last."));
    let one = volts(&[walk(2027, 120.9)], &words(), 328.0);
    assert_eq!(one.told.last().unwrap(), "One walk alone shows no change.");
    assert_eq!(
        volts(&[], &words(), 328.0).told,
        ["The voltage of the service was not measured yet."]
    );
    assert!(
        chart
            .numbers
            .csv()
            .contains("2028-03-20,leg_1,118.4,110,127\r\n")
    );
}

const ID: &str = "0190f0c4-0000-7000-8000-000000000001";

fn screw() -> (Point, Book) {
    let rig = Rig {
        id: ID.parse().unwrap(),
        name: "Alder".to_owned(),
        kind: RigKind::Trailer,
        service: ServiceKind::Amp30,
        rule: YearlyRule {
            months: 12,
            distance: None,
        },
        note: String::new(),
    };
    let fastening = Fastening::of(FasteningKind::PressureScrew);
    let point = Point {
        id: ID.parse().unwrap(),
        code: Code::parse("F8").unwrap(),
        device: ID.parse().unwrap(),
        name: "N in <b>&".to_owned(),
        place: String::new(),
        kind: PointKind::Terminal(Box::new(Terminal::of(fastening))),
        priority: None,
        note: String::new(),
        retired: false,
    };
    let mut book = Book::new(rig);
    book.points.push(point.clone());
    (point, book)
}

fn walk(year: i32, found: AsFound, left: Option<AsLeft>) -> PointWalk {
    let wall = format!("{year}-03-20T09:00:00-07:00").parse().unwrap();
    let at = Moment {
        wall,
        boot: Boot::new("one", 7),
    };
    PointWalk {
        day: day(year),
        far: format!("{} miles", 7_400 * (year - 2020)),
        record: PointRecord {
            found: Some(FoundRecord {
                found,
                advice: None,
                at,
                corrected: false,
            }),
            left,
            ..PointRecord::default()
        },
    }
}

#[test]
fn a_point_is_told_by_its_walks_and_its_newest_are_drawn() {
    let (screw, book) = screw();
    let held = || AsFound::Held(Test::Tug);
    let moved = AsFound::Moved(Movement::MarkOff {
        angle: Angle::Eighth,
    });
    let torque = Stated::parse("45", TorqueUnit::InchPounds).unwrap();
    let set = AsLeft::Set {
        torque,
        tool: ID.parse().unwrap(),
    };
    let mut walks: Vec<PointWalk> = (2020..2028).map(|year| walk(year, held(), None)).collect();
    walks.push(walk(2028, moved, Some(set)));
    let chart = point(&screw, &walks, &book, &words(), 328.0);
    assert!(
        chart.told[0].starts_with("In 9 walks: 8 × held, 1 × moved"),
        "{:?}",
        chart.told
    );
    assert!(chart.told[1].starts_with("6 earlier walks are not drawn"));
    let labels = chart
        .drawing
        .parts
        .iter()
        .filter_map(|part| match &part.shape {
            Shape::Label(label) => Some(label.text.as_str()),
            _ => None,
        });
    let labels: Vec<&str> = labels.collect();
    for text in [
        "2026",
        "2027",
        "2028",
        "Held",
        "1/8 turn",
        "set 45",
        "59200 miles",
    ] {
        assert!(labels.contains(&text), "{text} in {labels:?}");
    }
    assert!(!labels.contains(&"2025"));
    let file = chart.numbers.csv();
    assert!(
        file.contains("F8,2028-03-20,moved,eighth,45,set,45,lbf.in,59200 miles\r\n"),
        "{file}"
    );
    let svg = chart.svg("en");
    assert!(svg.contains("N in &#60;b&#62;&#38;") && !svg.contains("<b>"));
    let none = point(&screw, &[], &book, &words(), 328.0);
    assert_eq!(none.told, ["Nothing was noted here yet."]);
}
