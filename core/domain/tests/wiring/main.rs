//! Properties of the wiring, on random rigs.
#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test that can't go on stops with the reason"
)]

mod rigs;

use baywalk_domain::ids::SourceId;
use baywalk_domain::isolation::{Passing, Reach, Wiring, away_order};
use baywalk_domain::rig::{Book, Feed, Isolation, Presence, Source};
use proptest::prelude::*;
use rigs::rig;

/// Every set with the sources that reach it.
fn told(book: &Book, reach: &Reach<'_>) -> Vec<Vec<SourceId>> {
    let sets = book.devices.iter();
    let sets = sets.flat_map(|device| device.sets.iter().map(move |set| (device.id, &set.name)));
    sets.map(|(device, set)| reach.set(device, set).to_vec())
        .collect()
}

fn within(less: &[Vec<SourceId>], more: &[Vec<SourceId>]) -> bool {
    less.iter()
        .zip(more)
        .all(|(less, more)| less.iter().all(|source| more.contains(source)))
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2_000))]

    /// Once all is taken away, only posts, panels and what can't be taken away feed anything,
    /// whatever the order was in which it was done.
    #[test]
    fn no_order_leaves_a_bay_fed(book in rig(), seed in any::<u64>()) {
        let wiring = Wiring::of(&book);
        let mut order = away_order(book.live_sources());
        let length = order.len().max(1);
        order.rotate_left(usize::try_from(seed).unwrap_or(0) % length);
        let mut gone: Vec<SourceId> = Vec::new();
        let mut before = told(&book, &wiring.feeding());
        for source in order {
            gone.push(source.id);
            let now = told(&book, &wiring.reach(Passing::AsBuilt, |s| gone.contains(&s.id)));
            prop_assert!(within(&now, &before), "taking {} away fed something", source.code);
            before = now;
        }
        prop_assert_eq!(&before, &told(&book, &wiring.staying()));
        for source in before.iter().flatten() {
            let source = book.source(*source).unwrap();
            let lasts = source.kind.is_lasting() || source.isolation == Isolation::Never;
            prop_assert!(lasts || book.devices.iter().any(|d| d.unswitched.contains(&source.code)));
        }
    }

    /// A wire more at a set whose wiring is noted takes nothing away: neither a source that
    /// reaches a set nor a step of taking power away.
    #[test]
    fn a_feed_more_never_takes_anything_away(book in rig(), at in any::<prop::sample::Index>(), to in any::<prop::sample::Index>()) {
        let mut more = book.clone();
        let feeds: Vec<Feed> = book.sources.iter().map(|s| Feed::Source(s.code.clone())).collect();
        let mut sets: Vec<_> = more.devices.iter_mut().flat_map(|d| &mut d.sets).filter(|s| !s.from.is_empty()).collect();
        prop_assume!(!sets.is_empty() && !feeds.is_empty());
        let place = at.index(sets.len());
        sets[place].from.push(feeds[to.index(feeds.len())].clone());
        for passing in [Passing::AsBuilt, Passing::Failed] {
            let less = told(&book, &Wiring::of(&book).reach(passing, |_| false));
            let grown = told(&more, &Wiring::of(&more).reach(passing, |_| false));
            // A source that was named nowhere reached everything; now that it is placed it need not.
            let placed = |source: &SourceId| {
                let code = &book.source(*source).unwrap().code;
                let mut sets = book.devices.iter().flat_map(|d| &d.sets);
                sets.any(|set| set.from.iter().any(|feed| matches!(feed, Feed::Source(of) if of == code)))
            };
            let less: Vec<Vec<SourceId>> = less.into_iter().map(|s| s.into_iter().filter(placed).collect()).collect();
            prop_assert!(within(&less, &grown));
        }
        let steps = |book: &Book| away_order(book.live_sources()).iter().map(|s| s.id).collect::<Vec<_>>();
        prop_assert_eq!(steps(&book), steps(&more));
    }

    /// What nobody noted counts as connected, a source that nobody is sure of as there.
    #[test]
    fn what_is_not_known_counts_as_connected(book in rig()) {
        let live: Vec<SourceId> = book.live_sources().map(|s| s.id).collect();
        let wiring = Wiring::of(&book);
        let reach = wiring.feeding();
        for device in &book.devices {
            for set in device.sets.iter().filter(|set| set.from.is_empty()) {
                prop_assert_eq!(reach.set(device.id, &set.name), &live[..]);
            }
        }
        let had = |presence: Presence| {
            let mut book = book.clone();
            for source in &mut book.sources { source.presence = presence; }
            told(&book, &Wiring::of(&book).feeding())
        };
        prop_assert_eq!(had(Presence::NotSure), had(Presence::Have));
    }

    /// A device that fails passes more, never less.
    #[test]
    fn a_device_that_fails_passes_more(book in rig(), away in any::<u8>()) {
        let wiring = Wiring::of(&book);
        let is_away = |source: &Source| {
            let place = book.sources.iter().position(|s| s.id == source.id).unwrap_or(0);
            away >> (place % 8) & 1 == 1
        };
        let built = told(&book, &wiring.reach(Passing::AsBuilt, is_away));
        prop_assert!(within(&built, &told(&book, &wiring.reach(Passing::Failed, is_away))));
    }
}
