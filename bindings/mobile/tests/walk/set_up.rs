//! A rig set up, photographed and pinned.

use super::*;

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
