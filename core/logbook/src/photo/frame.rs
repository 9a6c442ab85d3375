//! The frame of a JPEG: how large the picture is, and how much work its scans ask for.
//!
//! Frame header as in ITU-T T.81 B.2.2. A picture can't take longer to decode than its size and its
//! scans allow, and a few bytes can't claim a large picture: each block of 8 by 8 samples is coded
//! by two Huffman codes at least (one for DC, one for AC; F.1.2), in a progressive picture by one,
//! and no code is shorter than a bit.

use super::{MOST_PIXELS, MOST_PIXELS_WHOLE, MOST_SCANS, PhotoFault};

/// The longest side that is read: a whole number of blocks beyond it must still have 16 bits.
const MOST_SIDE: u32 = 65_500;

/// The side of a block, in samples.
const BLOCK: u64 = 8;

/// A frame within the limits, and what was seen of its scans.
#[derive(Debug)]
pub(super) struct Frame {
    pixels: u64,
    /// The fewest bits that its blocks can be coded in.
    least_bits: u64,
    most_scans: u64,
    scans: u64,
    coded: u64,
}

impl Frame {
    /// Reads the header of a frame and sees that it is within the limits, by its size and by how it
    /// is coded.
    pub(super) fn read(marker: u8, body: &[u8]) -> Result<Self, PhotoFault> {
        let Some(([_, h1, h2, w1, w2, _], components)) = body.split_first_chunk() else {
            return Err(PhotoFault::Damaged("a short frame header".to_owned()));
        };
        let height = u32::from(u16::from_be_bytes([*h1, *h2]));
        let width = u32::from(u16::from_be_bytes([*w1, *w2]));
        let sequential = matches!(marker, 0xC0 | 0xC1);
        let most = if sequential {
            MOST_PIXELS
        } else {
            MOST_PIXELS_WHOLE
        };
        let long = width.max(height);
        if long > MOST_SIDE {
            return Err(PhotoFault::Damaged(format!("a side of {long}")));
        }
        let pixels = u64::from(width) * u64::from(height);
        if pixels > most {
            return Err(PhotoFault::TooManyPixels {
                width,
                height,
                most,
            });
        }
        let codes = if sequential { 2 } else { 1 };
        Ok(Self {
            pixels,
            least_bits: codes * blocks(width, height, components),
            most_scans: (MOST_PIXELS / pixels.max(1)).min(MOST_SCANS),
            scans: 0,
            coded: 0,
        })
    }

    /// Takes in that a scan of so many coded bytes follows.
    pub(super) fn scan(&mut self, bytes: usize) -> Result<(), PhotoFault> {
        self.scans += 1;
        self.coded += u64::try_from(bytes).unwrap_or(u64::MAX);
        if self.scans > self.most_scans {
            return Err(PhotoFault::TooManyScans {
                pixels: self.pixels,
                most: self.most_scans,
            });
        }
        Ok(())
    }

    /// Sees that the scans have as many bytes as the picture needs at the least.
    pub(super) fn end(&self) -> Result<(), PhotoFault> {
        if self.coded.saturating_mul(8) < self.least_bits {
            return Err(PhotoFault::CutOff);
        }
        Ok(())
    }
}

/// The blocks of all components: each has its share of the picture, by its sampling factors.
fn blocks(width: u32, height: u32, components: &[u8]) -> u64 {
    let factors = || {
        components
            .chunks_exact(3)
            .filter_map(|of| of.get(1))
            .map(|both| (u64::from(both >> 4), u64::from(both & 0x0F)))
    };
    let across = factors().map(|(across, _)| across).max().unwrap_or(0);
    let down = factors().map(|(_, down)| down).max().unwrap_or(0);
    let share = |side: u32, of: u64, most: u64| {
        (u64::from(side) * of).div_ceil(most.max(1)).div_ceil(BLOCK)
    };
    factors()
        .map(|(of_across, of_down)| share(width, of_across, across) * share(height, of_down, down))
        .sum()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A header with 8 bits a sample.
    fn header(width: u16, height: u16, factors: &[u8]) -> Vec<u8> {
        let mut body = vec![8];
        body.extend(height.to_be_bytes());
        body.extend(width.to_be_bytes());
        body.push(u8::try_from(factors.len()).unwrap());
        for factor in factors {
            body.extend([1, *factor, 0]);
        }
        body
    }

    /// T.81 A.1.1 and A.2.2: components of 512 by 512 samples, sampled 2 by 2, once each.
    #[test]
    fn blocks_are_counted_by_sampling_factors() {
        assert_eq!(
            blocks(512, 512, &[1, 0x22, 0, 2, 0x11, 1, 3, 0x11, 1]),
            6144
        );
        assert_eq!(blocks(17, 9, &[1, 0x11, 0]), 6);
        assert_eq!(blocks(17, 9, &[1, 0x21, 0, 2, 0x11, 0]), 10);
        assert_eq!(blocks(17, 9, &[]), 0);
    }

    #[test]
    fn fewer_bytes_than_blocks_need_are_too_few() {
        // 4096 blocks of two bits each are 1024 bytes, of one bit 512.
        for (marker, least) in [(0xC0, 1024), (0xC2, 512)] {
            let mut frame = Frame::read(marker, &header(512, 512, &[0x11])).unwrap();
            frame.scan(least - 1).unwrap();
            assert_eq!(frame.end(), Err(PhotoFault::CutOff));
            frame.scan(1).unwrap();
            assert_eq!(frame.end(), Ok(()));
        }
    }

    #[test]
    fn the_larger_the_picture_the_fewer_its_scans() {
        let scans = |width, height| {
            let mut frame = Frame::read(0xC2, &header(width, height, &[0x11])).unwrap();
            (0..100).take_while(|_| frame.scan(0).is_ok()).count()
        };
        assert_eq!(scans(64, 64), 32);
        assert_eq!(scans(4000, 3000), 16);
        assert_eq!(scans(4000, 4000), 12);
    }
}
