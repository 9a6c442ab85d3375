//! A bay's own photo, with pins where its points are.

use crate::ids::{BayId, PointId};

/// The edge of a photo is parted into so many; a pin stands at a whole one.
const PARTS: u16 = 1000;

/// The place of a point on a photo, in thousandths of its width and height.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Pin {
    point: PointId,
    across: u16,
    down: u16,
}

impl Pin {
    /// A pin for a point, thousandths of the width from the left and of the height from the top;
    /// `None` where it would stand beside the photo.
    ///
    /// # Example
    /// ```
    /// use baywalk_domain::ids::PointId;
    /// use baywalk_domain::rig::Pin;
    /// let point = PointId::new(uuid::Uuid::nil());
    /// assert_eq!(Pin::new(point, 420, 310).map(|pin| (pin.across(), pin.down())), Some((420, 310)));
    /// assert_eq!(Pin::new(point, 420, 1001), None);
    /// ```
    #[must_use]
    pub const fn new(point: PointId, across: u16, down: u16) -> Option<Self> {
        if across <= PARTS && down <= PARTS {
            Some(Self {
                point,
                across,
                down,
            })
        } else {
            None
        }
    }

    /// The point.
    #[must_use]
    pub const fn point(self) -> PointId {
        self.point
    }

    /// Thousandths of the photo's width, from the left.
    #[must_use]
    pub const fn across(self) -> u16 {
        self.across
    }

    /// Thousandths of the photo's height, from the top.
    #[must_use]
    pub const fn down(self) -> u16 {
        self.down
    }
}

/// The photo that shows a bay, and where its points are on it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct BayPhoto {
    /// The bay; one photo each.
    pub bay: BayId,
    /// The digest of the photo.
    pub photo: String,
    /// The pins, one a point at most.
    pub pins: Vec<Pin>,
}

impl BayPhoto {
    /// A bay's photo with no pin in it.
    #[must_use]
    pub const fn new(bay: BayId, photo: String) -> Self {
        Self {
            bay,
            photo,
            pins: Vec::new(),
        }
    }

    /// The pin of a point.
    #[must_use]
    pub fn pin(&self, point: PointId) -> Option<Pin> {
        self.pins.iter().copied().find(|pin| pin.point == point)
    }

    /// The same photo with a point's pin put where it is said, or taken out.
    ///
    /// # Example
    /// ```
    /// use baywalk_domain::ids::{BayId, PointId};
    /// use baywalk_domain::rig::{BayPhoto, Pin};
    /// let (bay, point) = (BayId::new(uuid::Uuid::nil()), PointId::new(uuid::Uuid::nil()));
    /// let photo = BayPhoto::new(bay, "1f".repeat(32)).with(point, Pin::new(point, 1, 2));
    /// assert_eq!(photo.clone().with(point, Pin::new(point, 3, 4)).pins.len(), 1);
    /// assert_eq!(photo.with(point, None).pins, []);
    /// ```
    #[must_use]
    pub fn with(mut self, point: PointId, pin: Option<Pin>) -> Self {
        self.pins.retain(|pin| pin.point != point);
        self.pins.extend(pin);
        self
    }
}

/// Whether a text can be the digest of a photo: SHA-256 as 64 lowercase hexadecimal digits.
pub(crate) fn is_digest(text: &str) -> bool {
    let hexadecimal = |b: u8| b.is_ascii_digit() || (b'a'..=b'f').contains(&b);
    text.len() == 64 && text.bytes().all(hexadecimal)
}
