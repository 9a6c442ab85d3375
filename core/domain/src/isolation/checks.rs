//! Which pairs of conductors must read dead at a device.

use crate::rig::{Check, ConductorSet, Device, SupplyKind};

/// The pairs to read at a device, AC before DC: within each set every two conductors, and between
/// sets every line of the one to every line of the other (pairs of NFPA 70E 120.5, second hand, as
/// method; between sets: common practice, no source).
///
/// # Example
/// ```
/// use baywalk_domain::isolation::checks_of;
/// use baywalk_domain::rig::{Check, Conductor, ConductorSet, SetSystem, SupplyKind};
/// let shore = ConductorSet { name: "shore in".into(), system: SetSystem::SplitPhase, from: vec![] };
/// let pairs = checks_of(&[shore]);
/// assert_eq!(pairs.iter().filter(|pair| pair.supply == SupplyKind::Ac).count(), 6);
/// assert_eq!(pairs.len(), 12);
/// ```
#[must_use]
pub fn checks_of(sets: &[ConductorSet]) -> Vec<Check> {
    let mut checks = Vec::new();
    for supply in [SupplyKind::Ac, SupplyKind::Dc] {
        for (place, set) in sets.iter().enumerate() {
            checks.extend(within(set, supply));
            for other in sets.iter().skip(place + 1) {
                checks.extend(between(set, other, supply));
            }
        }
    }
    checks
}

impl Device {
    /// The pairs that must read dead before a terminal of one set may be touched: those of the set
    /// itself and those between it and the device's other sets.
    #[must_use]
    pub fn checks_for(&self, set: &str) -> Vec<Check> {
        let mut checks = checks_of(&self.sets);
        checks.retain(|check| check.set == set || check.other_set == set);
        checks
    }
}

fn within(set: &ConductorSet, supply: SupplyKind) -> Vec<Check> {
    if !set.system.readings().contains(&supply) {
        return Vec::new();
    }
    let conductors = set.system.conductors();
    let mut checks = Vec::new();
    for (place, from) in conductors.iter().enumerate() {
        for to in conductors.iter().skip(place + 1) {
            checks.push(Check {
                set: set.name.clone(),
                from: *from,
                other_set: set.name.clone(),
                to: *to,
                supply,
            });
        }
    }
    checks
}

fn between(set: &ConductorSet, other: &ConductorSet, supply: SupplyKind) -> Vec<Check> {
    let both = |kind: &ConductorSet| kind.system.readings().contains(&supply);
    if !both(set) || !both(other) {
        return Vec::new();
    }
    let mut checks = Vec::new();
    for from in set.system.lines() {
        for to in other.system.lines() {
            checks.push(Check {
                set: set.name.clone(),
                from: *from,
                other_set: other.name.clone(),
                to: *to,
                supply,
            });
        }
    }
    checks
}
