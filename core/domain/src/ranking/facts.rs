//! What is known of a point from the walks behind.

use crate::walk::Grade;

/// How long ago, and how far.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Since {
    /// Days.
    pub days: u32,
    /// Miles, where the odometer was noted.
    pub miles: Option<f64>,
}

/// What is known of a point from the walks behind; nothing of one that was never reached.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct History {
    /// Since it was last checked or set; for a look, since it was last looked at.
    pub since: Option<Since>,
    /// What was found, newest first; walks that did not judge it are left out.
    pub grades: Vec<Grade>,
}
