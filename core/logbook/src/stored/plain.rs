//! Values that are stored as they are, and lists of shapes.

use super::moment::MOST;
use super::{Shape, ShapeCause, ShapeFault};

macro_rules! plain {
    ($($plain:ty),+ $(,)?) => {$(
        impl Shape for $plain {
            type Domain = Self;
            fn of(domain: &Self) -> Self {
                domain.clone()
            }
            fn domain(self) -> Result<Self, ShapeFault> {
                Ok(self)
            }
        }
    )+};
}

plain!(bool, u8, u16, u32, String);

impl Shape for u64 {
    type Domain = Self;
    fn of(domain: &Self) -> Self {
        (*domain).min(MOST)
    }
    fn domain(self) -> Result<Self, ShapeFault> {
        let found = self;
        if found > MOST {
            return Err(ShapeCause::Number { found, most: MOST }.into());
        }
        Ok(found)
    }
}

impl<S: Shape> Shape for Option<S> {
    type Domain = Option<S::Domain>;
    fn of(domain: &Self::Domain) -> Self {
        domain.as_ref().map(S::of)
    }
    fn domain(self) -> Result<Self::Domain, ShapeFault> {
        self.map(S::domain).transpose()
    }
}

impl<S: Shape> Shape for Box<S> {
    type Domain = Box<S::Domain>;
    fn of(domain: &Self::Domain) -> Self {
        Self::new(S::of(domain))
    }
    fn domain(self) -> Result<Self::Domain, ShapeFault> {
        (*self).domain().map(Box::new)
    }
}

impl<S: Shape> Shape for Vec<S> {
    type Domain = Vec<S::Domain>;
    fn of(domain: &Self::Domain) -> Self {
        domain.iter().map(S::of).collect()
    }
    fn domain(self) -> Result<Self::Domain, ShapeFault> {
        let numbered = self.into_iter().enumerate();
        numbered
            .map(|(place, shape)| {
                shape
                    .domain()
                    .map_err(|fault| fault.within(&place.to_string()))
            })
            .collect()
    }
}
