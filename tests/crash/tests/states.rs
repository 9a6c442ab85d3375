//! Power cuts at every boundary of a whole walk: nothing corrupt, no acknowledged act lost, no
//! photo entered that is not there; and the same run finds what careless set-ups lose.

use baywalk_crash::controls::Control;
use baywalk_crash::disk::Order;
use baywalk_crash::states::{Run, every_state};
use baywalk_crash::work::Work;

/// The fewest states of the run by itself; its controls are not counted.
const STATES: usize = 10_000;

#[test]
fn a_power_cut_at_any_boundary_loses_no_acknowledged_act() {
    let work = Work::walks("sample-trailer", 1, 6);
    let root = tempfile::tempdir().unwrap();
    let done = work.record(root.path());
    assert_eq!(done.photos.len(), 6);
    let run = |order, each| Run {
        order,
        each,
        from: 0,
        seed: 20,
    };
    let mut states = 0;
    for (order, each) in [(Order::Any, 1), (Order::Ordered, 3)] {
        let tally = every_state(&work, &done, &done.ops, run(order, each));
        assert!(tally.is_sound(), "{order:?}: {tally:?}");
        assert!(tally.gone_on > tally.states / 40);
        states += tally.states;
    }
    assert!(states >= STATES, "{states} states");

    for control in Control::ALL {
        let ops = control.of(&done.ops);
        let tally = every_state(&work, &done, &ops, run(Order::Any, 16));
        let found = match control {
            Control::Normal | Control::NoFolders => tally.lost + tally.photos_lost,
            Control::Off => tally.corrupt.min(tally.lost),
        };
        assert!(
            found > 0,
            "{control:?} loses nothing: the run is void; {tally:?}"
        );
    }
}
