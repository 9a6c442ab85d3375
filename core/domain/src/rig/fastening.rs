//! What holds a conductor in its place.

use super::Thread;
use crate::coded::coded;
use crate::units::StatedLength;

coded! {
    /// The kinds of fastening, each with its own way to check and to set right.
    FasteningKind as "fastening" {
        /// Set screw or pressure plate of a listed pressure-wire connector.
        PressureScrew = "pressure_screw",
        /// Split-bolt connector.
        SplitBolt = "split_bolt",
        /// Binding screw of a wiring device.
        DeviceScrew = "device_screw",
        /// Terminal screw of a control board, relay or contactor.
        BoardScrew = "board_screw",
        /// Screw of a metric terminal block.
        BlockScrew = "block_screw",
        /// Lug on a stud, held by a nut.
        Stud = "stud",
        /// Bolted lug or busbar joint, metal to metal.
        Bolt = "bolt",
        /// Clamp or lug on a battery's own post.
        BatteryPost = "battery_post",
        /// Wing nut.
        WingNut = "wing_nut",
        /// Head that breaks away at its torque.
        ShearBolt = "shear_bolt",
        /// Push-in clamp.
        PushIn = "push_in",
        /// Spring clamp.
        SpringClamp = "spring_clamp",
        /// Clamp with a lever.
        Lever = "lever",
        /// Push-on blade.
        Blade = "blade",
        /// Breaker pushed on its stab.
        PlugOnBreaker = "plug_on_breaker",
        /// Breaker bolted to its bus.
        BoltOnBreaker = "bolt_on_breaker",
        /// Plug of solar or high current.
        Plug = "plug",
        /// Twist-on wire connector.
        WireConnector = "wire_connector",
        /// Crimped barrel or splice.
        Crimp = "crimp",
        /// Self-piercing device.
        Piercing = "piercing",
        /// Braid or screw on the chassis.
        ChassisScrew = "chassis_screw",
        /// Sealed device, opened by its maker alone.
        Sealed = "sealed",
        /// Link between cells of a battery.
        CellLink = "cell_link",
        /// Small lead that measures.
        SenseLead = "sense_lead",
    }
}

coded! {
    /// What a tool fits into.
    DriveKind as "drive" {
        /// A slot.
        Slotted = "slotted",
        /// A hexagon around the head.
        Hex = "hex",
        /// A hexagonal socket.
        Allen = "allen",
        /// A square socket.
        Square = "square",
        /// A cross.
        Cross = "cross",
        /// A star socket.
        Star = "star",
    }
}

/// What a tool fits into, with its size where known.
///
/// A screw with several drives has several of these: the torque goes by the tool that is used
/// (note to NEC Annex I tables I.1 and I.2, second hand).
#[derive(Debug, Clone, PartialEq)]
pub struct Drive {
    /// The kind.
    pub kind: DriveKind,
    /// Size across flats of a hexagon or socket.
    pub across: Option<StatedLength>,
    /// Width of a slot, nominal.
    pub slot_width: Option<StatedLength>,
    /// Length of a slot, at its bottom.
    pub slot_length: Option<StatedLength>,
}

impl Drive {
    /// A drive of a kind whose sizes nobody has noted.
    #[must_use]
    pub const fn unsized_of(kind: DriveKind) -> Self {
        Self {
            kind,
            across: None,
            slot_width: None,
            slot_length: None,
        }
    }
}

coded! {
    /// What the end of the conductor is dressed with.
    Landing as "landing" {
        /// Bare strands or a bare solid wire.
        Bare = "bare",
        /// A ferrule.
        Ferrule = "ferrule",
        /// A ring lug.
        Ring = "ring",
        /// A fork lug.
        Fork = "fork",
        /// A blade receptacle.
        Receptacle = "receptacle",
    }
}

coded! {
    /// What nut is on a stud.
    Nut as "nut" {
        /// No nut.
        None = "none",
        /// A plain nut.
        Plain = "plain",
        /// A nut with a nylon insert.
        Nylon = "nylon",
        /// A nut over an inner or jam nut that must be held.
        OverJam = "over_jam",
        /// A wing nut.
        Wing = "wing",
    }
}

coded! {
    /// What washer is under the nut or head.
    Washer as "washer" {
        /// None.
        None = "none",
        /// Flat.
        Flat = "flat",
        /// Split, which secures nothing.
        Split = "split",
        /// Spring (Belleville).
        Spring = "spring",
        /// Toothed.
        Toothed = "toothed",
    }
}

coded! {
    /// What keeps the thread from turning back.
    Locking as "locking" {
        /// Nothing.
        None = "none",
        /// Thread-locker.
        ThreadLocker = "thread_locker",
        /// A paint mark, unbroken when it was made.
        WitnessMark = "witness_mark",
    }
}

coded! {
    /// The grade of a bolt or stud, by its head marks.
    BoltGrade as "bolt-grade" {
        /// SAE J429 grade 2.
        Sae2 = "sae2",
        /// SAE J429 grade 5.
        Sae5 = "sae5",
        /// SAE J429 grade 8.
        Sae8 = "sae8",
        /// ISO 898-1 class 4.6.
        Iso46 = "iso4.6",
        /// ISO 898-1 class 4.8.
        Iso48 = "iso4.8",
        /// ISO 898-1 class 5.8.
        Iso58 = "iso5.8",
        /// ISO 898-1 class 8.8.
        Iso88 = "iso8.8",
        /// ISO 898-1 class 10.9.
        Iso109 = "iso10.9",
        /// ISO 3506-1 A2-70.
        A270 = "a2-70",
        /// Silicon bronze.
        SiliconBronze = "silicon_bronze",
        /// Brass.
        Brass = "brass",
        /// Copper.
        Copper = "copper",
    }
}

/// What holds a conductor in its place, with all that decides its torque.
#[derive(Debug, Clone, PartialEq)]
pub struct Fastening {
    /// The kind.
    pub kind: FasteningKind,
    /// The thread, where known.
    pub thread: Option<Thread>,
    /// The drives the head offers, the one in use first; empty where none or not known.
    pub drives: Vec<Drive>,
    /// The dressing of the conductor's end.
    pub landing: Landing,
    /// The nut.
    pub nut: Nut,
    /// The washer.
    pub washer: Washer,
    /// What keeps it from turning back.
    pub locking: Locking,
    /// The grade of bolt or stud, where known.
    pub grade: Option<BoltGrade>,
    /// Whether the joint clamps metal on metal, with no plastic body in between.
    pub metal_to_metal: bool,
}

impl Fastening {
    /// A fastening of a kind of which nothing else is known yet.
    #[must_use]
    pub const fn of(kind: FasteningKind) -> Self {
        Self {
            kind,
            thread: None,
            drives: Vec::new(),
            landing: Landing::Bare,
            nut: Nut::None,
            washer: Washer::None,
            locking: Locking::None,
            grade: None,
            metal_to_metal: false,
        }
    }
}
