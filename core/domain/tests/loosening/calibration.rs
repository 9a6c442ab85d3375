//! Intervals hold what they say: rigs simulated by laws drawn from the belief itself.

use baywalk_domain::loosening::{Cloud, Law, Life, Member, PoolPrior, Prior, pool};
use std::collections::BTreeMap;

/// Numbers by chance, the same in every run (SplitMix64 and Box and Muller, from memory).
struct Chance(u64);

impl Chance {
    fn unit(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        let high = u32::try_from((z ^ (z >> 31)) >> 33).unwrap();
        (f64::from(high) + 0.5) / f64::from(1_u32 << 31)
    }

    fn normal(&mut self, mean: f64, deviation: f64) -> f64 {
        let (u, v) = (self.unit(), self.unit());
        mean + deviation * (-2.0 * u.ln()).sqrt() * (std::f64::consts::TAU * v).cos()
    }
}

/// The lives of joints of a law, looked at each year for five years; equal ones together.
fn lives(chance: &mut Chance, law: &Law, joints: u32) -> Vec<Life> {
    let mut counts: BTreeMap<u32, u32> = BTreeMap::new();
    for _ in 0..joints {
        let age = law.scale() * (-chance.unit().ln()).powf(1.0 / law.shape());
        let years = (1..=5)
            .find(|year| age <= 12.0 * f64::from(*year))
            .unwrap_or(6);
        *counts.entry(years).or_default() += 1;
    }
    let life = |(years, count): (u32, u32)| {
        let begun = 12.0 * f64::from(years - 1);
        let life = if years > 5 {
            Life::held(60.0)
        } else {
            Life::moved(begun, begun + 12.0)
        };
        life.unwrap().times(count).unwrap()
    };
    counts.into_iter().map(life).collect()
}

fn law(shape: f64, scale: f64) -> Law {
    Law::new(shape.exp(), scale.exp()).unwrap()
}

#[test]
fn nine_in_ten_intervals_of_one_kind_hold_the_truth() {
    let (shape, scale) = (Prior::WEAK.shape.unwrap(), Prior::WEAK.scale.unwrap());
    for joints in [20, 100] {
        let mut chance = Chance(u64::from(joints));
        let mut held = [0.0; 3];
        for _ in 0..1000 {
            let true_law = law(
                chance.normal(shape.mean(), shape.deviation()),
                chance.normal(scale.mean(), scale.deviation()),
            );
            let seen = lives(&mut chance, &true_law, joints);
            let cloud = Cloud::exact(&seen, &Prior::WEAK).unwrap();
            let tells: [&dyn Fn(&Law) -> f64; 3] =
                [&|law| law.shape().ln(), &|law| law.scale().ln(), &|law| {
                    law.moved_by(12.0)
                }];
            for (held, tells) in held.iter_mut().zip(tells) {
                let (least, most) = cloud.interval(0.9, tells);
                *held += f64::from(u8::from((least..=most).contains(&tells(&true_law))));
            }
        }
        for held in held {
            assert!(
                (850.0..=950.0).contains(&held),
                "{joints} joints: {held} of 1000"
            );
        }
    }
}

#[test]
fn nine_in_ten_intervals_of_pooled_kinds_hold_the_truth() {
    let beliefs = PoolPrior::WEAK;
    let (shape, common) = (beliefs.shape.unwrap(), beliefs.common.unwrap());
    let groups = beliefs.groups.unwrap();
    for joints in [5, 25] {
        let mut chance = Chance(900 + u64::from(joints));
        let (mut held, mut all) = (0.0, 0.0);
        for _ in 0..250 {
            let a = chance.normal(shape.mean(), shape.deviation());
            let b = chance.normal(common.mean(), common.deviation());
            let laws: Vec<Law> = (0..4)
                .map(|_| law(a, b + chance.normal(0.0, groups.deviation())))
                .collect();
            let mut members = Vec::new();
            for (group, true_law) in laws.iter().enumerate() {
                let seen = lives(&mut chance, true_law, joints);
                members.extend(seen.into_iter().map(|life| Member {
                    group,
                    traits: vec![],
                    life,
                }));
            }
            let pool = pool(&members, &beliefs).unwrap();
            for (group, true_law) in laws.iter().enumerate() {
                let cloud = pool.cloud(group, &[]).unwrap();
                let (least, most) = cloud.interval(0.9, |law| law.scale().ln());
                all += 1.0;
                held += f64::from(u8::from((least..=most).contains(&true_law.scale().ln())));
            }
        }
        let share = held / all;
        assert!(
            (0.85..=0.95).contains(&share),
            "{joints} joints a kind: {share}"
        );
    }
}

#[test]
fn nothing_is_ever_no_number() {
    let worst = [
        vec![Life::held(12.0).unwrap().times(50).unwrap()],
        vec![Life::moved(0.0, 12.0).unwrap()],
        vec![Life::moved(6.0, 18.0).unwrap().times(30).unwrap()],
        vec![
            Life::moved(0.0, 1e-3).unwrap().times(9).unwrap(),
            Life::held(1e5).unwrap(),
        ],
    ];
    for lives in worst {
        let cloud = Cloud::exact(&lives, &Prior::WEAK).unwrap();
        let (least, most) = cloud.interval(0.9, |law| law.moved_by(12.0));
        let mean = cloud.mean(|law| law.moved_by(12.0));
        assert!(
            least.is_finite() && least <= mean && mean <= most && most <= 1.0,
            "{lives:?}"
        );
    }
}
