//! A walk as a phone makes it: by the cards that were shown.

#![expect(
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test that can't go on stops with the reason"
)]

use baywalk_mobile::{Baywalk, CardView, Fault, Field, PinPlace, PressedView, Room};
use baywalk_screens::card::Ask;
use baywalk_screens::set_up::Piece;
use baywalk_screens::step::{How, Press};
use std::sync::Arc;
use tempfile::TempDir;

const WIDTH: f64 = 360.0;
const ROOM: Room = Room {
    width: WIDTH,
    scale: 1.0,
};

struct Phone {
    core: Arc<Baywalk>,
    rig: String,
    folder: TempDir,
}

fn phone() -> Phone {
    let folder = tempfile::tempdir().unwrap();
    let core = Baywalk::open(
        folder.path().to_str().unwrap().to_owned(),
        vec!["en".into()],
    )
    .unwrap();
    let rig = core.start_from("sample-motorhome", "Wren").unwrap();
    core.start(&rig, "Ada", vec![], false).unwrap();
    Phone { core, rig, folder }
}

/// A press of a key of a card, with an answer to all that it asks.
fn press(view: &CardView, code: &str) -> Press {
    let card = &view.card;
    let key = card.keys.iter().find(|key| key.code == code);
    let key = key.unwrap_or_else(|| panic!("no {code} on {card:?}"));
    let typed = key.asks.iter().map(|ask| match ask {
        Ask::Words { .. } => "outlet at the post".to_owned(),
        Ask::Number { .. } => "0.2".to_owned(),
        Ask::Choice { options, .. } => options.last().unwrap().code.clone(),
    });
    Press {
        act: card.act.clone(),
        seq: card.seq,
        point: card.point.clone(),
        key: code.to_owned(),
        typed: typed.collect(),
    }
}

impl Phone {
    /// The logbook opened anew, as after the process is gone.
    fn again(&self) -> Arc<Baywalk> {
        self.core.let_go().unwrap();
        let path = self.folder.path().to_str().unwrap().to_owned();
        Baywalk::open(path, vec!["en".into()]).unwrap()
    }

    fn card(&self) -> CardView {
        self.core.card(&self.rig, ROOM).unwrap()
    }

    fn press(&self, press: Press) -> PressedView {
        self.core.press(&self.rig, press, ROOM).unwrap()
    }

    fn first_key(&self) -> PressedView {
        let view = self.card();
        let code = view.card.keys.first().unwrap().code.clone();
        self.press(press(&view, &code))
    }

    /// Goes on by the first key of each card until one of a kind is shown.
    fn until(&self, kind: &str) -> CardView {
        for _ in 0..400 {
            let view = self.card();
            if view.card.kind == kind {
                return view;
            }
            let mut press = press(&view, &view.card.keys.first().unwrap().code);
            if view.card.kind == "known_live" {
                press
                    .typed
                    .iter_mut()
                    .filter(|text| *text == "0.2")
                    .for_each(|text| {
                        *text = if view.card.title.contains("AC") {
                            "121"
                        } else {
                            "12.8"
                        }
                        .to_owned();
                    });
            }
            self.press(press);
        }
        panic!("no {kind} was shown")
    }
}

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

/// A small photo as a camera would write it.
fn picture(phone: &Phone) -> String {
    let path = phone.folder.path().join("camera.png");
    let sample = concat!(
        env!("CARGO_MANIFEST_DIR"),
        "/../../core/logbook/tests/photos/clear.png"
    );
    std::fs::copy(sample, &path).unwrap();
    path.to_str().unwrap().to_owned()
}

#[test]
fn a_photo_of_a_bay_carries_pins_that_the_next_walk_still_sees() {
    let phone = phone();
    let (core, rig) = (&phone.core, &phone.rig);
    let view = phone.until("point");
    let bay = view.card.tag.clone().unwrap();
    let shown = || core.bay(rig, &bay, WIDTH).unwrap();
    let points = shown().points;
    let here = points
        .iter()
        .find(|row| Some(&row.id) == view.card.point.as_ref());
    let first = here.unwrap().code.clone();
    let place = PinPlace {
        across: 420,
        down: 310,
    };
    assert!(shown().photo.is_none());
    let Err(Fault::Told { sentence, .. }) = core.pin(rig, &first, Some(place)) else {
        panic!("pinned on no photo");
    };
    assert!(sentence.contains("no photo"), "{sentence}");
    core.photo_add(rig, &bay, &picture(&phone), "").unwrap();
    assert!(phone.card().places.is_none());
    core.pin(rig, &first, Some(place)).unwrap();
    let pinned = shown();
    let pin = &pinned.pins.first().unwrap().pin;
    assert_eq!(
        (pin.code.as_str(), pin.across, pin.down),
        (first.as_str(), 420, 310)
    );
    assert!(pinned.photo.unwrap().path.is_some());
    assert!(phone.card().places.is_some());
    let beside = PinPlace {
        across: 1001,
        down: 0,
    };
    assert!(core.pin(rig, &first, Some(beside)).is_err());
    let again = phone.again();
    assert_eq!(again.bay(rig, &bay, WIDTH).unwrap().pins.len(), 1);
    again
        .change(rig, &first, vec![field("note", "third screw")])
        .unwrap();
    assert_eq!(again.bay(rig, &bay, WIDTH).unwrap().pins.len(), 1);
    again.pin(rig, &first, None).unwrap();
    assert!(again.bay(rig, &bay, WIDTH).unwrap().pins.is_empty());
}

fn field(name: &str, value: &str) -> Field {
    Field {
        name: name.to_owned(),
        value: value.to_owned(),
    }
}

#[test]
fn a_rig_is_set_up_from_nothing_on_its_first_walk() {
    let phone = phone();
    let core = &phone.core;
    let rig = &core.start_from("starter-empty-trailer", "Plover").unwrap();
    for source in core.sources(rig).unwrap().sources {
        let presence = if source.name.contains("battery") {
            "have"
        } else {
            "have_not"
        };
        core.change(rig, &source.code, vec![field("presence", presence)])
            .unwrap();
    }
    core.start(rig, "Ada", vec![], false).unwrap();
    let texts = |all: &[&str]| {
        all.iter()
            .map(|text| (*text).to_owned())
            .collect::<Vec<_>>()
    };
    let bay = core
        .set_up_add(rig, Piece::Bay, "", texts(&["12", "left", "275"]))
        .unwrap();
    let early = core.set_up_form(rig, Piece::Terminal, &bay.code);
    assert!(early.is_err(), "a terminal before its device");
    let device = texts(&["dc_panel", "", "dc", "2"]);
    let device = core
        .set_up_add(rig, Piece::Device, &bay.code, device)
        .unwrap();
    let answers = texts(&[&device.code, "push_in", "", "power"]);
    let point = core
        .set_up_add(rig, Piece::Terminal, &bay.code, answers)
        .unwrap();
    let next = core.set_up_copy(rig, &point.code).unwrap();
    assert_eq!((point.code.as_str(), next.code.as_str()), ("A1", "A2"));
    let few = core.set_up_add(rig, Piece::Look, &bay.code, texts(&["x"]));
    assert!(few.is_err(), "a look by one answer");
    let facts = core.facts(rig, "A2").unwrap();
    let torque = facts
        .facts
        .iter()
        .find(|fact| fact.column == "torque")
        .unwrap();
    assert_eq!(
        (torque.value.as_str(), torque.shown.as_str()),
        ("", "not noted")
    );
    // Two groups that nobody said what feeds are both read before a hand goes in.
    let view = core.bay(rig, &bay.code, WIDTH).unwrap();
    assert_eq!((view.name.as_str(), view.points.len()), ("12", 2));
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
fn a_plan_is_followed_made_anew_at_the_close_of_a_bay_left_and_rejoined() {
    let phone = phone();
    let planned = phone.core.plan(&phone.rig, 10).unwrap();
    let first = planned.stops.first().unwrap().code.clone();
    assert_eq!(planned.proof.code, "best");
    let nose = phone.until("open").card.tag.unwrap();
    assert_ne!(nose, first);
    let mut ten = press(&phone.card(), "plan");
    ten.typed = vec!["10".to_owned()];
    let told = phone.press(ten).told.unwrap();
    assert!(
        told.sentences
            .iter()
            .any(|said| said.starts_with("The plan is followed"))
    );
    let stop = phone.until("open").card;
    assert_eq!(stop.tag.as_deref(), Some(first.as_str()));
    assert!(stop.keys.iter().all(|key| key.code != "plan"));
    phone.until("close");
    let told = phone.first_key().told.unwrap();
    assert!(
        told.sentences
            .iter()
            .any(|said| said.starts_with("Planned anew")),
        "{told:?}"
    );
    let done = phone.core.bay(&phone.rig, &first, WIDTH).unwrap();
    assert!(!done.points.is_empty());
    phone.press(press(&phone.card(), "leave_plan"));
    assert_eq!(phone.card().card.tag.unwrap(), nose);
    let told = phone
        .press(press(&phone.card(), "rejoin_plan"))
        .told
        .unwrap();
    assert_eq!(told.kind, "follow");
    assert_ne!(phone.card().card.tag.unwrap_or_default(), nose);
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

#[test]
fn when_next_is_noted_ruled_and_put_off_by_its_keys() {
    let phone = phone();
    let (core, rig) = (&phone.core, &phone.rig);
    let press = |key: &str, typed: &[&str]| {
        let typed = typed.iter().map(|text| (*text).to_owned()).collect();
        core.when_press(rig, key, typed)
    };
    press("odometer", &["41234 mi"]).unwrap();
    assert!(press("odometer", &["forty"]).is_err());
    press("rule", &["months", "6"]).unwrap();
    press("event", &["hard_impact", "a curb"]).unwrap();
    let screen = core.when_next(rig).unwrap();
    assert_eq!(screen.rules.rules.len(), 1);
    let put_off = screen
        .keys
        .iter()
        .find(|key| key.code == "put_off 1")
        .unwrap();
    let Some(Ask::Choice { options, .. }) = put_off.asks.first() else {
        panic!("no days to put off to");
    };
    let until = options.first().unwrap().code.clone();
    assert!(
        press("put_off 1", &[&until, ""]).is_err(),
        "without a reason"
    );
    press("put_off 1", &[&until, "away until then"]).unwrap();
    press("drop_rule 1", &[]).unwrap();
    assert!(core.when_next(rig).unwrap().rules.rules.is_empty());
    assert!(press("no such key", &[]).is_err());
}
