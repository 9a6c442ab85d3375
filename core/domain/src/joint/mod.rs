//! One joint: its resistance from the drop at a current, its heat, and how it stands against others.

mod drop;
mod glow;
mod heat;
mod like;
mod load;
mod wire;

pub use drop::{JointFault, Measured, MicroOhms, measure};
pub use glow::{GLOW, Glow};
pub use heat::{
    Compared, HeatCaution, HeatClass, HeatFault, HeatJudged, Rise, Surface, class, heat,
};
pub use like::{Against, INVESTIGATE_ABOVE, against_like};
pub use load::{EXPONENTS, LEAST_LOAD, LoadFault, Loading, at_normal_load};
pub use wire::{AgainstWire, against_wire};
