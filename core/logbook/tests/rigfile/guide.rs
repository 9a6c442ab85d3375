//! The page for people keeps step with what is read: its example is sound, and it names every word.

use crate::tried::{act, texts};
use baywalk_domain::coded::Coded;
use baywalk_domain::rig::{
    BoltGrade, Conductor, DeviceKind, DriveKind, FasteningKind, Isolation, Landing, Locking,
    LookKind, Material, Nut, Presence, Recheck, RigKind, Role, ServiceKind, SetSystem, Side,
    SourceKind, Strands, SupplyKind, ThreadState, ToolKind, TorqueBasis, Washer,
};
use baywalk_domain::units::{CurrentUnit, DistanceUnit, LengthUnit, TorqueUnit, VoltageUnit};
use baywalk_logbook::rigfile::{layouts, write};

const GUIDE: &str = include_str!("../../../../docs/rig-files.md");

/// The text of the first block of a language.
fn block(language: &str) -> &'static str {
    let (_, behind) = GUIDE.split_once(&format!("```{language}\n")).unwrap();
    behind.split_once("```").unwrap().0
}

fn names_all<T: Coded>(quoted: bool) {
    for member in T::ALL {
        let code = member.code();
        let named = GUIDE.contains(&format!("`{code}`")) || (!quoted && GUIDE.contains(code));
        assert!(named, "{} {code}", T::NAME);
    }
}

#[test]
fn the_example_is_sound() {
    let book = texts(block("toml"), block("csv")).unwrap();
    assert_eq!((book.sources.len(), book.points.len()), (3, 2));
}

#[test]
fn every_word_is_named() {
    names_all::<SourceKind>(true);
    names_all::<Presence>(true);
    names_all::<SupplyKind>(true);
    names_all::<Isolation>(true);
    names_all::<Side>(true);
    names_all::<DeviceKind>(true);
    names_all::<SetSystem>(true);
    names_all::<Conductor>(true);
    names_all::<ToolKind>(true);
    names_all::<LookKind>(true);
    names_all::<Role>(true);
    names_all::<FasteningKind>(true);
    names_all::<DriveKind>(false);
    names_all::<Landing>(true);
    names_all::<Nut>(true);
    names_all::<Washer>(true);
    names_all::<Locking>(true);
    names_all::<BoltGrade>(true);
    names_all::<Material>(true);
    names_all::<Strands>(true);
    names_all::<ThreadState>(true);
    names_all::<TorqueBasis>(true);
    names_all::<Recheck>(true);
    names_all::<RigKind>(false);
    names_all::<ServiceKind>(false);
    names_all::<TorqueUnit>(true);
    names_all::<VoltageUnit>(true);
    names_all::<CurrentUnit>(true);
    names_all::<DistanceUnit>(true);
    names_all::<LengthUnit>(true);
}

#[test]
fn every_column_is_named() {
    let files = write(&layouts()[0].book(act()).unwrap());
    for column in files.csv.lines().next().unwrap().split(',') {
        assert!(GUIDE.contains(&format!("`{column}`")), "{column}");
    }
}
