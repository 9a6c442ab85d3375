//! What several walks tell together.

use crate::rehearsal::{AC_BAY, CLAMP, LINE, NEUTRAL, SWITCH};
use crate::script::{Script, at_ac_bay, bay, found, held, moved, open, point, rig, rig_noted, set};
use baywalk_domain::due::{due, learned};
use baywalk_domain::finding::FindingKind;
use baywalk_domain::units::Stated;
use baywalk_domain::walk::{Act, AsLeft, Damage, Ending, Scope};
use baywalk_logbook::Logbook;
use tempfile::tempdir;

/// One walk through the AC bay, ended early.
fn walk(logbook: &mut Logbook, from: u64, scope: Scope, acts: Vec<Act>) {
    let mut script = Script {
        from,
        ..Script::default()
    };
    script.start(scope);
    script.open_and_prove(AC_BAY, SWITCH);
    for act in acts {
        script.add(act);
    }
    script.close(AC_BAY);
    script.add(Act::End(Ending::Early("dark".to_owned())));
    script.play(logbook);
}

#[test]
fn the_rules_are_told_what_earlier_walks_found() {
    let folder = tempdir().unwrap();
    let mut logbook = open(folder.path());
    rig_noted().play(&mut logbook);
    let acts = vec![found(LINE, moved()), set(LINE), found(NEUTRAL, held())];
    walk(&mut logbook, 1000, Scope::Whole, acts);
    assert_eq!(logbook.moved_running(rig()).unwrap()[&point(LINE)], 1);
    assert_eq!(logbook.unsettled(rig()).unwrap(), [point(LINE)]);
    assert_eq!(logbook.last_walk(rig()).unwrap(), None);

    walk(
        &mut logbook,
        2000,
        Scope::SecondLook(vec![point(LINE)]),
        vec![found(LINE, held())],
    );
    assert_eq!(logbook.unsettled(rig()).unwrap(), []);
    assert_eq!(logbook.moved_running(rig()).unwrap()[&point(LINE)], 1);

    let remade = Act::Left {
        point: point(LINE),
        left: AsLeft::Remade { set: None },
    };
    let acts = vec![
        found(LINE, moved()),
        remade,
        found(NEUTRAL, moved()),
        set(NEUTRAL),
    ];
    walk(&mut logbook, 3000, Scope::Bays(vec![bay(AC_BAY)]), acts);
    let again = logbook.findings(rig()).unwrap();
    let again: Vec<_> = again.iter().map(|finding| finding.raised.kind).collect();
    assert_eq!(again, [FindingKind::MovedAgain]);
    assert_eq!(logbook.moved_running(rig()).unwrap()[&point(LINE)], 2);
    assert_eq!(
        logbook.unsettled(rig()).unwrap(),
        [point(LINE), point(NEUTRAL)]
    );
    assert_eq!(logbook.point_past(point(LINE)).unwrap().len(), 3);
    assert_eq!(logbook.point_past(point(CLAMP)).unwrap(), []);

    drop(logbook);
    let logbook = open(folder.path());
    assert_eq!(logbook.moved_running(rig()).unwrap()[&point(LINE)], 2);
    assert_eq!(logbook.walks(rig()).unwrap().len(), 3);
    let first = logbook.walks(rig()).unwrap()[0].id;
    let state = logbook.walk(first).unwrap();
    assert!(
        state.bays[&bay(AC_BAY)]
            .proofs
            .iter()
            .all(|proof| proof.after.is_some())
    );
}

#[test]
fn what_acts_add_in_memory_is_what_is_read_when_it_is_opened_again() {
    let folder = tempdir().unwrap();
    let mut script = at_ac_bay();
    script.add(Act::Odometer(Stated::parse_pair("41300 mi").unwrap()));
    script.add(found(LINE, moved()));
    script.add(set(LINE));
    script.add(Act::Damage {
        point: point(NEUTRAL),
        damage: Damage::Corrosion,
        note: "white crust".to_owned(),
    });
    let told = |logbook: &Logbook| {
        let glance = logbook.glance(rig()).unwrap();
        assert_eq!(
            usize::try_from(glance.open_findings).unwrap(),
            logbook.findings(rig()).unwrap().len()
        );
        let known = logbook.known(rig()).unwrap();
        let book = logbook.book(rig()).unwrap();
        assert_eq!(
            glance.due,
            due(
                &book,
                &known,
                learned(&book, &known).first.map(|(on, _)| on)
            )
        );
        (
            logbook.findings(rig()).unwrap(),
            known,
            logbook.unsettled(rig()).unwrap(),
            glance,
            logbook.outline(rig()).unwrap(),
        )
    };
    let mut logbook = open(folder.path());
    script.play(&mut logbook);
    let live = told(&logbook);
    assert_eq!((live.0.len(), live.1.odometer.len()), (1, 2));
    assert!(live.3.walk.is_some());
    drop(logbook);
    let mut logbook = open(folder.path());
    assert_eq!(told(&logbook), live);
    logbook.rebuild().unwrap();
    assert_eq!(told(&logbook), live);
}
