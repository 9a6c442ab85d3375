//! Taking power away: what goes first, what is met on the way, what stays live knowingly.

use crate::acts::{bay, found, held};
use crate::rehearsal::{
    AC_BAY, BANK, BATTERY, DC_BAY, LINE, POST, SHORE, SOLAR, SWITCH, Walker, book, id, volts,
};
use baywalk_domain::ids::{DeviceId, SourceId};
use baywalk_domain::isolation::Lapse;
use baywalk_domain::rig::BookChange;
use baywalk_domain::walk::{
    Act, AsFound, Away, Needs, NoException, ReadyAnswer, ReadyItem, Refusal,
};

#[test]
fn isolating_waits_for_the_list_before() {
    let mut walker = Walker::new(book());
    walker.begin();
    let away = Away::Isolated(String::new());
    let refused = walker.act(Act::Isolate {
        source: SourceId::new(id(SHORE)),
        away,
    });
    assert!(matches!(refused, Err(Refusal::NotReady(_))));
    let answer = ReadyAnswer::Without("in a hurry".into());
    let refused = walker.act(Act::Ready {
        item: ReadyItem::Body,
        answer,
    });
    assert_eq!(refused, Err(Refusal::MustHave(ReadyItem::Body)));
}

#[test]
fn every_source_goes_before_a_bay_opens_and_solar_before_the_battery() {
    let mut walker = Walker::new(book());
    walker.start();
    let isolate = |source| Act::Isolate {
        source: SourceId::new(id(source)),
        away: Away::Isolated(String::new()),
    };
    walker.act(isolate(SHORE)).unwrap();
    assert_eq!(
        walker.act(isolate(BANK)),
        Err(Refusal::SourceFirst(SourceId::new(id(SOLAR))))
    );
    walker.act(isolate(SOLAR)).unwrap();
    let open = Act::Open { bay: bay(AC_BAY) };
    assert_eq!(
        walker.act(open.clone()),
        Err(Refusal::SourceNotAway(SourceId::new(id(BANK))))
    );
    walker.act(isolate(BANK)).unwrap();
    walker.act(open).unwrap();
}

#[test]
fn a_source_met_on_the_way_locks_everything_until_it_is_away() {
    let mut walker = Walker::at_ac_bay();
    let mut met = walker.book.sources[0].clone();
    met.id = SourceId::new(id(19));
    met.code = crate::rehearsal::code("S9");
    walker
        .act(Act::Book(BookChange::Source(Box::new(met))))
        .unwrap();
    let refused = walker.act(found(LINE, held()));
    assert!(
        matches!(
            refused,
            Err(Refusal::Locked {
                needs: Needs::Source(_),
                ..
            })
        ),
        "{refused:?}"
    );
    let away = Away::Isolated("unplugged".into());
    walker
        .act(Act::Isolate {
            source: SourceId::new(id(19)),
            away,
        })
        .unwrap();
    let refused = walker.act(found(LINE, held()));
    assert!(
        matches!(
            refused,
            Err(Refusal::Locked {
                needs: Needs::Lapsed(Lapse::Isolation),
                ..
            })
        ),
        "{refused:?}"
    );
    walker.prove(AC_BAY, SWITCH);
    walker.act(found(LINE, held())).unwrap();
}

#[test]
fn a_bank_is_gone_on_at_by_exception_only_below_fifty_volts() {
    let mut high = book();
    high.sources[2].highest = Some(volts("58.4"));
    for (book, expected) in [(book(), None), (high, Some(NoException::TooHigh))] {
        let mut walker = Walker::new(book);
        walker.start();
        walker.isolate();
        walker.act(Act::Open { bay: bay(DC_BAY) }).unwrap();
        let except = Act::Except {
            device: DeviceId::new(id(BATTERY)),
            set: "bank".into(),
            reason: "its own posts; negative off and taped".into(),
        };
        let outcome = walker.act(except);
        match expected {
            None => {
                outcome.unwrap();
                walker
                    .act(found(POST, AsFound::LookedAt { tugged: true }))
                    .unwrap();
            }
            Some(why) => assert_eq!(outcome, Err(Refusal::NoException(why))),
        }
    }
}

#[test]
fn no_exception_for_ac() {
    let mut walker = Walker::new(book());
    walker.start();
    walker.isolate();
    walker.act(Act::Open { bay: bay(AC_BAY) }).unwrap();
    let except = Act::Except {
        device: DeviceId::new(id(SWITCH)),
        set: "shore".into(),
        reason: "quick look".into(),
    };
    assert_eq!(
        walker.act(except),
        Err(Refusal::NoException(NoException::Ac))
    );
}
