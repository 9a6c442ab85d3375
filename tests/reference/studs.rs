//! Stud tables, each kept apart by its source: NETA 100.12 (numbers from memory), NEMA CC 1
//! (second hand), IEC 60947-1 table 4 (partly from memory), and single makers' (second hand).

use baywalk_domain::published::{Known, Standing};
use baywalk_domain::rig::{BoltGrade, Fastening, FasteningKind, Landing, Nut, Terminal, Thread};
use baywalk_domain::torque::{Basis, Past, Practice, TableId, advise};

/// NETA 100.12.1, lbf·ft, from memory: SAE 1 and 2, SAE 5, SAE 8.
const NETA_STEEL: &[(&str, [&str; 3])] = &[
    ("1/4-20", ["4", "6", "8"]),
    ("5/16-18", ["7", "11", "18"]),
    ("3/8-16", ["12", "20", "30"]),
    ("7/16-14", ["19", "32", "48"]),
    ("1/2-13", ["30", "48", "74"]),
    ("5/8-11", ["59", "96", "145"]),
    ("3/4-10", ["96", "160", "235"]),
];

fn stud(thread: &str, grade: BoltGrade) -> Terminal {
    let mut terminal = Terminal::of(Fastening::of(FasteningKind::Stud));
    terminal.fastening.thread = Some(Thread::parse(thread).unwrap());
    terminal.fastening.grade = Some(grade);
    terminal.fastening.landing = Landing::Ring;
    terminal.fastening.nut = Nut::Plain;
    terminal.fastening.metal_to_metal = true;
    terminal
}

#[test]
fn neta_steel_from_memory() {
    let grades = [BoltGrade::Sae2, BoltGrade::Sae5, BoltGrade::Sae8];
    for (thread, torques) in NETA_STEEL {
        for (grade, torque) in grades.into_iter().zip(torques) {
            let advice = advise(&stud(thread, grade), Past::default(), &Practice::default());
            let target = advice.target.unwrap();
            assert_eq!(target.torque.pair(), format!("{torque} lbf.ft"), "{thread}");
            assert!(matches!(
                target.basis,
                Basis::Table {
                    table: TableId::NetaSteel,
                    ..
                }
            ));
        }
    }
}

/// The implied stress of the NETA steel column at K = 0.2 is steady, about 25, 41 and 62 ksi for
/// SAE 2, 5 and 8 over 3/8 to 1/2 in (computed): a check of numbers that are from memory.
#[test]
fn neta_steel_is_steady_by_formula_computed() {
    let table = TableId::NetaSteel.table().unwrap();
    for (column, ksi) in [
        ("sae2", 25.0),
        ("sae5", 41.0),
        ("sae7", 57.0),
        ("sae8", 62.0),
    ] {
        for (thread, inches, area) in [
            ("3/8-16", 0.375, 0.07749),
            ("7/16-14", 0.4375, 0.10631),
            ("1/2-13", 0.5, 0.14190),
        ] {
            let row = table.rows().find(|row| row.name() == thread).unwrap();
            let stress = row.number(column).unwrap() * 12.0 / (0.2 * inches * area) / 1000.0;
            assert!(
                (stress / ksi - 1.0).abs() < 0.05,
                "{column} {thread}: {stress}"
            );
        }
    }
}

#[test]
fn one_stud_in_five_tables_never_blended() {
    // 1/4-20 in lbf·in: NETA SAE 2 48, telecom 65 head-tightened, NETA SAE 5 72, NEMA CC 1 80,
    // switch maker 84.
    let cell = |table: TableId, column: &str| {
        let row = table
            .table()
            .unwrap()
            .rows()
            .find(|row| row.name() == "1/4-20")
            .unwrap();
        (row.torque(column).unwrap().quantity().newton_metres() / 0.112_984_829_027_617).round()
    };
    let found = [
        cell(TableId::NetaSteel, "sae2"),
        cell(TableId::TelecomMaker, "head"),
        cell(TableId::NetaSteel, "sae5"),
        cell(TableId::NemaCc1, "bronze_steel_stainless"),
        cell(TableId::SwitchMaker, "sae5"),
    ];
    assert_eq!(
        found.map(|value| value.to_string()),
        ["48", "65", "72", "80", "84"]
    );
}

/// A table, a column, then thread and figure.
type Cells = (
    TableId,
    &'static str,
    &'static [(&'static str, &'static str)],
);

const CELLS: &[Cells] = &[
    (
        TableId::NetaOther,
        "bronze_dry",
        &[
            ("5/16-18", "15"),
            ("3/8-16", "20"),
            ("1/2-13", "40"),
            ("5/8-11", "55"),
            ("3/4-10", "70"),
        ],
    ),
    (
        TableId::NetaOther,
        "stainless",
        &[
            ("5/16-18", "15"),
            ("3/8-16", "20"),
            ("1/2-13", "40"),
            ("5/8-11", "55"),
            ("3/4-10", "70"),
        ],
    ),
    (
        TableId::NetaOther,
        "bronze_lubricated",
        &[
            ("5/16-18", "10"),
            ("3/8-16", "15"),
            ("1/2-13", "25"),
            ("5/8-11", "40"),
            ("3/4-10", "60"),
        ],
    ),
    (
        TableId::NetaOther,
        "aluminium_lubricated",
        &[
            ("5/16-18", "10"),
            ("3/8-16", "14"),
            ("1/2-13", "25"),
            ("5/8-11", "40"),
            ("3/4-10", "60"),
        ],
    ),
    (
        TableId::NemaCc1,
        "bronze_steel_stainless",
        &[
            ("1/4-20", "80"),
            ("5/16-18", "180"),
            ("3/8-16", "240"),
            ("1/2-13", "480"),
            ("5/8-11", "660"),
            ("3/4-10", "1050"),
        ],
    ),
    (
        TableId::NemaCc1,
        "aluminium_lubricated",
        &[
            ("3/8-16", "168"),
            ("1/2-13", "300"),
            ("5/8-11", "480"),
            ("3/4-10", "650"),
        ],
    ),
    (
        TableId::IecMetric,
        "column_3",
        &[
            ("M2.5", "0.4"),
            ("M3", "0.5"),
            ("M3.5", "0.8"),
            ("M4", "1.2"),
            ("M4.5", "1.8"),
            ("M5", "2.0"),
            ("M6", "3.0"),
            ("M8", "6.0"),
            ("M10", "10.0"),
            ("M12", "14"),
            ("M14", "19"),
            ("M16", "25"),
        ],
    ),
    (
        TableId::IecMetric,
        "column_2",
        &[("M6", "2.5"), ("M8", "3.5"), ("M10", "4.0")],
    ),
];

#[test]
fn cells_of_the_other_tables_from_memory_and_second_hand() {
    for (table, column, cells) in CELLS {
        for (thread, figure) in *cells {
            let row = table
                .table()
                .unwrap()
                .rows()
                .find(|row| row.name() == *thread)
                .unwrap();
            assert_eq!(
                row.cell(column),
                Some(*figure),
                "{table:?} {column} {thread}"
            );
        }
    }
}

#[test]
fn each_table_says_how_it_is_known_and_what_it_is_good_for() {
    let head = |table: TableId| *table.table().unwrap().head();
    assert_eq!(head(TableId::AnnexI1).known, Known::SecondHand);
    assert_eq!(head(TableId::NetaSteel).known, Known::Memory);
    for compared in [
        TableId::IecMetric,
        TableId::SwitchMaker,
        TableId::TelecomMaker,
        TableId::SupplyMaker,
        TableId::BatteryMaker,
    ] {
        assert_eq!(head(compared).standing, Standing::Comparison);
    }
}

/// One battery maker's M8 is 5.6 N·m (second hand); a chart for an M8 bolt of class 8.8 gives about
/// 25 N·m, four and a half times as much. No chart is ever used on a post.
#[test]
fn a_bolt_chart_would_ruin_a_battery_post_second_hand() {
    let mut post = stud("M8x1.25", BoltGrade::Iso88);
    let chart = advise(&post, Past::default(), &Practice::default())
        .target
        .unwrap();
    let row = TableId::BatteryMaker
        .table()
        .unwrap()
        .rows()
        .find(|row| row.name() == "M8x1.25");
    let maker = row.unwrap().torque("torque").unwrap();
    let ratio = chart.torque.quantity().newton_metres() / maker.quantity().newton_metres();
    assert!((4.3..4.7).contains(&ratio), "{ratio}");
    post.fastening.kind = FasteningKind::BatteryPost;
    let advice = advise(&post, Past::default(), &Practice::default());
    assert_eq!(advice.target, None);
}
