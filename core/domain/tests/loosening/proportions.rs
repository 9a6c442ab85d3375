//! The interval of a proportion covers at least what it says, at any number of joints.

use baywalk_domain::loosening::proportion;

/// The binomial chances of 0 to n, each from the one before.
fn chances(joints: u32, share: f64) -> Vec<f64> {
    let mut all = vec![(1.0 - share).powi(i32::try_from(joints).unwrap())];
    for i in 1..=joints {
        let ways = f64::from(joints - i + 1) / f64::from(i);
        all.push(all.last().unwrap() * ways * share / (1.0 - share));
    }
    all
}

#[test]
fn coverage_is_never_below_what_is_said() {
    // The limits of a share above a half are those below it, seen from the other side.
    for joints in (1..=40).chain([60, 100, 200]) {
        let limits: Vec<_> = (0..=joints)
            .map(|moved| proportion(joints, moved, 0.9).unwrap())
            .collect();
        for (one, other) in limits.iter().zip(limits.iter().rev()) {
            assert!((one.least + other.most - 1.0).abs() < 1e-12);
        }
        for step in 1..=200 {
            let share = f64::from(step) / 400.0;
            let covered: f64 = chances(joints, share)
                .iter()
                .zip(&limits)
                .filter(|(_, limits)| limits.least <= share && share <= limits.most)
                .map(|(chance, _)| chance)
                .sum();
            assert!(covered >= 0.9 - 1e-9, "{joints} {share} {covered}");
        }
    }
}

#[test]
fn what_is_no_proportion_is_none() {
    assert_eq!(proportion(0, 0, 0.9), None);
    assert_eq!(proportion(3, 4, 0.9), None);
    assert_eq!(proportion(3, 1, 1.0), None);
    assert_eq!(proportion(3, 1, f64::NAN), None);
}
