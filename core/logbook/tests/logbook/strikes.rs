//! Undo, in the tables too.

use crate::rehearsal::{LINE, NEUTRAL, book};
use crate::script::{at_ac_bay, found, moved, open, point, rig, set, tool_at};
use baywalk_domain::finding::{Decision, FollowUp};
use baywalk_domain::rig::BookChange;
use baywalk_domain::units::{DistanceUnit, Stated};
use baywalk_domain::walk::{Act, Damage};
use baywalk_logbook::Logbook;
use tempfile::tempdir;

/// Does an act, strikes it, and sees that everything reads as before.
fn done_and_undone(logbook: &mut Logbook, act: Act) {
    let before = (
        logbook.fingerprint().unwrap(),
        logbook.book(rig()).unwrap(),
        logbook.findings(rig()).unwrap(),
        logbook.odometer(rig()).unwrap(),
    );
    let standing = logbook.open_walk(rig()).unwrap().unwrap().standing;
    let kind = act.kind();
    let done = logbook.act(rig(), act).unwrap();
    assert_ne!(logbook.fingerprint().unwrap(), before.0, "{kind}");
    let strike = Act::Strike { act: done.entry.id };
    logbook.act(rig(), strike).unwrap();
    let after = (
        logbook.fingerprint().unwrap(),
        logbook.book(rig()).unwrap(),
        logbook.findings(rig()).unwrap(),
        logbook.odometer(rig()).unwrap(),
    );
    assert_eq!(after, before, "{kind}");
    let walk = logbook.open_walk(rig()).unwrap().unwrap();
    assert_eq!(walk.standing, standing, "{kind}");
    let kept = logbook.fingerprint().unwrap();
    logbook.rebuild().unwrap();
    assert_eq!(logbook.fingerprint().unwrap(), kept, "{kind}");
}

#[test]
fn what_is_struck_is_gone_from_every_table() {
    let folder = tempdir().unwrap();
    let mut logbook = open(folder.path());
    at_ac_bay().play(&mut logbook);
    done_and_undone(&mut logbook, found(LINE, moved()));
    logbook.act(rig(), found(NEUTRAL, moved())).unwrap();
    logbook.act(rig(), tool_at("45 lbf.in")).unwrap();
    done_and_undone(&mut logbook, set(NEUTRAL));
    let damage = Act::Damage {
        point: point(LINE),
        damage: Damage::Heat,
        note: "brown".to_owned(),
    };
    done_and_undone(&mut logbook, damage.clone());
    logbook.act(rig(), damage).unwrap();
    let mut rig_facts = book().rig;
    rig_facts.name = "Dipper".to_owned();
    done_and_undone(
        &mut logbook,
        Act::Book(BookChange::Rig(Box::new(rig_facts))),
    );
    let mut new = book().points[0].clone();
    new.id = point(4040);
    new.code = crate::rehearsal::code("A9");
    done_and_undone(&mut logbook, Act::Book(BookChange::Point(Box::new(new))));
    let miles = Stated::parse("41260", DistanceUnit::Miles).unwrap();
    done_and_undone(&mut logbook, Act::Odometer(miles));
    let finding = logbook.findings(rig()).unwrap()[0].raised.id;
    let decide = |decision| Act::Decide {
        finding,
        follow_up: FollowUp {
            decision,
            by: None,
            note: "new wire".to_owned(),
        },
    };
    logbook.act(rig(), decide(Decision::Licensed)).unwrap();
    done_and_undone(&mut logbook, decide(Decision::Ourselves));
    let stands = logbook.findings(rig()).unwrap()[0].follow_up.clone();
    assert_eq!(stands.unwrap().decision, Decision::Licensed);
}
