//! Adapters that lengthen or shorten the lever of a torque wrench.

use crate::units::{Length, OutOfRange, Torque};

/// An adapter between a wrench and the joint: its length, and the angle at which it stands to the
/// lever of the wrench.
///
/// A coaxial extension bar is no adapter: it needs no correction.
///
/// # Example
/// ```
/// use baywalk_domain::torque::Adapter;
/// use baywalk_domain::units::{Length, Torque};
/// let mm = Length::from_millimetres;
/// let crowfoot = Adapter::new(mm(254.0)?, mm(38.1)?, 0.0)?;
/// let at_tool = crowfoot.at_tool(Torque::from_newton_metres(25.0)?)?;
/// assert_eq!(format!("{:.3}", at_tool.newton_metres()), "21.739");
/// assert!(Adapter::new(mm(50.0)?, mm(60.0)?, 180.0).is_err());
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Adapter {
    lever: Length,
    adapter: Length,
    degrees: f64,
}

/// Why an adapter was not taken.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum AdapterFault {
    /// The angle can't be.
    #[error(transparent)]
    Angle(#[from] OutOfRange),
    /// The adapter takes away half the lever or more.
    #[error(
        "the adapter leaves {left_mm} mm of a lever of {lever_mm} mm; expected over half of it"
    )]
    NoLever {
        /// What is left of the lever, in millimetres.
        left_mm: f64,
        /// The lever of the wrench, in millimetres.
        lever_mm: f64,
    },
}

impl Adapter {
    /// Takes the lever of the wrench (middle of its square to middle of its grip), the length of
    /// the adapter between middles, and the angle between them: 0° in line, 90° across, 180° back.
    ///
    /// # Errors
    /// [`AdapterFault`] outside 0 to 180°, or where half the lever or less is left.
    pub fn new(lever: Length, adapter: Length, degrees: f64) -> Result<Self, AdapterFault> {
        if !(degrees.is_finite() && (0.0..=180.0).contains(&degrees)) {
            return Err(AdapterFault::Angle(OutOfRange {
                quantity: "adapter-angle",
                found: degrees,
                least: 0.0,
                most: 180.0,
                unit: "deg",
            }));
        }
        let taken = Self {
            lever,
            adapter,
            degrees,
        };
        if taken.reach_mm() > lever.millimetres() / 2.0 {
            Ok(taken)
        } else {
            Err(AdapterFault::NoLever {
                left_mm: taken.reach_mm(),
                lever_mm: lever.millimetres(),
            })
        }
    }

    /// What the wrench must be set to so that the joint gets a torque: T·L/(L + E·cos θ) (statics).
    ///
    /// # Errors
    /// [`OutOfRange`] where the result is no torque that can be.
    pub fn at_tool(self, joint: Torque) -> Result<Torque, OutOfRange> {
        Torque::from_newton_metres(
            joint.newton_metres() * self.lever.millimetres() / self.reach_mm(),
        )
    }

    /// What the joint gets when the wrench is set to a torque.
    ///
    /// # Errors
    /// [`OutOfRange`] where the result is no torque that can be.
    pub fn at_joint(self, tool: Torque) -> Result<Torque, OutOfRange> {
        Torque::from_newton_metres(
            tool.newton_metres() * self.reach_mm() / self.lever.millimetres(),
        )
    }

    /// Lever and adapter together, along the lever, in millimetres.
    fn reach_mm(self) -> f64 {
        self.lever.millimetres() + self.adapter.millimetres() * self.degrees.to_radians().cos()
    }
}
