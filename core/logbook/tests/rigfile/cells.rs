//! What a fault of the table says: what was found, what was expected, and where.

use crate::tried::{SOUND, faults};
use baywalk_domain::rig::Code;
use baywalk_domain::units::StatedFault;
use baywalk_logbook::rigfile::{FaultKind, RecordKind};

/// Reads rows under a header and tells place, field and kind of each fault.
fn cells(csv: &str) -> Vec<(u32, u32, String, FaultKind)> {
    let told = faults(SOUND, csv).into_iter();
    told.map(|f| (f.line, f.column, f.field, f.kind)).collect()
}

#[test]
fn a_fault_carries_what_was_found_and_what_was_expected() {
    let told = faults(&SOUND.replace("\"left\"", "\"port\""), "code,device,name\n");
    let FaultKind::Unknown(unknown) = &told[0].kind else {
        panic!("{told:?}")
    };
    assert_eq!((unknown.list, unknown.found.as_str()), ("side", "port"));
    assert!(unknown.expected.contains(&"left"));

    let taken = cells("code,device,name,look\nA1,ADV,x,leak\na1,ADV,y,leak\nADV,ADV,z,leak\n");
    let FaultKind::Taken {
        code,
        first_file,
        first_line,
    } = &taken[0].3
    else {
        panic!("{taken:?}")
    };
    assert_eq!(
        (code.as_str(), first_file.as_str(), *first_line),
        ("A1", "points.csv", 2)
    );
    assert!(
        matches!(&taken[1].3, FaultKind::Taken { first_file, first_line: 6, .. } if first_file == "rig.toml")
    );

    let none = cells("code,device,name,look\nA1,XYZ,x,leak\n");
    let found = Code::parse("XYZ").unwrap();
    assert_eq!(
        none[0].3,
        FaultKind::NoSuch {
            what: RecordKind::Device,
            found
        }
    );
}

#[test]
fn cells_that_do_not_fit_together_are_told() {
    let head = "code,device,name,look,fastening,role,set,conductor,torque,torque_basis,recheck,allowed,range,drives,retired\n";
    let row = |cells: &str| cells_of(&format!("{head}A1,ADV,x,{cells}\n"));
    let one = |cells: &str| row(cells).pop().unwrap();
    assert_eq!(
        one("leak,,,,,5 N.m").1,
        FaultKind::Clashes { other: "look" }
    );
    assert!(matches!(one(",,power").1, FaultKind::MissingOneOf { .. }));
    assert_eq!(one(",crimp"), ("role".to_owned(), FaultKind::Missing));
    assert_eq!(
        one(",crimp,power,feed").1,
        FaultKind::Needs { other: "conductor" }
    );
    assert_eq!(one(",crimp,power,,L").1, FaultKind::Needs { other: "set" });
    assert!(
        matches!(one(",crimp,power,back,L").1, FaultKind::NoSuchSet { expected, .. } if expected == ["feed"])
    );
    assert!(
        matches!(one(",crimp,power,feed,L2").1, FaultKind::Unknown(u) if u.expected == ["L", "N", "G"])
    );
    assert_eq!(
        one(",stud,power,,,,label").1,
        FaultKind::Needs { other: "torque" }
    );
    assert_eq!(
        one(",stud,power,,,,,never").1,
        FaultKind::Needs { other: "torque" }
    );
    assert_eq!(one(",stud,power,,,5 N.m").0, "torque_basis");
    assert!(matches!(
        one(",crimp,power,,,5 N.m,label").1,
        FaultKind::Terminal(_)
    ));
    assert!(matches!(
        one(",stud,power,,,45,label").1,
        FaultKind::Quantity(StatedFault::Unit(_))
    ));
    assert!(matches!(
        one(",stud,power,,,0 N.m,label").1,
        FaultKind::Quantity(StatedFault::Range(_))
    ));
    assert!(matches!(
        one(",stud,power,,,,,,0").1,
        FaultKind::Whole {
            least: 1,
            most: 255,
            ..
        }
    ));
    assert!(matches!(
        one(",stud,power,,,,,,,6 AWG").1,
        FaultKind::Range { .. }
    ));
    assert!(matches!(
        one(",stud,power,,,,,,,6 to 4 AWG").1,
        FaultKind::WireSize(_)
    ));
    assert!(matches!(
        one(",stud,power,,,,,,,,hex 3/0 in").1,
        FaultKind::Length(_)
    ));
    assert!(matches!(
        one(",stud,power,,,,,,,,,maybe").1,
        FaultKind::YesNo { .. }
    ));
}

fn cells_of(csv: &str) -> Vec<(String, FaultKind)> {
    cells(csv)
        .into_iter()
        .map(|(_, _, field, kind)| (field, kind))
        .collect()
}

#[test]
fn headers_are_judged_once_and_not_again_in_each_row() {
    let told = cells("code,nam,device,code, Name \nA1,x,ADV,,\nA2,y,ADV,,\n");
    let heads: Vec<(u32, u32, &str)> = told
        .iter()
        .map(|(l, c, f, _)| (*l, *c, f.as_str()))
        .collect();
    assert!(heads.contains(&(1, 1, "name")) && heads.contains(&(1, 6, "nam")));
    assert!(heads.contains(&(1, 17, "code")) && heads.contains(&(1, 22, "Name")));
    assert!(
        heads
            .iter()
            .all(|(line, _, field)| *line == 1 || *field == "fastening" || *field == "role")
    );
    let semicolons = cells("code;device;name\nA1;ADV;x\n");
    assert_eq!(
        semicolons,
        [(1, 1, String::new(), FaultKind::Separator { found: ';' })]
    );
}

#[test]
fn an_open_quotation_mark_is_told_where_it_opens() {
    let told = cells("code,device,name,look\nA1,ADV,\"x,leak\nA2,ADV,y,leak\n");
    assert!(told.contains(&(2, 8, String::new(), FaultKind::OpenQuote)));
}
