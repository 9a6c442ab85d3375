//! Power cuts during a backup, a restore, a recovery and the opening of an older store: what was
//! there stays, or what was asked for is there, and nothing between.

#![expect(
    clippy::print_stdout,
    reason = "the long run's figures are read from what it prints"
)]

use baywalk_crash::deeds::Deed;
use baywalk_crash::disk::Order;
use baywalk_crash::states::Run;

#[test]
fn a_power_cut_during_a_deed_leaves_what_was_or_what_was_asked_for() {
    for deed in Deed::ALL {
        let done = deed.record();
        for (order, each) in [(Order::Any, 2), (Order::Ordered, 4)] {
            let (from, seed) = (0, 40);
            let tally = done.every_state(Run {
                order,
                each,
                from,
                seed,
            });
            assert!(tally.is_sound(), "{deed:?}, {order:?}: {tally:?}");
            assert!(tally.states > 20, "{deed:?}, {order:?}: {tally:?}");
        }
    }
}

#[test]
fn a_failing_call_during_a_deed_leaves_what_was_or_what_was_asked_for() {
    let each = match std::env::var_os("BAYWALK_LONG") {
        Some(_) => 1,
        None => 29,
    };
    for deed in Deed::ALL {
        let tally = deed.every_fault(each);
        println!("{deed:?}: {tally:?}");
        assert!(tally.is_sound(), "{deed:?}: {tally:?}");
        assert!(tally.errors > tally.runs / 4, "{deed:?}: {tally:?}");
    }
}
