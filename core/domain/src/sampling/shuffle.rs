//! A mixed order that is the same for the same seed on every machine.

/// `SplitMix64` (Steele, Lea and Flood, 2014; from memory): the same numbers for the same seed.
struct Numbers(u64);

impl Numbers {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^ (mixed >> 31)
    }

    /// A number below an end, each as likely as any other: what would favour some is drawn anew.
    fn below(&mut self, end: u64) -> u64 {
        let fair = u64::MAX - u64::MAX % end;
        loop {
            let drawn = self.next();
            if drawn < fair {
                return drawn % end;
            }
        }
    }
}

/// The numbers below a count in a mixed order (Fisher and Yates, as Durstenfeld has it, 1964).
pub(super) fn shuffled(count: usize, seed: u64) -> Vec<usize> {
    let mut numbers = Numbers(seed);
    let mut order: Vec<usize> = (0..count).collect();
    for last in (1..count).rev() {
        let end = u64::try_from(last + 1).unwrap_or(u64::MAX);
        let other = usize::try_from(numbers.below(end)).unwrap_or(last);
        order.swap(last, other);
    }
    order
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The vector that is given with implementations of the generator for this seed; from memory.
    #[test]
    fn the_numbers_are_those_of_the_generator() {
        let mut numbers = Numbers(1_234_567);
        let drawn = [(); 5].map(|()| numbers.next());
        let expected = [
            6_457_827_717_110_365_317,
            3_203_168_211_198_807_973,
            9_817_491_932_198_370_423,
            4_593_380_528_125_082_431,
            16_408_922_859_458_223_821,
        ];
        assert_eq!(drawn, expected);
    }

    #[test]
    fn each_point_comes_to_each_place_about_as_often() {
        let mut first = [0_u32; 6];
        for seed in 0..6_000 {
            first[shuffled(6, seed)[0]] += 1;
        }
        // Chi-square with 5 degrees of freedom: 20.5 is exceeded once in a thousand.
        let off: f64 = first
            .iter()
            .map(|n| (f64::from(*n) - 1_000.0).powi(2) / 1_000.0)
            .sum();
        assert!(off < 20.5, "{first:?}");
    }
}
