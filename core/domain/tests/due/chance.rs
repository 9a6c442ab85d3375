//! Numbers by chance, the same in every run (SplitMix64, from memory).

pub(crate) struct Chance(pub(crate) u64);

impl Chance {
    pub(crate) fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    /// A whole number below a bound.
    pub(crate) fn below(&mut self, bound: u32) -> u32 {
        u32::try_from(self.next() % u64::from(bound)).unwrap()
    }

    /// A number between 0 and 1, never 0.
    pub(crate) fn unit(&mut self) -> f64 {
        f64::from(self.below(1 << 30) + 1) / f64::from((1_u32 << 30) + 1)
    }
}
