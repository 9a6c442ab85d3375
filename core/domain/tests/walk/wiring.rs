//! A rig whose wiring is noted instead of what feeds its bays.

use crate::rehearsal::{
    AC_BAY, BANK, BATTERY, DC_BAY, SHORE, SOLAR, SWITCH, Walker, id, volts, wired_book,
};
use baywalk_domain::ids::{BayId, DeviceId, SourceId};
use baywalk_domain::isolation::{Passing, Wiring};
use baywalk_domain::rig::{Isolation, SupplyKind};
use baywalk_domain::walk::{Act, Away, NoException, Refusal};

fn source(n: u128) -> SourceId {
    SourceId::new(id(n))
}

fn bay(n: u128) -> BayId {
    BayId::new(id(n))
}

#[test]
fn what_feeds_a_bay_comes_out_of_the_wiring() {
    let book = wired_book();
    let reach = Wiring::of(&book).feeding();
    assert_eq!(reach.bay(bay(AC_BAY)), [source(SHORE)]);
    assert_eq!(reach.bay(bay(DC_BAY)), [source(SOLAR), source(BANK)]);
    assert_eq!(reach.bays_of(source(SHORE)), [bay(AC_BAY)]);
    assert_eq!(reach.meeting(source(BANK)), [source(SOLAR)]);
}

#[test]
fn shore_that_stays_keeps_its_bay_shut_and_leaves_the_other() {
    let mut walker = Walker::new(wired_book());
    walker.start();
    for (n, away) in [
        (SHORE, Away::Stays("needed for the fridge".to_owned())),
        (SOLAR, Away::Isolated("tagged".to_owned())),
        (BANK, Away::Isolated("tagged".to_owned())),
    ] {
        let source = source(n);
        walker.act(Act::Isolate { source, away }).unwrap();
    }
    let shut = Refusal::AliveByChoice {
        bay: bay(AC_BAY),
        feeding: source(SHORE),
    };
    assert_eq!(
        walker.act(Act::Open { bay: bay(AC_BAY) }).unwrap_err(),
        shut
    );
    walker.act(Act::Open { bay: bay(DC_BAY) }).unwrap();
}

#[test]
fn a_battery_does_not_leave_panels_that_reach_it() {
    let mut walker = Walker::new(wired_book());
    walker.start();
    let away = Away::Isolated("tagged".to_owned());
    let bank = Act::Isolate {
        source: source(BANK),
        away,
    };
    assert_eq!(
        walker.act(bank).unwrap_err(),
        Refusal::SourceFirst(source(SOLAR))
    );
}

#[test]
fn the_posts_stay_live_and_may_be_excepted_a_switched_set_may_not() {
    let mut walker = Walker::new(wired_book());
    walker.start();
    walker.isolate();
    walker.act(Act::Open { bay: bay(DC_BAY) }).unwrap();
    let except = |set: &str| Act::Except {
        device: DeviceId::new(id(BATTERY)),
        set: set.to_owned(),
        reason: "no switch upstream".to_owned(),
    };
    walker.act(except("bank")).unwrap();

    // The same bank behind a switch of its own: what the switch parts is proved dead, not excepted.
    let mut book = wired_book();
    for record in &mut book.sources {
        record.isolation = Isolation::Unplug;
        record.opens = None;
        record.kind = match record.supply {
            SupplyKind::Dc => baywalk_domain::rig::SourceKind::EngineLink,
            SupplyKind::Ac => record.kind,
        };
    }
    let mut walker = Walker::new(book);
    walker.start();
    walker.isolate();
    walker.act(Act::Open { bay: bay(DC_BAY) }).unwrap();
    let refused = walker.act(except("bank")).unwrap_err();
    assert_eq!(refused, Refusal::NoException(NoException::Switch));
}

#[test]
fn a_reading_that_is_live_names_what_still_reaches_it_first() {
    let mut walker = Walker::new(wired_book());
    walker.start();
    walker.isolate();
    walker.act(Act::Open { bay: bay(AC_BAY) }).unwrap();
    walker.known_live(AC_BAY, SupplyKind::Ac).unwrap();
    let check = walker.checks(SWITCH, SupplyKind::Ac).remove(0);
    let read = Act::Read {
        device: DeviceId::new(id(SWITCH)),
        check,
        volts: volts("118.0"),
    };
    let entry = walker.act(read).unwrap();
    assert_eq!(entry.shown.dead, Some(false));
    assert_eq!(entry.shown.suspects, [source(SHORE)]);
}

#[test]
fn a_controller_that_failed_passes_the_panels_on() {
    let mut book = wired_book();
    let battery = book
        .devices
        .iter_mut()
        .find(|device| device.id == DeviceId::new(id(BATTERY)));
    let battery = battery.unwrap();
    battery.kind = baywalk_domain::rig::DeviceKind::SolarController;
    let mut panels = battery.sets.first().unwrap().clone();
    panels.name = "panels".to_owned();
    let feed = |text: &str| baywalk_domain::rig::Feed::parse(text).unwrap();
    panels.from = vec![feed("S2")];
    battery.sets[0].from = vec![feed("BAT/panels"), feed("S3")];
    battery.sets.push(panels);
    let device = battery.id;
    let wiring = Wiring::of(&book);
    let built = wiring.reach(Passing::AsBuilt, |_| false);
    assert_eq!(built.set(device, "panels"), [source(SOLAR)]);
    let failed = wiring.reach(Passing::Failed, |_| false);
    assert_eq!(failed.set(device, "panels"), [source(SOLAR), source(BANK)]);
}
