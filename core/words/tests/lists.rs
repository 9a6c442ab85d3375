//! Every member of every coded list has a text in both languages, and no list is forgotten.

mod common;

use baywalk_domain::coded::Coded;
use baywalk_domain::torque::TableId;
use baywalk_domain::units::TorqueUnit;
use baywalk_domain::{due, finding, isolation, rig, service, supply, torque, units, walk, wire};
use baywalk_words::Words;
use std::collections::{BTreeMap, BTreeSet};

/// A list: its name, its codes, and its texts in a language.
struct List {
    name: &'static str,
    codes: Vec<&'static str>,
    texts: fn(&Words) -> Vec<String>,
}

fn list<T: Coded>() -> List {
    List {
        name: T::NAME,
        codes: T::ALL.iter().map(|member| member.code()).collect(),
        texts: |words| T::ALL.iter().map(|member| words.code(*member)).collect(),
    }
}

macro_rules! lists {
    ($($kind:ty),+ $(,)?) => {
        fn lists() -> Vec<List> {
            vec![$(list::<$kind>()),+]
        }
    };
}

lists![
    due::DueReason,
    finding::Decision,
    finding::FindingKind,
    finding::Urgency,
    isolation::Lapse,
    isolation::MeterKind,
    rig::BoltGrade,
    rig::Conductor,
    rig::DeviceKind,
    rig::DriveKind,
    rig::FasteningKind,
    rig::Isolation,
    rig::Landing,
    rig::Locking,
    rig::LookKind,
    rig::Material,
    rig::Nut,
    rig::Presence,
    rig::Recheck,
    rig::RigKind,
    rig::Role,
    rig::ServiceKind,
    rig::SetSystem,
    rig::Side,
    rig::SourceKind,
    rig::Strands,
    rig::SupplyKind,
    rig::ThreadState,
    rig::ToolKind,
    rig::TorqueBasis,
    rig::Washer,
    supply::LimitBasis,
    supply::ReadingStep,
    supply::SafeAct,
    supply::Verdict,
    torque::Action,
    torque::BasisKind,
    torque::Caution,
    torque::Certainty,
    torque::Finish,
    torque::FoundBy,
    torque::Known,
    torque::LeftBy,
    torque::Missing,
    torque::Standing,
    torque::TableId,
    units::CurrentUnit,
    units::DistanceUnit,
    units::LengthUnit,
    units::TorqueUnit,
    units::VoltageUnit,
    walk::AloneWhy,
    walk::Angle,
    walk::BayStage,
    walk::Damage,
    walk::Grade,
    walk::NoException,
    walk::NotJudgedWhy,
    walk::Phase,
    walk::ReadyItem,
    wire::WireTable,
];
