//! NEC Annex I tables I.1 to I.3, which are UL 486A-B column B (second hand, several copies agree),
//! row by row through the advice itself.

use baywalk_domain::rig::{Drive, DriveKind, Fastening, FasteningKind, Terminal, Thread, WireSize};
use baywalk_domain::torque::{Missing, Past, Practice, advise};
use baywalk_domain::units::StatedLength;

/// Conductor sizes; slot up to 0.047 in by 1/4 in, larger slot, split bolt, other hexagon.
type Row = (&'static [&'static str], Option<u16>, u16, u16, u16);

const TABLE_I_1: &[Row] = &[
    (
        &["30 AWG", "18 AWG", "14 AWG", "12 AWG", "10 AWG"],
        Some(20),
        35,
        80,
        75,
    ),
    (&["8 AWG"], Some(25), 40, 80, 75),
    (&["6 AWG", "4 AWG"], Some(35), 45, 165, 110),
    (&["3 AWG"], Some(35), 50, 275, 150),
    (&["2 AWG"], Some(40), 50, 275, 150),
    (&["1 AWG"], None, 50, 275, 150),
    (&["1/0 AWG", "2/0 AWG"], None, 50, 385, 180),
    (&["3/0 AWG", "4/0 AWG"], None, 50, 500, 250),
    (&["250 kcmil", "300 kcmil", "350 kcmil"], None, 50, 650, 325),
    (&["400 kcmil"], None, 50, 825, 325),
    (&["500 kcmil"], None, 50, 825, 375),
];

/// Slot length in inches; slot narrower than 0.047 in, and from 0.047 in.
const TABLE_I_2: &[(&str, Option<u16>, u16)] = &[
    ("4/32 in", Some(7), 9),
    ("5/32 in", Some(7), 12),
    ("3/16 in", Some(7), 12),
    ("7/32 in", Some(7), 12),
    ("1/4 in", Some(9), 12),
    ("9/32 in", None, 15),
    ("10/32 in", None, 20),
];

const TABLE_I_3: &[(&str, u16)] = &[
    ("1/8 in", 45),
    ("5/32 in", 100),
    ("3/16 in", 120),
    ("7/32 in", 150),
    ("1/4 in", 200),
    ("5/16 in", 275),
    ("3/8 in", 375),
    ("1/2 in", 500),
    ("9/16 in", 600),
];

fn given(
    kind: FasteningKind,
    drive: Option<Drive>,
    thread: &str,
    size: &str,
) -> Result<String, Vec<Missing>> {
    let mut terminal = Terminal::of(Fastening::of(kind));
    terminal.fastening.thread = Some(Thread::parse(thread).unwrap());
    terminal.fastening.drives = drive.into_iter().collect();
    terminal.wire.size = Some(WireSize::parse(size).unwrap());
    let advice = advise(&terminal, Past::default(), &Practice::default());
    advice
        .target
        .map(|target| target.torque.pair())
        .ok_or(advice.missing)
}

fn slot(width: &str, length: &str) -> Option<Drive> {
    Some(Drive {
        slot_width: Some(StatedLength::parse(width).unwrap()),
        slot_length: Some(StatedLength::parse(length).unwrap()),
        ..Drive::unsized_of(DriveKind::Slotted)
    })
}

fn socket(kind: DriveKind, across: &str) -> Option<Drive> {
    Some(Drive {
        across: Some(StatedLength::parse(across).unwrap()),
        ..Drive::unsized_of(kind)
    })
}

fn inch_pounds(value: u16) -> Result<String, Vec<Missing>> {
    Ok(format!("{value} lbf.in"))
}

#[test]
fn table_i_1_second_hand() {
    use FasteningKind::{PressureScrew, SplitBolt};
    for (sizes, small, large, split, other) in TABLE_I_1 {
        for size in *sizes {
            let screw = |drive| given(PressureScrew, drive, "#10-32", size);
            // A slot that fits no column takes the largest torque of the conductor size.
            assert_eq!(
                screw(slot("0.047 in", "1/4 in")),
                inch_pounds(small.unwrap_or(*large)),
                "{size}"
            );
            assert_eq!(
                screw(slot("0.050 in", "1/4 in")),
                inch_pounds(*large),
                "{size}"
            );
            assert_eq!(
                screw(slot("0.047 in", "9/32 in")),
                inch_pounds(*large),
                "{size}"
            );
            let hexagon = Some(Drive::unsized_of(DriveKind::Hex));
            assert_eq!(screw(hexagon), inch_pounds(*other), "{size}");
            assert_eq!(
                given(SplitBolt, None, "3/8-16", size),
                inch_pounds(*split),
                "{size}"
            );
        }
    }
}

#[test]
fn table_i_1_takes_the_millimetres_printed_beside_its_inches() {
    let screw = given(
        FasteningKind::PressureScrew,
        slot("1.2 mm", "6.4 mm"),
        "#10-32",
        "6 AWG",
    );
    assert_eq!(screw, inch_pounds(35));
}

#[test]
fn table_i_2_second_hand() {
    for (length, narrow, wide) in TABLE_I_2 {
        let screw = |width| {
            given(
                FasteningKind::PressureScrew,
                slot(width, length),
                "#8-32",
                "12 AWG",
            )
        };
        assert_eq!(screw("0.047 in"), inch_pounds(*wide), "{length}");
        match narrow {
            Some(narrow) => assert_eq!(screw("0.040 in"), inch_pounds(*narrow), "{length}"),
            None => assert!(
                screw("0.040 in")
                    .unwrap_err()
                    .contains(&Missing::DriveInTable)
            ),
        }
    }
}

#[test]
fn table_i_2_takes_the_next_shorter_length_second_hand() {
    let screw = |length| {
        given(
            FasteningKind::PressureScrew,
            slot("0.05 in", length),
            "#8-32",
            "12 AWG",
        )
    };
    assert_eq!(screw("0.26 in"), inch_pounds(12));
    assert_eq!(screw("0.15 in"), inch_pounds(9));
    assert_eq!(screw("7.1 mm"), inch_pounds(15));
}

#[test]
fn table_i_2_ends_at_8_awg_second_hand() {
    let screw = |size| {
        given(
            FasteningKind::PressureScrew,
            slot("0.05 in", "1/4 in"),
            "#8-32",
            size,
        )
    };
    assert_eq!(screw("8 AWG"), inch_pounds(12));
    assert!(screw("6 AWG").unwrap_err().contains(&Missing::SizeInTable));
}

#[test]
fn table_i_3_second_hand() {
    for (across, torque) in TABLE_I_3 {
        for kind in [DriveKind::Allen, DriveKind::Square] {
            let screw = given(
                FasteningKind::PressureScrew,
                socket(kind, across),
                "1/4-20",
                "6 AWG",
            );
            assert_eq!(screw, inch_pounds(*torque), "{across}");
        }
    }
}

#[test]
fn a_metric_socket_is_not_its_neighbour_in_inches() {
    for across in ["4 mm", "5 mm", "8 mm"] {
        let screw = given(
            FasteningKind::PressureScrew,
            socket(DriveKind::Allen, across),
            "1/4-20",
            "6 AWG",
        );
        assert!(
            screw.unwrap_err().contains(&Missing::DriveInTable),
            "{across}"
        );
    }
}

#[test]
fn the_columns_of_table_i_1_rise_with_the_conductor() {
    for column in ["slot_small", "slot_large", "hex_split_bolt", "hex_other"] {
        let table = baywalk_domain::torque::TableId::AnnexI1.table().unwrap();
        let torques: Vec<f64> = table.rows().filter_map(|row| row.number(column)).collect();
        assert!(torques.is_sorted(), "{column}");
    }
}
