//! Cards: shown, pressed once, passed, gone on with.

use super::*;

#[test]
fn a_double_tap_records_once() {
    let phone = phone();
    let view = phone.card();
    let code = view.card.keys.first().unwrap().code.clone();
    let tap = press(&view, &code);
    let first = phone.press(tap.clone());
    let second = phone.press(tap);
    assert_eq!(first.how, How::Recorded);
    assert_eq!(second.how, How::Before);
    assert_eq!(first.told.unwrap().seq, second.told.unwrap().seq);
    assert_eq!(first.view.unwrap().card.seq, second.view.unwrap().card.seq);
}

#[test]
fn another_key_of_a_card_that_was_answered_gives_what_came_of_the_first() {
    let phone = phone();
    let view = phone.until("point");
    let held = press(&view, &view.card.keys.first().unwrap().code);
    let apart = press(&view, "apart");
    assert_eq!(phone.press(held).how, How::Recorded);
    let told = phone.press(apart);
    assert_eq!(told.how, How::Before);
    assert_ne!(told.view.unwrap().card.point, view.card.point);
}

#[test]
fn a_key_of_a_card_that_has_passed_records_nothing() {
    let phone = phone();
    let old = phone.card();
    phone.first_key();
    let now = phone.card();
    let mut late = press(&old, &old.card.keys.first().unwrap().code);
    late.act = now.card.act.clone();
    let told = phone.press(late);
    assert_eq!(told.how, How::Passed);
    assert!(told.told.is_none());
    assert_eq!(told.view.unwrap().card.seq, now.card.seq);
}

#[test]
fn a_refusal_changes_nothing_and_is_a_whole_sentence() {
    let phone = phone();
    let view = phone.until("read");
    let mut tap = press(&view, "read");
    tap.typed = vec!["1,2,3 volts".to_owned()];
    let Err(Fault::Told { sentence, .. }) = phone.core.press(&phone.rig, tap, ROOM) else {
        panic!("taken");
    };
    assert!(sentence.ends_with('.'), "{sentence}");
    assert_eq!(phone.card().card.seq, view.card.seq);
}

#[test]
fn a_proof_shows_its_pairs_and_a_point_its_plate_and_glyphs() {
    let phone = phone();
    assert!(phone.until("isolate").diagram.is_some());
    let read = phone.until("read");
    assert!(read.pairs.iter().filter(|pair| pair.now).count() == 1);
    assert!(read.diagram.is_some());
    let point = phone.until("point");
    assert!(point.plate.is_some());
    let drawn = |code: &str| point.glyphs.iter().any(|glyph| glyph.code == code);
    assert!(drawn("loose") && drawn("apart"), "{:?}", point.card.keys);
    assert!(!point.line.parts.is_empty());
    let tag = point.card.tag.clone().unwrap();
    let bay = phone.core.bay(&phone.rig, &tag, WIDTH).unwrap();
    assert!(
        bay.points
            .iter()
            .any(|row| Some(&row.id) == point.card.point.as_ref())
    );
}

#[test]
fn the_exact_card_is_there_after_the_process_is_gone() {
    let phone = phone();
    let before = phone.until("point").card;
    let again = phone.again();
    let after = again.card(&phone.rig, ROOM).unwrap().card;
    assert_eq!(
        (before.point, before.seq, before.title),
        (after.point, after.seq, after.title)
    );
}

#[test]
fn ten_threads_on_one_logbook_lose_no_act_and_end() {
    let phone = phone();
    let before = phone.card().card.seq;
    let recorded: u64 = std::thread::scope(|scope| {
        let work = || {
            let mut recorded = 0;
            for _ in 0..20 {
                let view = phone.card();
                let Some(key) = view.card.keys.first() else {
                    continue;
                };
                let tap = press(&view, &key.code);
                // A refusal, as of a reading that does not fit the next card, changes nothing.
                if let Ok(pressed) = phone.core.press(&phone.rig, tap, ROOM) {
                    recorded += u64::from(pressed.how == How::Recorded);
                }
            }
            recorded
        };
        let threads: Vec<_> = (0..10).map(|_| scope.spawn(work)).collect();
        threads
            .into_iter()
            .map(|thread| thread.join().unwrap())
            .sum()
    });
    assert!(recorded >= 5, "{recorded}");
    assert_eq!(phone.card().card.seq, before + recorded);
    assert!(phone.core.verify().unwrap().whole);
}

#[test]
fn where_a_screen_stood_is_there_after_the_process_is_gone_and_is_no_entry() {
    let phone = phone();
    let before = phone.card().card.seq;
    assert_eq!(phone.core.scrolled("bay F").unwrap(), 0);
    phone.core.keep_scrolled("bay F", 312).unwrap();
    phone.core.keep_scrolled("rig", 40).unwrap();
    phone.core.keep_scrolled("rig", 0).unwrap();
    let again = phone.again();
    assert_eq!(again.scrolled("bay F").unwrap(), 312);
    assert_eq!(again.scrolled("rig").unwrap(), 0);
    assert_eq!(again.card(&phone.rig, ROOM).unwrap().card.seq, before);
}

#[test]
fn a_reading_is_judged_while_it_is_typed_and_nothing_is_recorded() {
    let phone = phone();
    let card = phone.until("read").card;
    let weigh = |typed: &str| {
        let typed = vec![typed.to_owned()];
        phone.core.weigh(&phone.rig, "read", typed, WIDTH).unwrap()
    };
    let dead = weigh("0.2").sentences.join(" ");
    let live = weigh("119").sentences.join(" ");
    assert!(dead != live && !dead.is_empty(), "{dead} / {live}");
    assert!(weigh("").sentences.is_empty() && weigh(".").sentences.is_empty());
    assert_eq!(phone.card().card.seq, card.seq);
}
