//! `usage.csv`: one row for each note between walks: odometer, hours, trips, events, rules, put-offs.

use super::{Cell, RigFacts, Table};
use baywalk_domain::coded::Coded;
use baywalk_domain::due::{Asked, Limit, Reach, RuleChange, Usage};
use baywalk_domain::rig::Book;
use baywalk_domain::walk::Act;
use chrono::NaiveDate;

const COLUMNS: [&str; 11] = [
    "rig", "day", "what", "value", "unit", "event", "about", "code", "until", "limits", "note",
];

pub(super) fn table(rigs: &[RigFacts]) -> Table {
    let rows = rigs.iter().flat_map(|rig| {
        let acts = rig.timing.iter();
        acts.filter_map(|(day, _, act)| row(&rig.book, *day, act))
    });
    Table::new("usage", &COLUMNS, rows.collect())
}

/// What a note says beside its rig and day.
#[derive(Default)]
struct Said {
    what: &'static str,
    value: Option<[Cell; 2]>,
    event: Option<Cell>,
    about: Option<[Cell; 2]>,
    until: Option<NaiveDate>,
    limits: Option<String>,
    note: String,
}

fn row(book: &Book, day: NaiveDate, act: &Act) -> Option<[Cell; 11]> {
    let said = said(book, act)?;
    let [value, unit] = said.value.unwrap_or([Cell::Empty, Cell::Empty]);
    let [about, code] = said.about.unwrap_or([Cell::Empty, Cell::Empty]);
    Some([
        Cell::text(&book.rig.name),
        day.into(),
        Cell::plain(said.what),
        value,
        unit,
        said.event.into(),
        about,
        code,
        said.until.into(),
        said.limits.map(Cell::plain).into(),
        Cell::text(&said.note),
    ])
}

fn said(book: &Book, act: &Act) -> Option<Said> {
    let of = |what| Said {
        what,
        ..Said::default()
    };
    Some(match act {
        Act::Odometer(read) => Said {
            value: Some(Cell::stated(Some(read))),
            ..of("odometer")
        },
        Act::Usage(Usage::Hours(read)) => Said {
            value: Some(Cell::stated(Some(read))),
            ..of("hours")
        },
        Act::Usage(Usage::Trip(far)) => Said {
            value: Some(Cell::stated(Some(far))),
            ..of("trip")
        },
        Act::Usage(Usage::Restart { reading, why }) => Said {
            value: Some(Cell::stated(Some(reading))),
            event: Some(Cell::code(*why)),
            ..of("restart")
        },
        Act::Usage(Usage::Event {
            event,
            reach,
            distance,
            note,
        }) => Said {
            value: Some(Cell::stated(distance.as_ref())),
            event: Some(Cell::code(*event)),
            about: Some(about(book, *reach)),
            note: note.clone(),
            ..of("event")
        },
        Act::Rule(RuleChange::Set(rule)) => Said {
            about: Some(about(book, rule.reach)),
            limits: Some(rule.limits.iter().map(limit).collect::<Vec<_>>().join(" ")),
            note: rule.word.clone(),
            ..of("rule")
        },
        Act::Rule(RuleChange::Drop(id)) => Said {
            about: Some([Cell::plain("rule"), Cell::plain(id)]),
            ..of("rule_dropped")
        },
        Act::PutOff { asked, until, why } => Said {
            about: Some(match asked {
                Asked::Walk => [Cell::plain("walk"), Cell::Empty],
                Asked::SecondLook => [Cell::plain("second_look"), Cell::Empty],
                Asked::Rule(id) => [Cell::plain("rule"), Cell::plain(id)],
                Asked::Event(id) => [Cell::plain("event"), Cell::plain(id)],
            }),
            until: Some(*until),
            note: why.clone(),
            ..of("put_off")
        },
        _ => return None,
    })
}

fn about(book: &Book, reach: Reach) -> [Cell; 2] {
    let code = |kind: &str, code: Option<String>| [Cell::plain(kind), code.map(Cell::plain).into()];
    match reach {
        Reach::Rig => code("rig", None),
        Reach::Bay(id) => code("bay", book.bay(id).map(|bay| bay.code.to_string())),
        Reach::Point(id) => code("point", book.point(id).map(|point| point.code.to_string())),
        Reach::Kind(kind) => [Cell::plain("kind"), Cell::code(kind)],
    }
}

/// A limit as one word: `months:12`, `distance:3000mi`, `after:rough_road:7d`.
fn limit(limit: &Limit) -> String {
    match limit {
        Limit::Months(months) => format!("months:{months}"),
        Limit::Distance(far) => format!("distance:{}{}", far.text(), far.unit().code()),
        Limit::Hours(long) => format!("hours:{}{}", long.text(), long.unit().code()),
        Limit::Season { anchor, on } => {
            format!("season:{}:{:02}-{:02}", anchor.code(), on.month(), on.day())
        }
        Limit::After {
            event,
            days,
            distance,
        } => {
            let far = distance.as_ref();
            let far = far.map(|far| format!(":{}{}", far.text(), far.unit().code()));
            format!("after:{}:{days}d{}", event.code(), far.unwrap_or_default())
        }
        Limit::Chance(percent) => format!("chance:{percent}"),
    }
}
