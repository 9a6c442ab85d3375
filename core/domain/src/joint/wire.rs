//! A joint against the same length of its own wire.

use super::{JointFault, MicroOhms};

/// How a joint stands against the wire that it holds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AgainstWire {
    /// The resistance of the same length of unbroken wire.
    pub wire: MicroOhms,
    /// The joint's resistance over that of the wire.
    pub ratio: f64,
    /// Whether the joint has more than the wire would have.
    pub above: bool,
}

/// Holds a joint against as much unbroken wire as lies between the two probes.
///
/// A sound crimp or clamp has no more resistance than the wire it takes the place of (common
/// practice, no source). `metres` is the distance of the probes, `ohm_per_metre` that of the wire.
///
/// # Errors
/// [`JointFault::Wire`] where length or resistance is not above 0; [`JointFault::Resistance`] where
/// the wire would have more than 10 Ω.
///
/// # Example
/// ```
/// use baywalk_domain::joint::{MicroOhms, against_wire};
/// // 0.1 m of 6 AWG stranded copper at 75 degrees Celsius: 0.491 ohm in 1,000 ft
/// // (NEC chapter 9 table 8, second hand).
/// let against = against_wire(MicroOhms::new(250.0)?, 0.1, 0.491 / 304.8)?;
/// assert!((against.wire.micro_ohms() - 161.089).abs() < 1e-3);
/// assert!(against.above);
/// # Ok::<(), baywalk_domain::joint::JointFault>(())
/// ```
pub fn against_wire(
    joint: MicroOhms,
    metres: f64,
    ohm_per_metre: f64,
) -> Result<AgainstWire, JointFault> {
    let ohms = metres * ohm_per_metre;
    if !(metres > 0.0 && ohm_per_metre > 0.0 && ohms > 0.0) {
        return Err(JointFault::Wire {
            metres,
            ohm_per_metre,
        });
    }
    let wire = MicroOhms::new(ohms * 1e6)?;
    Ok(AgainstWire {
        wire,
        ratio: joint.micro_ohms() / wire.micro_ohms(),
        above: joint > wire,
    })
}
