//! The rank of each point of a rig.

use super::factor::{Factor, factors};
use super::{FactorKind, History};
use crate::ids::PointId;
use crate::isolation::{Behind, Wiring};
use crate::rig::{Book, Point};

/// The highest rank that one point has.
pub const MOST_RANK: u32 = 1_000_000;

/// The rank of a point, open to its factors.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Rank {
    /// The point.
    pub point: PointId,
    /// The product of all factors, in hundredths; from 1 to [`MOST_RANK`].
    pub worth: u32,
    /// The factors.
    pub factors: Vec<Factor>,
}

impl Rank {
    /// The product of the factors that tell how readily it moves, in hundredths.
    #[must_use]
    pub fn likelihood(&self) -> u32 {
        product(
            self.factors
                .iter()
                .filter(|factor| factor.kind().is_likelihood()),
        )
    }

    /// The product of the factors that tell what it would do, in hundredths.
    #[must_use]
    pub fn consequence(&self) -> u32 {
        let would_do = |factor: &&Factor| {
            !factor.kind().is_likelihood() && factor.kind() != FactorKind::Priority
        };
        product(self.factors.iter().filter(would_do))
    }
}

/// The rank of every point in use, bay by bay, nose to tail; `history` tells of each what the walks
/// behind tell.
///
/// # Example
/// ```
/// use baywalk_domain::ranking::{History, ranks};
/// # use baywalk_domain::rig::{Book, Rig, RigKind, ServiceKind, YearlyRule};
/// # let rule = YearlyRule { months: 12, distance: None };
/// # let (kind, service) = (RigKind::Trailer, ServiceKind::None);
/// # let (name, note) = ("Wren".to_owned(), String::new());
/// # let id = "0190f0c4-0000-7000-8000-000000000001".parse()?;
/// let book = Book::new(Rig { id, name, kind, service, rule, note });
/// assert!(ranks(&book, |_| History::default()).is_empty());
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn ranks(book: &Book, history: impl Fn(PointId) -> History) -> Vec<Rank> {
    let all = Wiring::of(book).all_behind();
    let behind = |point: &Point| {
        let set = point.terminal()?.set.as_deref()?;
        let here = |behind: &&Behind<'_>| behind.device == point.device && behind.set == set;
        all.iter().find(here).copied()
    };
    let points = book.bays_in_order().into_iter();
    let points = points.flat_map(|bay| {
        book.points_of(bay.id)
            .into_iter()
            .map(move |point| (bay, point))
    });
    points
        .filter_map(|(bay, point)| {
            let device = book.device(point.device)?;
            let factors = factors((point, device, bay), behind(point), &history(point.id));
            Some(Rank {
                point: point.id,
                worth: product(factors.iter()).clamp(1, MOST_RANK),
                factors,
            })
        })
        .collect()
}

/// The product of factors in hundredths, rounded down at each step.
fn product<'a>(factors: impl Iterator<Item = &'a Factor>) -> u32 {
    // Ten thousand times a hundredth, so that rounding down at each step loses nothing that shows.
    const FINE: u64 = 10_000;
    let fine = factors.fold(100 * FINE, |product, factor| {
        product.saturating_mul(u64::from(factor.hundredths)) / 100
    });
    u32::try_from(fine / FINE).unwrap_or(u32::MAX)
}
