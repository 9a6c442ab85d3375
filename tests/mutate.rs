//! Hostile inputs, made from sound ones by a number: the same number makes the same input.

/// Numbers that are random enough (SplitMix64).
#[derive(Debug, Clone)]
pub struct Numbers(u64);

impl Numbers {
    /// Numbers of a seed.
    #[must_use]
    pub const fn new(seed: u64) -> Self {
        Self(seed)
    }

    /// The next number.
    pub const fn any(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    /// The next number below a limit; 0 where the limit is 0.
    pub fn below(&mut self, limit: usize) -> usize {
        let limit = u64::try_from(limit).unwrap_or(u64::MAX).max(1);
        usize::try_from(self.any() % limit).unwrap_or(0)
    }

    fn byte(&mut self) -> u8 {
        let [byte, ..] = self.any().to_le_bytes();
        byte
    }
}

/// What hostile inputs of one kind are made of.
#[derive(Debug, Clone)]
pub struct Kind {
    /// Sound inputs.
    pub sound: Vec<Vec<u8>>,
    /// Bytes that mean something to a reader of the kind.
    pub telling: &'static [&'static [u8]],
}

impl Kind {
    /// The hostile input of a number: a sound one with one to eight changes, mostly few, or random bytes alone.
    #[must_use]
    pub fn hostile(&self, number: u64) -> Vec<u8> {
        let mut numbers = Numbers::new(number);
        if numbers.below(50) == 0 {
            return (0..numbers.below(400)).map(|_| numbers.byte()).collect();
        }
        let mut bytes = self.any(&mut numbers).to_vec();
        let most = numbers.below(8);
        for _ in 0..=numbers.below(most + 1) {
            self.change(&mut numbers, &mut bytes);
        }
        bytes
    }

    fn any(&self, numbers: &mut Numbers) -> &[u8] {
        &self.sound[numbers.below(self.sound.len())]
    }

    fn change(&self, numbers: &mut Numbers, bytes: &mut Vec<u8>) {
        let at = numbers.below(bytes.len());
        let end = (at + numbers.below(32)).min(bytes.len());
        match numbers.below(8) {
            0 if !bytes.is_empty() => bytes[at] ^= 1 << numbers.below(8),
            1 if !bytes.is_empty() => bytes[at] = numbers.byte(),
            2 => drop(bytes.drain(at..end)),
            3 => {
                let part = bytes[at..end].to_vec();
                let to = numbers.below(bytes.len());
                bytes.splice(to..to, part);
            }
            4 => {
                let telling = self.telling[numbers.below(self.telling.len())];
                let end = (at + telling.len()).min(bytes.len());
                bytes.splice(at..end, telling.iter().copied());
            }
            5 if numbers.below(4) == 0 => bytes.truncate(at),
            6 if numbers.below(4) == 0 => {
                let other = self.any(numbers);
                let from = numbers.below(other.len());
                bytes.truncate(at);
                bytes.extend(&other[from..]);
            }
            _ => {
                let noise: Vec<u8> = (at..end).map(|_| numbers.byte()).collect();
                bytes.splice(at..end, noise);
            }
        }
    }
}
