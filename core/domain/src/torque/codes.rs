//! The closed lists of the advice: what to do, how, what to mind, what is missing.

use crate::coded::coded;

coded! {
    /// What to do at a terminal.
    Action as "torque-action" {
        /// Check below the target; set only what moved.
        CheckThenSet = "check_then_set",
        /// Look and tug; no tool.
        LookAndTug = "look_and_tug",
        /// Leave alone: tightening would harm.
        LeaveAlone = "leave_alone",
        /// Cut back or renew, then make the joint once more.
        Remake = "remake",
        /// No figure can be trusted: look and tug, and ask the maker.
        AskMaker = "ask_maker",
        /// Look only; work on it belongs to its maker or a qualified person.
        Refer = "refer",
    }
}

coded! {
    /// How the terminal is looked at before anything is changed.
    FoundBy as "found-by" {
        /// Look, fingers, check torque, tug along the axis.
        CheckScrew = "check_screw",
        /// Lug by finger, inner nut held, check torque.
        CheckLug = "check_lug",
        /// Spring washer neither flat nor cracked, lug by finger, check torque.
        CheckSpringWasher = "check_spring_washer",
        /// Clamp twisted by hand, check torque.
        CheckPost = "check_post",
        /// The full value pulled again, because the maker orders it.
        FullValue = "full_value",
        /// Lug by finger alone: the nut's own drag proves nothing.
        LugByFinger = "lug_by_finger",
        /// Paint mark in line; nothing is turned.
        Mark = "mark",
        /// Clamp twisted by hand.
        TwistClamp = "twist_clamp",
        /// Look, and a tug along the axis.
        Tug = "tug",
        /// Housing held, each conductor pulled with no more than 15 N.
        PullEach = "pull_each",
        /// Zero current proved; seat and marks of heat.
        SeatAndHeat = "seat_and_heat",
        /// Eyes alone.
        Look = "look",
    }
}

coded! {
    /// How what moved, is loose or apart is set right.
    LeftBy as "left-by" {
        /// Set once to the full value, tug, mark.
        SetOnce = "set_once",
        /// Largest lug on the face, no washer in the current path; set once, mark.
        SetStud = "set_stud",
        /// The maker's figure on the spring washer, no extra turn.
        SetSpringWasher = "set_spring_washer",
        /// The maker's figure, the negative last.
        SetPost = "set_post",
        /// Cut back, strip anew, set once, tug, mark.
        CutBack = "cut_back",
        /// Aluminium: cut back, brush, inhibitor on the conductor, set once.
        CutBackAluminium = "cut_back_aluminium",
        /// Lug, faces and hardware cleaned or renewed, set once, mark.
        RemakeLug = "remake_lug",
        /// A new nut or the thread-locker made anew.
        NewNut = "new_nut",
        /// Strip anew and insert to the stop.
        StripAnew = "strip_anew",
        /// Splice, connector or piercing device made anew.
        RemakeSplice = "remake_splice",
        /// Bare clean metal and a toothed washer.
        RemakeChassis = "remake_chassis",
        /// Replaced by a new part.
        Replace = "replace",
        /// Out of service until the maker's figure is known.
        OutOfService = "out_of_service",
        /// Left to its maker or a qualified person.
        Refer = "refer",
    }
}

coded! {
    /// What the hand should know before it touches the terminal.
    Caution as "torque-caution" {
        /// A battery can't be switched off: its posts and links stay live.
        BatteryLive = "battery_live",
        /// Parts on their contacts are moved only when no current is proved.
        ZeroCurrent = "zero_current",
        /// The inner or jam nut must be held.
        HoldJamNut = "hold_jam_nut",
        /// A split washer secures nothing.
        SplitWasher = "split_washer",
        /// A flat or cracked spring washer is replaced; no turn is added.
        SpringWasher = "spring_washer",
        /// A fork lug slips out when its screw backs off.
        ForkLug = "fork_lug",
        /// A wing nut holds by hand force alone and is no nut for high current.
        WingNut = "wing_nut",
        /// Fine strands under a bare screw need a ferrule or a terminal marked for them.
        FineStrands = "fine_strands",
        /// Aluminium flows: turns are never added.
        Aluminium = "aluminium",
        /// A paint mark shows rotation, not clamp force.
        MarkShowsRotation = "mark_shows_rotation",
        /// Thread-locker is broken by turning.
        ThreadLocker = "thread_locker",
        /// A nylon insert drags: torque proves nothing about the clamp.
        NylonNut = "nylon_nut",
        /// The head offers several drives: the figure goes with the tool that is used.
        CombinationDrive = "combination_drive",
        /// Greased or wet thread: the dry figure is void.
        GreasedThread = "greased_thread",
        /// Foot-pounds stand where inch-pounds are usual: read the label again.
        FootPounds = "foot_pounds",
        /// The maker's figure is far from what tables give for such a part: read the label again.
        FarFromTable = "far_from_table",
        /// Generic tables do not cover control and signal circuits.
        ControlCircuit = "control_circuit",
        /// The figure is calculated for the bolt, not given for the part.
        Calculated = "calculated",
        /// The table's values are from memory of the standard.
        FromMemory = "from_memory",
        /// Published tables differ for this part; the lowest that applies is taken.
        TablesDiffer = "tables_differ",
        /// The maker orders the full value to be pulled again.
        MakerFullValue = "maker_full_value",
        /// The maker says never to tighten again.
        MakerNever = "maker_never",
        /// It moved on the walk before: if it moves again it is made anew.
        MovedBefore = "moved_before",
        /// More conductors are landed than are allowed.
        Crowded = "crowded",
        /// The conductor is outside the sizes that the terminal is marked for.
        SizeOutside = "size_outside",
        /// No figure: if it is loose, the circuit stays out of service.
        OutOfServiceIfLoose = "out_of_service_if_loose",
    }
}

coded! {
    /// What is not known and would settle the advice.
    Missing as "torque-missing" {
        /// The maker's torque, from the label or a document.
        MakerTorque = "maker_torque",
        /// The size of the conductor.
        WireSize = "wire_size",
        /// A conductor size that the table has.
        SizeInTable = "size_in_table",
        /// The drive of the screw.
        Drive = "drive",
        /// A drive that the table has.
        DriveInTable = "drive_in_table",
        /// Size across flats of the socket.
        SocketSize = "socket_size",
        /// Width of the slot.
        SlotWidth = "slot_width",
        /// Length of the slot at its bottom.
        SlotLength = "slot_length",
        /// The thread.
        Thread = "thread",
        /// The pitch of the thread.
        Pitch = "pitch",
        /// The grade of the bolt or stud.
        Grade = "grade",
        /// A clean dry thread, or a figure for the greased one.
        DryThread = "dry_thread",
    }
}
