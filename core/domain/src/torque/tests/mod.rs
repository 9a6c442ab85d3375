//! What the advice must hold for every terminal, and the way of each kind of fastening.

mod figures;
mod properties;
mod ways;

use crate::rig::{
    BoltGrade, Drive, DriveKind, Fastening, FasteningKind as K, Landing, MakerTorque, Nut, Recheck,
    Terminal, Thread, TorqueBasis, WireSize,
};
use crate::torque::{Action, Advice, FoundBy, LeftBy, Past, Practice, advise};
use crate::units::{Stated, StatedLength};

pub(super) fn of(kind: K) -> Terminal {
    Terminal::of(Fastening::of(kind))
}

pub(super) fn socket(text: &str) -> Drive {
    Drive {
        across: Some(StatedLength::parse(text).unwrap()),
        ..Drive::unsized_of(DriveKind::Allen)
    }
}

pub(super) fn lug_screw() -> Terminal {
    let mut terminal = of(K::PressureScrew);
    terminal.fastening.drives = vec![socket("5/32 in")];
    terminal.wire.size = Some(WireSize::Awg(6));
    terminal
}

pub(super) fn stud(thread: &str, grade: BoltGrade) -> Terminal {
    let mut terminal = of(K::Stud);
    terminal.fastening.thread = Some(Thread::parse(thread).unwrap());
    terminal.fastening.grade = Some(grade);
    terminal.fastening.landing = Landing::Ring;
    terminal.fastening.nut = Nut::Plain;
    terminal.fastening.metal_to_metal = true;
    terminal
}

pub(super) fn with_maker(mut terminal: Terminal, figure: &str) -> Terminal {
    terminal.maker = Some(MakerTorque {
        torque: Stated::parse_pair(figure).unwrap(),
        basis: TorqueBasis::Label,
        source: "label in the cover".to_owned(),
        recheck: Recheck::Unsaid,
    });
    terminal
}

pub(super) fn plain(terminal: &Terminal) -> Advice {
    advise(terminal, Past::default(), &Practice::default())
}

pub(super) fn way(advice: &Advice) -> (Action, FoundBy, LeftBy) {
    (advice.action, advice.found_by, advice.left_by)
}
