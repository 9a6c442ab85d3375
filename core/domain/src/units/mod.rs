//! Quantities with their units, and what a person typed beside them.

mod decimal;
mod length;
mod quantity;
mod stated;

pub use decimal::{Decimal, DecimalFault};
pub use length::{Length, LengthFault, LengthUnit, StatedLength};
pub use quantity::{
    Current, CurrentUnit, Distance, DistanceUnit, EngineHours, HourUnit, OutOfRange, Torque,
    TorqueUnit, Voltage, VoltageUnit,
};
pub use stated::{Stated, StatedFault, Unit};
