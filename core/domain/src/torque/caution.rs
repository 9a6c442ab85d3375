//! What the hand should know before it touches a terminal.

use super::figure::Figure;
use super::finding::{crowded, size_outside};
use super::{Basis, Caution, Past, Target};
use crate::published::{Known, Standing};
use crate::rig::{
    FasteningKind, Landing, Locking, Material, Nut, Recheck, Role, Strands, Terminal, ThreadState,
    Washer,
};
use crate::units::TorqueUnit;

/// By how much a maker's figure may differ from a table before the label is read again; ours.
const FAR: f64 = 3.0;

/// Every caution that applies, the gravest first.
pub(super) fn cautions(terminal: &Terminal, past: Past, figure: &Figure) -> Vec<Caution> {
    [
        live(terminal).as_slice(),
        &doubtful(terminal, figure),
        &joint(terminal),
        &history(terminal, past, figure),
    ]
    .concat()
    .into_iter()
    .filter_map(|(applies, caution)| applies.then_some(caution))
    .collect()
}

type Asked = (bool, Caution);

/// What can burn or kill.
fn live(terminal: &Terminal) -> [Asked; 2] {
    use FasteningKind as K;
    let kind = terminal.fastening.kind;
    [
        (
            matches!(kind, K::BatteryPost | K::CellLink),
            Caution::BatteryLive,
        ),
        (
            matches!(kind, K::Blade | K::Plug | K::PlugOnBreaker),
            Caution::ZeroCurrent,
        ),
    ]
}

/// What makes a figure doubtful.
fn doubtful(terminal: &Terminal, figure: &Figure) -> [Asked; 8] {
    let threaded = terminal.fastening.kind.takes_torque();
    let basis = figure.target.as_ref().map(|target| &target.basis);
    let from_memory = matches!(basis, Some(Basis::Table { table, .. })
        if table.table().is_some_and(|table| table.head().known == Known::Memory));
    let control = terminal.role == Role::Control && terminal.maker.is_none() && threaded;
    [
        (
            threaded && terminal.thread_state == ThreadState::Greased,
            Caution::GreasedThread,
        ),
        (foot_pounds(terminal), Caution::FootPounds),
        (far_from_table(figure), Caution::FarFromTable),
        (control, Caution::ControlCircuit),
        (
            matches!(basis, Some(Basis::Calculation(_))),
            Caution::Calculated,
        ),
        (from_memory, Caution::FromMemory),
        (tables_differ(figure), Caution::TablesDiffer),
        (
            terminal.fastening.drives.len() > 1,
            Caution::CombinationDrive,
        ),
    ]
}

/// What the joint itself asks for.
fn joint(terminal: &Terminal) -> [Asked; 10] {
    let fastening = &terminal.fastening;
    let bare_fine = terminal.wire.strands == Strands::Fine && fastening.landing == Landing::Bare;
    let wing = fastening.nut == Nut::Wing || fastening.kind == FasteningKind::WingNut;
    [
        (crowded(terminal).is_some(), Caution::Crowded),
        (size_outside(terminal).is_some(), Caution::SizeOutside),
        (
            terminal.wire.material == Material::Aluminium,
            Caution::Aluminium,
        ),
        (
            fastening.kind.takes_torque() && bare_fine,
            Caution::FineStrands,
        ),
        (fastening.nut == Nut::OverJam, Caution::HoldJamNut),
        (fastening.landing == Landing::Fork, Caution::ForkLug),
        (wing, Caution::WingNut),
        (fastening.washer == Washer::Spring, Caution::SpringWasher),
        (fastening.washer == Washer::Split, Caution::SplitWasher),
        (fastening.nut == Nut::Nylon, Caution::NylonNut),
    ]
}

/// What was done to it or is said of it.
fn history(terminal: &Terminal, past: Past, figure: &Figure) -> [Asked; 6] {
    let locking = terminal.fastening.locking;
    let recheck = terminal.maker.as_ref().map(|maker| maker.recheck);
    let stranded = figure.target.is_none() && terminal.fastening.kind.takes_torque();
    [
        (locking == Locking::ThreadLocker, Caution::ThreadLocker),
        (locking == Locking::WitnessMark, Caution::MarkShowsRotation),
        (recheck == Some(Recheck::FullValue), Caution::MakerFullValue),
        (recheck == Some(Recheck::Never), Caution::MakerNever),
        (
            past.moved_running == 1 && !past.spoiled,
            Caution::MovedBefore,
        ),
        (stranded, Caution::OutOfServiceIfLoose),
    ]
}

/// Whether foot-pounds stand where inch-pounds are usual: at any terminal screw, and at a stud or
/// post below 5/16 in (8 mm); common practice, no source.
fn foot_pounds(terminal: &Terminal) -> bool {
    use FasteningKind as K;
    let stated = terminal.maker.as_ref().map(|maker| maker.torque.unit());
    let small = terminal
        .fastening
        .thread
        .as_ref()
        .is_some_and(|t| t.diameter_mm() < 7.9);
    let screw = matches!(
        terminal.fastening.kind,
        K::PressureScrew | K::DeviceScrew | K::BoardScrew | K::BlockScrew | K::ChassisScrew
    );
    stated == Some(TorqueUnit::FootPounds) && (screw || small)
}

/// Whether a maker's figure is far from every published one for such a part.
fn far_from_table(figure: &Figure) -> bool {
    let newton_metres = |target: &Target| target.torque.quantity().newton_metres();
    let maker = figure
        .target
        .as_ref()
        .filter(|target| matches!(target.basis, Basis::Maker { .. }))
        .map(newton_metres);
    maker.is_some_and(|maker| {
        !figure.others.is_empty()
            && figure.others.iter().map(newton_metres).all(|other| {
                let ratio = maker / other;
                !(1.0 / FAR..=FAR).contains(&ratio)
            })
    })
}

/// Whether tables that could each be the target say different things.
fn tables_differ(figure: &Figure) -> bool {
    let default = |target: &Target| match target.basis {
        Basis::Table { table, .. } => table
            .table()
            .is_some_and(|table| table.head().standing == Standing::Default),
        _ => false,
    };
    figure
        .target
        .as_ref()
        .filter(|target| default(target))
        .is_some_and(|target| {
            let torque = target.torque.quantity().newton_metres();
            figure
                .others
                .iter()
                .filter(|other| default(other))
                .any(|other| (other.torque.quantity().newton_metres() / torque - 1.0).abs() > 0.01)
        })
}
