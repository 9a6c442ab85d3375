//! Laws of any lives at all.

use baywalk_domain::loosening::{Life, NoFit, Prior, fit, npmle, told};
use proptest::prelude::*;

/// Ages as checks give them: few, so that ties and shared ends are common, or any.
fn age() -> impl Strategy<Value = f64> {
    prop_oneof![
        (0_u8..6).prop_map(|step| 6.0 * f64::from(step)),
        0.0..500.0_f64,
        1e-6..1e-3_f64,
        1e5..1e6_f64,
    ]
}

fn life() -> impl Strategy<Value = Life> {
    (age(), proptest::option::of(age()), 1_u32..60).prop_map(|(one, other, count)| {
        let life = match other {
            Some(other) if other > one => Life::moved(one, other),
            Some(other) if other < one => Life::moved(other, one),
            _ => Life::held(one),
        };
        life.unwrap().times(count).unwrap()
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2_000))]

    #[test]
    fn any_lives_give_numbers_or_a_reason(lives in prop::collection::vec(life(), 0..12)) {
        for prior in [Prior::FLAT, Prior::WEAK] {
            if let Ok(found) = fit(&lives, &prior) {
                let (shape, scale) = found.errors();
                for number in [found.law.shape(), found.law.scale(), found.log_likelihood, shape, scale] {
                    prop_assert!(number.is_finite(), "{number} {lives:?}");
                }
                prop_assert!(shape > 0.0 && scale > 0.0);
            }
        }
        if let Ok(found) = npmle(&lives) {
            let sum: f64 = found.spans.iter().map(|span| span.mass).sum();
            prop_assert!((sum - 1.0).abs() < 1e-9 && found.gap < 1e-8, "{lives:?}");
        } else {
            prop_assert!(lives.is_empty(), "{lives:?}");
        }
    }

    /// With weak beliefs a law is found wherever a joint tells anything.
    #[test]
    fn weak_beliefs_mend_all_lives_of_months(steps in prop::collection::vec((0_u8..12, 0_u8..4, 1_u32..40), 1..10)) {
        let lives: Vec<Life> = steps
            .iter()
            .map(|(after, more, count)| {
                let (after, more) = (6.0 * f64::from(*after), 6.0 * f64::from(*more));
                let life = if more > 0.0 { Life::moved(after, after + more) } else { Life::held(after) };
                life.unwrap().times(*count).unwrap()
            })
            .collect();
        let tells = lives.iter().any(|life| life.by().is_some() || life.after() > 0.0);
        let found = fit(&lives, &Prior::WEAK);
        prop_assert_eq!(found.is_ok(), tells, "{:?}", found);
    }

    /// The law found is a highest point: no law near it is likelier.
    #[test]
    fn no_law_near_is_likelier(lives in prop::collection::vec(life(), 3..10)) {
        if let Ok(found) = fit(&lives, &Prior::FLAT) {
            for (shape, scale) in [(1.001, 1.0), (0.999, 1.0), (1.0, 1.001), (1.0, 0.999)] {
                let other = log_likelihood(&lives, found.law.shape() * shape, found.law.scale() * scale);
                prop_assert!(other <= found.log_likelihood + 1e-7, "{other} {found:?}");
            }
        }
    }
}

/// The log-likelihood straight from its definition.
fn log_likelihood(lives: &[Life], shape: f64, scale: f64) -> f64 {
    let hazard = |age: f64| (age / scale).powf(shape);
    let one = |life: &Life| match life.by() {
        None => -hazard(life.after()),
        Some(by) => {
            let gained: f64 = hazard(by) - hazard(life.after());
            -hazard(life.after()) + (-(-gained).exp_m1()).ln()
        }
    };
    lives
        .iter()
        .map(|life| f64::from(life.count()) * one(life))
        .sum()
}

#[test]
fn five_must_have_moved_before_a_law_is_told() {
    let lives = |moved: u32| {
        [
            Life::moved(12.0, 24.0).unwrap().times(moved).unwrap(),
            Life::held(36.0).unwrap().times(40).unwrap(),
        ]
    };
    assert_eq!(told(&lives(4), &Prior::WEAK, 0.9).law, Err(NoFit::FewMoved));
    assert!(told(&lives(5), &Prior::WEAK, 0.9).law.is_ok());
    assert!(fit(&lives(1), &Prior::FLAT).is_ok());
}
