//! The readings of powering up, in order (common practice, no source).

use crate::coded::coded;
use crate::rig::{Book, RigKind, ServiceKind, SourceKind};
use crate::units::{Stated, VoltageUnit};

coded! {
    /// One reading or test while power comes back.
    ReadingStep as "reading" {
        /// Polarity of the DC bus, before its negative goes back on.
        DcPolarity = "dc_polarity",
        /// Voltage of the DC bus.
        DcBus = "dc_bus",
        /// Supply outlet, line 1 to neutral, before plugging in.
        SupplyL1N = "supply_l1_n",
        /// Supply outlet, line 2 to neutral.
        SupplyL2N = "supply_l2_n",
        /// Supply outlet, line to line.
        SupplyL1L2 = "supply_l1_l2",
        /// Supply outlet, line 1 to ground.
        SupplyLG = "supply_l_g",
        /// Supply outlet, neutral to ground.
        SupplyNG = "supply_n_g",
        /// Body metal to a rod in damp soil, before touching.
        HotSkin = "hot_skin",
        /// An outlet on leg 1, line to neutral.
        Leg1 = "leg_1",
        /// An outlet on leg 2, line to neutral.
        Leg2 = "leg_2",
        /// The outlet on leg 1, line to ground.
        OutletLG = "outlet_l_g",
        /// An outlet, neutral to ground.
        OutletNG = "outlet_n_g",
        /// Leg 1 with a plain load on leg 1.
        Load1Leg1 = "load_1_leg_1",
        /// Leg 2 with a plain load on leg 1.
        Load1Leg2 = "load_1_leg_2",
        /// Leg 1 with a plain load on leg 2.
        Load2Leg1 = "load_2_leg_1",
        /// Leg 2 with a plain load on leg 2.
        Load2Leg2 = "load_2_leg_2",
        /// Ground-fault and arc-fault devices tested.
        Gfci = "gfci",
        /// The inverter alone, at an outlet.
        InverterAlone = "inverter_alone",
        /// The generator alone, transfer seen.
        GeneratorAlone = "generator_alone",
        /// Gas detector and alarms alive.
        Detectors = "detectors",
        /// Breakaway switch of a trailer.
        Breakaway = "breakaway",
    }
}

impl ReadingStep {
    /// Whether it is a voltage; else it is a test that works or does not.
    #[must_use]
    pub const fn is_voltage(self) -> bool {
        !matches!(
            self,
            Self::DcPolarity
                | Self::Gfci
                | Self::GeneratorAlone
                | Self::Detectors
                | Self::Breakaway
        )
    }

    /// Whether a plain load is switched on for it.
    #[must_use]
    pub const fn is_loaded(self) -> bool {
        matches!(
            self,
            Self::Load1Leg1 | Self::Load1Leg2 | Self::Load2Leg1 | Self::Load2Leg2
        )
    }

    /// Whether it is taken before shore is plugged in.
    #[must_use]
    pub const fn is_before_shore(self) -> bool {
        matches!(
            self,
            Self::SupplyL1N | Self::SupplyL2N | Self::SupplyL1L2 | Self::SupplyLG | Self::SupplyNG
        )
    }

    /// The kind of source that it speaks of: no longer asked for where that is left away.
    #[must_use]
    pub const fn source(self) -> Option<SourceKind> {
        match self {
            Self::DcPolarity => Some(SourceKind::HouseBattery),
            _ if self.is_before_shore() => Some(SourceKind::Shore),
            _ => self.after(),
        }
    }

    /// The source that must be back for it; `None` where it needs none.
    #[must_use]
    pub const fn after(self) -> Option<SourceKind> {
        match self {
            Self::DcPolarity
            | Self::SupplyL1N
            | Self::SupplyL2N
            | Self::SupplyL1L2
            | Self::SupplyLG
            | Self::SupplyNG => None,
            Self::DcBus | Self::Detectors | Self::Breakaway => Some(SourceKind::HouseBattery),
            Self::HotSkin
            | Self::Leg1
            | Self::Leg2
            | Self::OutletLG
            | Self::OutletNG
            | Self::Load1Leg1
            | Self::Load1Leg2
            | Self::Load2Leg1
            | Self::Load2Leg2
            | Self::Gfci => Some(SourceKind::Shore),
            Self::InverterAlone => Some(SourceKind::Inverter),
            Self::GeneratorAlone => Some(SourceKind::Generator),
        }
    }
}

/// What came of a reading.
#[derive(Debug, Clone, PartialEq)]
pub enum Measured {
    /// A voltage.
    Volts(Stated<VoltageUnit>),
    /// The test did what it should.
    Works,
    /// It did not.
    Fails,
    /// It was not taken, and why.
    Not(String),
}

/// A reading with the place where it was taken.
#[derive(Debug, Clone, PartialEq)]
pub struct Reading {
    /// Which one.
    pub step: ReadingStep,
    /// Where: a place that needs no cover off.
    pub place: String,
    /// What came of it.
    pub measured: Measured,
}

/// The readings that powering up this rig asks for, in order.
#[must_use]
pub fn steps_of(book: &Book) -> Vec<ReadingStep> {
    use crate::coded::Coded;
    let has = |kind| book.live_sources().any(|source| source.kind == kind);
    let split = book.rig.service == ServiceKind::Amp50;
    let shore = book.rig.service != ServiceKind::None && has(SourceKind::Shore);
    let battery = has(SourceKind::HouseBattery);
    let wanted = |step: &ReadingStep| match step {
        ReadingStep::DcPolarity | ReadingStep::DcBus | ReadingStep::Detectors => battery,
        ReadingStep::SupplyL2N
        | ReadingStep::SupplyL1L2
        | ReadingStep::Leg2
        | ReadingStep::Load1Leg2
        | ReadingStep::Load2Leg1
        | ReadingStep::Load2Leg2 => shore && split,
        ReadingStep::SupplyL1N
        | ReadingStep::SupplyLG
        | ReadingStep::SupplyNG
        | ReadingStep::HotSkin
        | ReadingStep::Leg1
        | ReadingStep::OutletLG
        | ReadingStep::OutletNG
        | ReadingStep::Load1Leg1
        | ReadingStep::Gfci => shore,
        ReadingStep::InverterAlone => has(SourceKind::Inverter),
        ReadingStep::GeneratorAlone => has(SourceKind::Generator),
        ReadingStep::Breakaway => book.rig.kind == RigKind::Trailer,
    };
    ReadingStep::ALL.iter().copied().filter(wanted).collect()
}
