//! The small choices of a walk.

use super::Text;
use super::shape::{choice, record};
use baywalk_domain::ids::{BayId, PointId};
use baywalk_domain::walk;

choice! {
    /// How much of the rig a walk goes through.
    Scope = walk::Scope {
        Whole,
        Bays(bays: Vec<Text<BayId>>),
        SecondLook(second_look: Vec<Text<PointId>>),
    }
}

record! {
    /// A bay of a plan.
    RouteStop = walk::RouteStop {
        bay: Text<BayId>,
        points: Vec<Text<PointId>>,
    }
}

record! {
    /// A plan that is followed.
    Route = walk::Route {
        minutes: u16,
        spent: u32,
        stops: Vec<RouteStop>,
    }
}

choice! {
    /// How a source was taken away.
    Away = walk::Away {
        Isolated(isolated: String),
        NotFound(not_found: String),
        Stays(stays: String),
    }
}

record! {
    /// What is counted before a cover goes on.
    Counted = walk::Counted {
        conductors_clear: bool,
        hardware: bool,
        tools: bool,
        covers: bool,
    }
}

choice! {
    /// How a walk ends.
    Ending = walk::Ending {
        Whole,
        Early(early: String),
    }
}

choice! {
    /// An answer of the list before.
    ReadyAnswer = walk::ReadyAnswer {
        Done,
        Without(without: String),
    }
}
