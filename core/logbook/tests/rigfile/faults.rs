//! Every mistake of both files is told at once, with its line and column.

use crate::tried::{SOUND, faults};
use baywalk_logbook::rigfile::{Fault, FaultKind, Limit, MOST_BYTES, MOST_POINTS};

#[test]
fn a_sound_pair_has_no_fault() {
    assert_eq!(
        faults(
            SOUND,
            "code,device,name,fastening,role\nA1,ADV,L,crimp,power\n"
        ),
        []
    );
    assert_eq!(faults(SOUND, "code,device,name\n"), []);
    let marked = format!("\u{feff}{SOUND}").replace('\n', "\r\n");
    assert_eq!(
        faults(&marked, "\u{feff}code,device,name\r\n\r\n,,\r\n"),
        []
    );
}

#[test]
fn all_mistakes_are_told_at_once_each_at_its_place() {
    let toml = r#"format = 1
[rig]
name = "Añorga"
kind = "boat"
service = "none"
colour = "red"
[yearly]
months = "12"
distance = "5000 leagues"
[[source]]
code = "S 1"
name = "shore"
kind = "shore"
presence = "have"
supply = "ac"
highest = "a lot V"
isolation = "unplug"
[[bay]]
code = "A"
name = ""
station = 1001
side = "left"
open_minutes = 1
close_minutes = 1
fed_by = ["S7"]
[[device]]
code = "a"
name = "panel"
bay = "A"
kind = "ac_panel"
"#;
    let csv = "code,device,name,note,fastening,role,thread,wire,torque\n\
               F1,ATS,L1,\"two\nlines, é\",pressure_screw,power,M6,6,45 lbf.in\n\
               F2,A,N,,push_in,power,6 mm-ish,6 AWG,-3 N.m,more\n";
    let found: Vec<(String, u32, u32, String)> = faults(toml, csv)
        .into_iter()
        .map(|f| (f.file, f.line, f.column, f.field))
        .collect();
    let expected = [
        ("rig.toml", 4, 8, "kind"),
        ("rig.toml", 6, 1, "colour"),
        ("rig.toml", 8, 10, "months"),
        ("rig.toml", 9, 12, "distance"),
        ("rig.toml", 11, 8, "code"),
        ("rig.toml", 16, 11, "highest"),
        ("rig.toml", 20, 8, "name"),
        ("rig.toml", 21, 11, "station"),
        ("rig.toml", 25, 11, "fed_by"),
        ("rig.toml", 27, 8, "code"),
        ("points.csv", 2, 1, "torque_basis"),
        ("points.csv", 2, 4, "device"),
        ("points.csv", 3, 35, "wire"),
        ("points.csv", 4, 1, "torque_basis"),
        ("points.csv", 4, 4, "device"),
        ("points.csv", 4, 23, "thread"),
        ("points.csv", 4, 38, "torque"),
        ("points.csv", 4, 45, ""),
    ];
    let expected = expected
        .map(|(file, line, column, field)| (file.to_owned(), line, column, field.to_owned()));
    assert_eq!(found, expected);
}

#[test]
fn a_newer_format_is_told_alone() {
    let told = faults(
        &SOUND.replace("format = 1", "format = 3\nnew = true"),
        "what,is,this\n",
    );
    let newer = FaultKind::Newer { found: 3, known: 2 };
    let told: Vec<_> = told.iter().map(|f| (f.line, f.column, &f.kind)).collect();
    assert_eq!(told, [(1, 10, &newer)]);
}

#[test]
fn toml_that_breaks_off_is_told_beside_faults_of_the_other_file() {
    let told = faults(
        &SOUND
            .replace("[\"S1\"] }", "[\"S1\" }")
            .replace("months = 12", "months ="),
        "code,device,name,look\nA1,ADV,x,drip\n",
    );
    let syntax = told
        .iter()
        .filter(|f| matches!(f.kind, FaultKind::Syntax { .. }));
    assert!(
        syntax.clone().any(|f| f.line == 3) && syntax.clone().any(|f| f.line == 5),
        "{told:?}"
    );
    assert!(told.iter().any(|f| f.field == "look" && f.line == 2));
    assert!(
        !told
            .iter()
            .any(|f| matches!(f.kind, FaultKind::NoSuch { .. }))
    );
}

#[test]
fn sizes_are_limited() {
    let large = " ".repeat(MOST_BYTES + 1);
    let told = faults(SOUND, &large);
    assert!(matches!(
        told[..],
        [Fault {
            kind: FaultKind::TooMany {
                what: Limit::Bytes,
                ..
            },
            ..
        }]
    ));
    let mut many = String::from("code,device,name,look\n");
    for number in 0..=MOST_POINTS {
        many.push_str(&format!("A{number},ADV,x,leak\n"));
    }
    let told = faults(SOUND, &many);
    let kind = FaultKind::TooMany {
        what: Limit::Points,
        found: MOST_POINTS + 1,
        most: MOST_POINTS,
    };
    assert_eq!(told.into_iter().map(|f| f.kind).collect::<Vec<_>>(), [kind]);
}
