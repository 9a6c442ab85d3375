//! A thing in a bay that has terminals, and the sets of conductors that reach it.

use super::{Code, Feed};
use crate::coded::coded;
use crate::ids::{BayId, DeviceId};

coded! {
    /// The kinds of device.
    DeviceKind as "device-kind" {
        /// Shore inlet or cord reel.
        Inlet = "inlet",
        /// Surge or power protection device.
        SurgeDevice = "surge_device",
        /// Transfer switch.
        TransferSwitch = "transfer_switch",
        /// Distribution panel, AC side.
        AcPanel = "ac_panel",
        /// Distribution panel, DC side.
        DcPanel = "dc_panel",
        /// Converter or charger.
        Converter = "converter",
        /// Inverter, or inverter with charger.
        Inverter = "inverter",
        /// Battery bank.
        BatteryBank = "battery_bank",
        /// Single battery.
        Battery = "battery",
        /// High-current fuse in its block.
        FuseBlock = "fuse_block",
        /// Shunt of a battery monitor.
        Shunt = "shunt",
        /// Busbar.
        Busbar = "busbar",
        /// Disconnect switch or contactor.
        Disconnect = "disconnect",
        /// Solar charge controller.
        SolarController = "solar_controller",
        /// DC-DC charger or isolator.
        DcLink = "dc_link",
        /// Hydraulic pump and its solenoids.
        HydraulicPump = "hydraulic_pump",
        /// Motor of a slide, jack or step, with its control.
        Actuator = "actuator",
        /// Control board.
        ControlBoard = "control_board",
        /// Water pump.
        WaterPump = "water_pump",
        /// Generator.
        Generator = "generator",
        /// Outlet.
        Outlet = "outlet",
        /// Chassis or equipment ground bond.
        GroundBond = "ground_bond",
        /// Junction box or splice.
        JunctionBox = "junction_box",
        /// Gas detector or alarm.
        Detector = "detector",
        /// Plug or socket to a tow vehicle.
        TowSocket = "tow_socket",
        /// Anything else.
        Other = "other",
    }
}

coded! {
    /// Alternating or direct current.
    SupplyKind as "supply-kind" {
        /// Alternating.
        Ac = "ac",
        /// Direct.
        Dc = "dc",
    }
}

coded! {
    /// Which conductors a set has.
    SetSystem as "set-system" {
        /// Two lines, neutral, equipment ground: 120/240 V.
        SplitPhase = "split_phase",
        /// One line, neutral, equipment ground: 120 V.
        SinglePhase = "single_phase",
        /// Positive and negative, with the chassis.
        Dc = "dc",
        /// Equipment ground and bonds alone.
        Bond = "bond",
    }
}

coded! {
    /// One conductor of a set.
    Conductor as "conductor" {
        /// Line 1.
        L1 = "L1",
        /// Line 2.
        L2 = "L2",
        /// The one line of a single-phase set.
        L = "L",
        /// Neutral.
        N = "N",
        /// Equipment ground.
        G = "G",
        /// DC positive.
        Plus = "plus",
        /// DC negative.
        Minus = "minus",
        /// The chassis.
        Chassis = "chassis",
    }
}

impl SetSystem {
    /// The conductors of the set, the current-carrying ones first.
    #[must_use]
    pub const fn conductors(self) -> &'static [Conductor] {
        match self {
            Self::SplitPhase => &[Conductor::L1, Conductor::L2, Conductor::N, Conductor::G],
            Self::SinglePhase => &[Conductor::L, Conductor::N, Conductor::G],
            Self::Dc => &[Conductor::Plus, Conductor::Minus, Conductor::Chassis],
            Self::Bond => &[Conductor::G, Conductor::Chassis],
        }
    }

    /// The lines of the set: what can differ from another set's lines.
    #[must_use]
    pub const fn lines(self) -> &'static [Conductor] {
        match self {
            Self::SplitPhase => &[Conductor::L1, Conductor::L2],
            Self::SinglePhase => &[Conductor::L],
            Self::Dc => &[Conductor::Plus],
            Self::Bond => &[],
        }
    }

    /// What kinds of reading the set needs: AC then DC for an AC set and for bonds, DC for a DC set.
    #[must_use]
    pub const fn readings(self) -> &'static [SupplyKind] {
        match self {
            Self::SplitPhase | Self::SinglePhase | Self::Bond => &[SupplyKind::Ac, SupplyKind::Dc],
            Self::Dc => &[SupplyKind::Dc],
        }
    }
}

/// One group of conductors that arrives at a device together, such as "shore in".
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ConductorSet {
    /// Its name within the device, unique there.
    pub name: String,
    /// Which conductors it has.
    pub system: SetSystem,
    /// What it is wired to: the source or the sets from which its power comes, in this device too.
    /// Empty where nobody noted it: then it counts as fed by everything.
    pub from: Vec<Feed>,
}

/// One pair of conductors that must read dead.
#[derive(Debug, Clone, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Check {
    /// Name of the first conductor's set.
    pub set: String,
    /// The first conductor.
    pub from: Conductor,
    /// Name of the second conductor's set: the same, or another one of the device.
    pub other_set: String,
    /// The second conductor.
    pub to: Conductor,
    /// Read as AC or as DC.
    pub supply: SupplyKind,
}

/// A device of a rig.
#[derive(Debug, Clone, PartialEq)]
pub struct Device {
    /// Its name for the machine.
    pub id: DeviceId,
    /// Its name for people.
    pub code: Code,
    /// The bay it is in.
    pub bay: BayId,
    /// What it is.
    pub name: String,
    /// Its kind.
    pub kind: DeviceKind,
    /// The sets of conductors that reach it.
    pub sets: Vec<ConductorSet>,
    /// The people's codes of sources whose voltage no switch keeps from this device, where that does
    /// not come out of the wiring.
    pub unswitched: Vec<Code>,
    /// Whether it is no longer part of the rig.
    pub retired: bool,
}

impl Device {
    /// The set with a name.
    #[must_use]
    pub fn set(&self, name: &str) -> Option<&ConductorSet> {
        self.sets.iter().find(|set| set.name == name)
    }
}
