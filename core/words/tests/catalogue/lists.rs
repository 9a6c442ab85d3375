//! Every member of every coded list has a text in both languages, and no list is forgotten.

use crate::tree;
use baywalk_domain::coded::Coded;
use baywalk_domain::torque::TableId;
use baywalk_domain::units::TorqueUnit;
use baywalk_domain::{
    bank, due, finding, isolation, joint, loosening, pace, plan, published, ranking, rig, service,
    supply, torque, units, walk, wire,
};
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
    bank::BankFinding,
    bank::DropClass,
    bank::Nominal,
    due::Anchor,
    due::Condition,
    due::DueReason,
    due::EventKind,
    due::Restart,
    due::RuleFault,
    finding::Decision,
    finding::FindingKind,
    finding::Urgency,
    isolation::Lapse,
    isolation::MeterKind,
    isolation::MeterCategory,
    joint::Compared,
    joint::HeatCaution,
    joint::HeatClass,
    joint::Surface,
    loosening::NoFit,
    pace::Step,
    plan::MustWhy,
    plan::Proof,
    ranking::AgeBand,
    ranking::BehindBand,
    ranking::ConductorCase,
    ranking::CurrentBand,
    ranking::DistanceBand,
    ranking::FactorKind,
    ranking::HistoryCase,
    ranking::Nearby,
    ranking::WeightBasis,
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
    rig::Priority,
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
    service::Ask,
    service::Caution,
    service::Conductor,
    service::Fault,
    service::Pair,
    service::Place,
    service::Standing,
    supply::BandName,
    supply::Certainty,
    supply::Grounds,
    supply::LimitBasis,
    supply::ReadingStep,
    supply::SafeAct,
    supply::Verdict,
    torque::Action,
    torque::BasisKind,
    torque::Caution,
    published::Certainty,
    torque::Finish,
    torque::FoundBy,
    published::Known,
    torque::LeftBy,
    torque::Missing,
    published::Standing,
    torque::TableId,
    units::CurrentUnit,
    units::DistanceUnit,
    units::HourUnit,
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

/// The columns of the tables that a torque can be taken from.
fn columns() -> BTreeSet<String> {
    let not_figures = ["largest", "form"];
    TableId::ALL
        .iter()
        .filter_map(|id| id.table())
        .filter(|table| TorqueUnit::from_code(table.head().unit).is_ok())
        .flat_map(|table| table.columns().iter().skip(1).copied())
        .filter(|column| !not_figures.contains(column))
        .map(|column| tree::key("table-column", column))
        .collect()
}

#[test]
fn every_member_of_every_list_has_a_text_in_both_languages() {
    for locale in ["en", "es"] {
        let words = Words::for_locales(&[locale]);
        for list in lists() {
            let texts = (list.texts)(&words);
            for (code, text) in list.codes.iter().zip(&texts) {
                assert!(
                    !text.trim().is_empty() && !text.contains('<'),
                    "{locale}: {} {code}: {text}",
                    list.name
                );
            }
            let different: BTreeSet<&String> = texts.iter().collect();
            assert_eq!(different.len(), texts.len(), "{locale}: {}", list.name);
        }
    }
}

#[test]
fn the_theme_of_codes_holds_the_lists_and_nothing_else() {
    let mut expected: BTreeMap<String, &str> = BTreeMap::new();
    for list in lists() {
        for code in &list.codes {
            let key = tree::key(list.name, code);
            let twice = expected.insert(key.clone(), code);
            assert_eq!(twice, None, "two members share the key {key}");
        }
    }
    let mut expected: BTreeSet<String> = expected.into_keys().collect();
    expected.extend(columns());
    for language in ["en", "es"] {
        let found: BTreeSet<String> = tree::theme(language, "codes").into_keys().collect();
        let missing: Vec<_> = expected.difference(&found).collect();
        let unused: Vec<_> = found.difference(&expected).collect();
        assert!(missing.is_empty(), "{language}: no text for {missing:?}");
        assert!(unused.is_empty(), "{language}: nothing uses {unused:?}");
    }
}

/// Reads the lists off the source of the domain, so that a new one can't be forgotten here.
#[test]
fn no_list_of_the_domain_is_forgotten() {
    let mut declared = BTreeSet::new();
    for (_, source) in tree::sources("core/domain/src") {
        for line in source.lines().map(str::trim_start) {
            let named = line.split_once(" as \"").and_then(|(type_name, rest)| {
                let plain = type_name.chars().all(char::is_alphanumeric);
                plain.then(|| rest.split_once('"')).flatten()
            });
            if let Some((name, rest)) = named
                && rest.trim_start().starts_with('{')
            {
                declared.insert(name.to_owned());
            }
            if let Some((_, rest)) = line.split_once(") as \"") {
                declared.extend(rest.split_once('"').map(|(name, _)| name.to_owned()));
            }
        }
    }
    let worded: BTreeSet<String> = lists().iter().map(|list| list.name.to_owned()).collect();
    assert_eq!(declared, worded);
}

#[test]
fn every_kind_of_finding_says_what_to_do() {
    for locale in ["en", "es"] {
        let words = Words::for_locales(&[locale]);
        for kind in finding::FindingKind::ALL {
            let text = words.what_to_do(*kind);
            assert!(
                text.ends_with('.') && !text.contains('<'),
                "{kind:?}: {text}"
            );
        }
    }
}
