//! The plan: what matters most within the minutes at hand, and following it.

use crate::{Baywalk, Fault};
use baywalk_screens::Told;
use baywalk_screens::plan::{self, PlanScreen};

#[uniffi::export]
impl Baywalk {
    /// Plans the minutes at hand for the bays of a rig; in a walk, for what still waits.
    ///
    /// # Errors
    /// [`Fault`] where there is no such rig, the minutes are none or over 360, or the logbook can't be
    /// read.
    pub fn plan(&self, rig: &str, minutes: u16) -> Result<PlanScreen, Fault> {
        self.with_rig(rig, |core, rig| plan::plan(core, rig, minutes))
    }

    /// Plans so many minutes for what still waits in the open walk, and follows that.
    ///
    /// # Errors
    /// [`Fault`] as [`plan`](Self::plan), and where no walk is open or the rules refuse it.
    pub fn follow_plan(&self, rig: &str, minutes: u16) -> Result<Told, Fault> {
        self.with_rig(rig, |core, rig| plan::follow(core, rig, minutes))
    }

    /// Rejoins a plan that was left, made anew for the minutes that are left of it.
    ///
    /// # Errors
    /// [`Fault`] where no plan was followed in the open walk, or the rules refuse it.
    pub fn rejoin_plan(&self, rig: &str) -> Result<Told, Fault> {
        self.with_rig(rig, plan::rejoin)
    }

    /// Leaves the plan: the bays come nose to tail again.
    ///
    /// # Errors
    /// [`Fault`] where no plan is followed.
    pub fn leave_plan(&self, rig: &str) -> Result<Told, Fault> {
        self.with_rig(rig, plan::leave)
    }
}
