//! Wild sequences of acts against a model of its own: whatever is tried in whatever order, no hand
//! comes to a terminal that is not proved dead, and no power to an open bay.

use crate::acts::{bay, driver, found, held, point};
use crate::next::obey;
use crate::rehearsal::{
    AC_BAY, BANK, DC_BAY, LINE, NEUTRAL, SHORE, SMELL, SOLAR, SWITCH, Walker, book, id, volts,
};
use baywalk_domain::coded::Coded;
use baywalk_domain::ids::{DeviceId, SourceId};
use baywalk_domain::isolation::{Meter, MeterCategory, checks_of};
use baywalk_domain::rig::{Check, SupplyKind};
use baywalk_domain::walk::{Act, AsFound, Away, Counted, Ending, Entry, Next, Scope, Seen};
use proptest::prelude::*;
use std::collections::{BTreeMap, BTreeSet};

/// What an outsider would write down of the AC bay, told only which acts were taken.
#[derive(Default)]
struct Witness {
    away: BTreeSet<SourceId>,
    open: bool,
    /// Pairs read since the meter was shown to work, by kind of reading.
    running: BTreeMap<SupplyKind, BTreeSet<Check>>,
    /// Pairs between two looks at a known live source.
    proved: BTreeSet<Check>,
}

impl Witness {
    fn forget(&mut self) {
        self.running.clear();
        self.proved.clear();
    }

    /// Takes an act in; what the clocks showed holds even where the act is struck later.
    fn sees(&mut self, entry: &Entry, struck: bool) {
        if entry.flags.lapse.is_some() {
            self.forget();
        }
        if struck {
            return;
        }
        match &entry.act {
            Act::Isolate { source, .. } => {
                self.forget();
                self.away.insert(*source);
            }
            Act::Restore { source } => {
                self.away.remove(source);
            }
            Act::Open { bay: of } if *of == bay(AC_BAY) => {
                self.forget();
                self.open = true;
            }
            Act::Close { bay: of, .. } if *of == bay(AC_BAY) => self.open = false,
            Act::Resume => self.forget(),
            Act::KnownLive {
                bay: of, supply, ..
            } if *of == bay(AC_BAY) => match self.running.remove(supply) {
                Some(read) if !read.is_empty() => self.proved.extend(read),
                _ => {
                    self.running.insert(*supply, BTreeSet::new());
                }
            },
            Act::Read { device, check, .. } if *device == DeviceId::new(id(SWITCH)) => {
                match entry.shown.dead {
                    Some(true) => {
                        if let Some(read) = self.running.get_mut(&check.supply) {
                            read.insert(check.clone());
                        }
                    }
                    _ => self.forget(),
                }
            }
            _ => {}
        }
    }

    fn knows_dead(&self, walker: &Walker) -> bool {
        let device = walker.book.device(DeviceId::new(id(SWITCH))).unwrap();
        checks_of(&device.sets)
            .iter()
            .all(|check| self.proved.contains(check))
    }
}

/// An act out of a hat, mostly at the wrong moment.
fn wild(walker: &Walker, choice: u8) -> Act {
    let device = walker.book.device(DeviceId::new(id(SWITCH))).unwrap();
    let checks = checks_of(&device.sets);
    let check = checks[usize::from(choice) % checks.len()].clone();
    let supply = SupplyKind::ALL[usize::from(choice) % 2];
    let source = SourceId::new(id([SHORE, SOLAR, BANK][usize::from(choice) % 3]));
    let of = bay(if choice.is_multiple_of(2) {
        AC_BAY
    } else {
        DC_BAY
    });
    match choice % 17 {
        0 => found(LINE, held()),
        1 => found(NEUTRAL, AsFound::Loose),
        2 => Act::PowerUp,
        3 => Act::Open { bay: of },
        4 => Act::Close {
            bay: of,
            counted: Counted::ALL,
        },
        5 => Act::Pause,
        6 => Act::Resume,
        7 => Act::Read {
            device: device.id,
            check,
            volts: volts("118"),
        },
        8 => Act::Read {
            device: device.id,
            check,
            volts: volts("0.1"),
        },
        9 => Act::KnownLive {
            bay: bay(AC_BAY),
            supply,
            place: "outlet".to_owned(),
            meter: Meter::contact("blue meter", MeterCategory::Three),
            volts: volts("120"),
        },
        10 => Act::Restore { source },
        11 => Act::Isolate {
            source,
            away: Away::Isolated(String::new()),
        },
        12 => Act::Strike {
            act: *walker.state().unwrap().standing.last().unwrap(),
        },
        13 => Act::Look {
            point: point(SMELL),
            seen: Seen::Clear,
        },
        14 => Act::SetTool {
            tool: driver(),
            at: crate::rehearsal::torque("36 lbf.in"),
        },
        15 => Act::End(Ending::Whole),
        _ => found(LINE, AsFound::LookedAt { tugged: true }),
    }
}

fn touches_ac(act: &Act) -> bool {
    matches!(act, Act::Found { point: of, found } if [point(LINE), point(NEUTRAL)].contains(of) && found.touches())
}

proptest! {
    #![proptest_config(ProptestConfig {
        cases: 800,
        failure_persistence: None,
        rng_seed: proptest::test_runner::RngSeed::Fixed(20_270_320),
        ..ProptestConfig::default()
    })]

    #[test]
    fn no_hand_comes_to_a_live_terminal_and_no_power_to_an_open_bay(
        choices in proptest::collection::vec(any::<u8>(), 120..160),
    ) {
        let mut walker = Walker::new(book());
        walker.act(Act::Start { person: "Ada".to_owned(), scope: Scope::Whole }).unwrap();
        let mut witness = Witness::default();
        for choice in choices {
            let Some(state) = walker.state() else { break };
            let next = walker.next(&state);
            let follows = choice < 215 && !matches!(next, Next::Unsafe(_) | Next::Resume);
            let act = if follows { obey(&walker, &next) } else { wild(&walker, choice) };
            let Ok(entry) = walker.act(act.clone()) else { continue };
            if let Act::Strike { .. } = act {
                witness = retell(&walker);
                continue;
            }
            if touches_ac(&act) {
                prop_assert!(witness.open && witness.knows_dead(&walker), "touched: {act:?}");
            }
            if matches!(act, Act::PowerUp) {
                prop_assert!(!witness.open, "power to an open bay");
            }
            if matches!(act, Act::Open { .. }) {
                prop_assert_eq!(witness.away.len(), 3, "opened with a source on");
            }
            witness.sees(&entry, false);
        }
    }
}

/// The witness told anew, without what was struck.
fn retell(walker: &Walker) -> Witness {
    let struck: BTreeSet<_> = walker
        .entries
        .iter()
        .filter_map(|entry| match entry.act {
            Act::Strike { act } => Some(act),
            _ => None,
        })
        .collect();
    let mut witness = Witness::default();
    for entry in &walker.entries {
        witness.sees(entry, struck.contains(&entry.id));
    }
    witness
}
