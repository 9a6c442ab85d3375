//! A whole walk, read back.

use crate::rehearsal::{CLAMP, LINE, NEUTRAL, SMELL, book, id};
use crate::script::{at_ac_bay, found, held, moved, open, point, rig, rig_noted, whole_walk};
use baywalk_domain::finding::{Decision, FindingKind, FollowUp};
use baywalk_domain::ids::RigId;
use baywalk_domain::rig::BookChange;
use baywalk_domain::walk::{Act, AsFound, Ending, Grade, Phase, Refusal};
use baywalk_logbook::{ActFault, Change};
use tempfile::tempdir;

#[test]
fn a_whole_walk_is_there_when_it_is_read_back() {
    let folder = tempdir().unwrap();
    let mut logbook = open(folder.path());
    let script = whole_walk();
    script.play(&mut logbook);
    assert_eq!(logbook.digest().seq, script.calls.len() as u64);
    assert_eq!(logbook.rigs().unwrap(), [rig()]);
    assert_eq!(logbook.book(rig()).unwrap(), book());
    assert_eq!(logbook.open_walk(rig()).unwrap(), None);

    let walks = logbook.walks(rig()).unwrap();
    let [walk] = walks.as_slice() else {
        panic!("{walks:?}")
    };
    assert_eq!(walk.ended.as_ref().unwrap().1, Ending::Whole);
    let state = logbook.walk(walk.id).unwrap();
    assert_eq!(state.phase, Phase::Ended);
    assert_eq!(
        logbook.last_walk(rig()).unwrap().unwrap().to_string(),
        "2027-03-20"
    );

    let past = logbook.point_past(point(NEUTRAL)).unwrap();
    assert_eq!(past.len(), 1);
    assert_eq!(Some(&past[0].record), state.point(point(NEUTRAL)));
    let found = past[0].record.found.as_ref().unwrap();
    assert!(found.corrected);
    assert_eq!(found.found, AsFound::Loose);
    let clamp = logbook.point_past(point(CLAMP)).unwrap();
    let grade = clamp[0].record.found.as_ref().unwrap().found.grade();
    assert_eq!((grade, clamp[0].record.damage.len()), (Grade::LookedAt, 1));

    let moved = logbook.moved_running(rig()).unwrap();
    let two = [(point(LINE), 1), (point(NEUTRAL), 1)];
    assert_eq!(moved.into_iter().collect::<Vec<_>>(), two);
    assert_eq!(
        logbook.unsettled(rig()).unwrap(),
        [point(LINE), point(NEUTRAL)]
    );
    let kinds: Vec<_> = logbook
        .findings(rig())
        .unwrap()
        .iter()
        .map(|finding| finding.raised.kind)
        .collect();
    assert_eq!(
        kinds,
        [
            FindingKind::LookTrouble,
            FindingKind::Worn,
            FindingKind::OddReading
        ]
    );
    assert_eq!(logbook.odometer(rig()).unwrap().len(), 1);
    assert_eq!(logbook.verify().unwrap().broken, None);
    assert_eq!(logbook.verify().unwrap().digest, logbook.digest().digest);
}

#[test]
fn an_act_says_what_it_moved() {
    let folder = tempdir().unwrap();
    let mut logbook = open(folder.path());
    at_ac_bay().play(&mut logbook);
    let outcome = logbook.act(rig(), found(LINE, moved())).unwrap();
    assert_eq!(outcome.changes, [Change::Past(point(LINE)), Change::Walk]);
    let outcome = logbook
        .act(
            rig(),
            Act::Strike {
                act: outcome.entry.id,
            },
        )
        .unwrap();
    assert_eq!(outcome.changes, [Change::Past(point(LINE)), Change::Walk]);
    let mut changed = book().rig;
    changed.name = "Dipper".to_owned();
    let rename = Act::Book(BookChange::Rig(Box::new(changed)));
    let outcome = logbook.act(rig(), rename).unwrap();
    assert_eq!(outcome.changes, [Change::Rigs, Change::Book, Change::Walk]);
    assert_eq!(logbook.book(rig()).unwrap().rig.name, "Dipper");
}

#[test]
fn a_refusal_changes_nothing() {
    let folder = tempdir().unwrap();
    let mut logbook = open(folder.path());
    at_ac_bay().play(&mut logbook);
    let (head, tables) = (logbook.digest(), logbook.fingerprint().unwrap());
    let refused = logbook.act(rig(), Act::PowerUp);
    assert!(matches!(
        refused,
        Err(ActFault::Refused(Refusal::BayOpen(_)))
    ));
    assert_eq!(logbook.digest(), head);
    assert_eq!(logbook.fingerprint().unwrap(), tables);
    assert_eq!(
        logbook.act(RigId::new(id(999)), found(LINE, held())),
        Err(ActFault::Refused(Refusal::NoWalk))
    );
}

#[test]
fn a_finding_keeps_its_newest_decision() {
    let folder = tempdir().unwrap();
    let mut logbook = open(folder.path());
    whole_walk().play(&mut logbook);
    let finding = logbook.findings(rig()).unwrap()[0].raised.clone();
    for (decision, note) in [(Decision::Ourselves, "later"), (Decision::Mended, "done")] {
        let follow_up = FollowUp {
            decision,
            by: None,
            note: note.to_owned(),
        };
        let decide = Act::Decide {
            finding: finding.id,
            follow_up,
        };
        let outcome = logbook.act(rig(), decide).unwrap();
        assert_eq!(outcome.changes, [Change::Findings]);
    }
    let finding = logbook.findings(rig()).unwrap().swap_remove(0);
    assert_eq!(finding.follow_up.as_ref().unwrap().note, "done");
    assert!(!finding.is_open());
    assert_eq!(
        finding.raised.about,
        baywalk_domain::finding::About::Point(point(SMELL))
    );
}

#[test]
fn a_rig_goes_out_to_files_and_comes_in_again() {
    let folder = tempdir().unwrap();
    let mut logbook = open(folder.path());
    rig_noted().play(&mut logbook);
    let files = logbook.export_rig(rig()).unwrap();
    let toml = baywalk_logbook::rigfile::NamedText {
        name: "rig.toml",
        text: &files.toml,
    };
    let csv = baywalk_logbook::rigfile::NamedText {
        name: "points.csv",
        text: &files.csv,
    };
    let outcome = logbook.import_rig(&toml, &csv).unwrap();
    let copy = logbook.book(outcome.entry.rig).unwrap();
    assert_eq!(copy.points.len(), book().points.len());
    assert_eq!(logbook.rigs().unwrap().len(), 2);
    let broken = baywalk_logbook::rigfile::NamedText {
        name: "rig.toml",
        text: "format = 1",
    };
    let head = logbook.digest();
    assert!(logbook.import_rig(&broken, &csv).is_err());
    assert_eq!(logbook.digest(), head);
}
