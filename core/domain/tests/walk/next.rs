//! Obeying what is next leads through the whole walk.

use crate::acts::{driver, good, measure, moved};
use crate::rehearsal::{Walker, book, torque, volts};
use baywalk_domain::isolation::{Meter, MeterCategory};
use baywalk_domain::walk::{
    Act, Angle, AsFound, AsLeft, Away, Counted, Ending, Next, ReadyAnswer, Seen, Test, summary,
};

#[test]
fn following_what_is_next_leads_through_the_whole_walk() {
    let mut walker = Walker::new(book());
    walker.begin();
    for _ in 0..200 {
        let state = walker.state().unwrap();
        let act = obey(&walker, &walker.next(&state));
        let ends = matches!(act, Act::End(_));
        walker.act(act).unwrap();
        if ends {
            let state =
                baywalk_domain::walk::WalkState::fold(&walker.entries, &walker.book).unwrap();
            let sum = summary(&state, &walker.book);
            assert_eq!((sum.done, sum.total, sum.not_judged.len()), (5, 5, 0));
            return;
        }
    }
    panic!("the walk did not end");
}

pub(crate) fn obey(walker: &Walker, next: &Next) -> Act {
    match next {
        Next::Ready(item) => Act::Ready {
            item: *item,
            answer: ReadyAnswer::Done,
        },
        Next::Isolate(source) => Act::Isolate {
            source: *source,
            away: Away::Isolated(String::new()),
        },
        Next::Open(bay) => Act::Open { bay: *bay },
        Next::Except { device, set } => Act::Except {
            device: *device,
            set: set.clone(),
            reason: "no switch upstream".into(),
        },
        Next::KnownLive { bay, supply, .. } => Act::KnownLive {
            bay: *bay,
            supply: *supply,
            place: "outlet".into(),
            meter: Meter::contact("blue meter", MeterCategory::Three),
            volts: volts("120"),
        },
        Next::Read { device, check } => Act::Read {
            device: *device,
            check: check.clone(),
            volts: volts("0"),
        },
        Next::SetTool(setting) => Act::SetTool {
            tool: setting.tool,
            at: setting.at.clone(),
        },
        Next::Point(id) => match &walker.book.point(*id).unwrap().kind {
            baywalk_domain::rig::PointKind::Look(_) => Act::Look {
                point: *id,
                seen: Seen::Clear,
            },
            baywalk_domain::rig::PointKind::Terminal(terminal) => {
                let found = match terminal.fastening.kind {
                    baywalk_domain::rig::FasteningKind::PressureScrew => moved(Angle::Hair),
                    baywalk_domain::rig::FasteningKind::PushIn => AsFound::Held(Test::Tug),
                    _ => AsFound::LookedAt { tugged: true },
                };
                Act::Found { point: *id, found }
            }
        },
        Next::Left(id) => Act::Left {
            point: *id,
            left: AsLeft::Set {
                torque: torque("45 lbf.in"),
                tool: driver(),
            },
        },
        Next::Close(bay) => Act::Close {
            bay: *bay,
            counted: Counted::ALL,
        },
        Next::PowerUp => Act::PowerUp,
        Next::Restore(source) => Act::Restore { source: *source },
        Next::Measure(step) => measure(*step, good(*step)),
        Next::End => Act::End(Ending::Whole),
        Next::Resume | Next::Unsafe(_) => panic!("not expected: {next:?}"),
    }
}
