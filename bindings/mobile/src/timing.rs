//! What tells when to look again: notes between walks, rules, putting off.

use crate::{Baywalk, Fault, Field};
use baywalk_screens::when::{self, WhenScreen};
use baywalk_screens::{Told, due, rule, usage};

#[uniffi::export]
impl Baywalk {
    /// When next, all in one.
    ///
    /// # Errors
    /// [`Fault`] where there is no such rig or the logbook can't be read.
    pub fn when_next(&self, rig: &str) -> Result<WhenScreen, Fault> {
        self.with_rig(rig, |core, rig| when::when(core, rig))
    }

    /// Takes a key of when next, with what was typed for what it asks, in order.
    ///
    /// # Errors
    /// [`Fault`] where there is no such key, something typed can't be read, or the rules refuse it.
    pub fn when_press(&self, rig: &str, key: &str, typed: Vec<String>) -> Result<Told, Fault> {
        self.with_rig(rig, |core, rig| when::press(core, rig, key, &typed))
    }

    /// Notes the odometer, as `41234 mi`.
    ///
    /// # Errors
    /// [`Fault`] where it can't be read or kept.
    pub fn note_odometer(&self, rig: &str, text: &str) -> Result<Told, Fault> {
        self.with_rig(rig, |core, rig| usage::odometer(core, rig, text))
    }

    /// Notes that the odometer goes on from a reading: `replaced`, or `earlier_wrong`.
    ///
    /// # Errors
    /// [`Fault`] where it can't be read or kept.
    pub fn restart_odometer(&self, rig: &str, text: &str, why: &str) -> Result<Told, Fault> {
        self.with_rig(rig, |core, rig| usage::restart(core, rig, text, why))
    }

    /// Notes the hour meter of the engine, as `812 h`.
    ///
    /// # Errors
    /// [`Fault`] where it can't be read or kept.
    pub fn note_hours(&self, rig: &str, text: &str) -> Result<Told, Fault> {
        self.with_rig(rig, |core, rig| usage::hours(core, rig, text))
    }

    /// Notes a trip of a rig that has no odometer, as `320 mi`.
    ///
    /// # Errors
    /// [`Fault`] where it can't be read or kept.
    pub fn note_trip(&self, rig: &str, text: &str) -> Result<Told, Fault> {
        self.with_rig(rig, |core, rig| usage::trip(core, rig, text))
    }

    /// Notes an event by its code: what it is about (a code, empty for the rig), how far of bad road
    /// (empty where not known), and words.
    ///
    /// # Errors
    /// [`Fault`] where a part can't be read or names nothing.
    pub fn note_event(
        &self,
        rig: &str,
        event: &str,
        about: &str,
        distance: &str,
        note: &str,
    ) -> Result<Told, Fault> {
        self.with_rig(rig, |core, rig| {
            usage::event(core, rig, event, (about, distance, note))
        })
    }

    /// Sets a rule from its parts, new or in place of one of the list.
    ///
    /// # Errors
    /// [`Fault`] where a part can't be read or the rule can't be.
    pub fn set_rule(
        &self,
        rig: &str,
        in_place: Option<u32>,
        fields: Vec<Field>,
    ) -> Result<Told, Fault> {
        let pairs = Field::pairs(fields);
        self.with_rig(rig, |core, rig| rule::set(core, rig, in_place, &pairs))
    }

    /// Drops a rule, by its number in the list.
    ///
    /// # Errors
    /// [`Fault`] where there is no such rule.
    pub fn drop_rule(&self, rig: &str, number: u32) -> Result<Told, Fault> {
        self.with_rig(rig, |core, rig| rule::drop(core, rig, number))
    }

    /// Puts off something that is due, by its number in the list, until a day and for a reason.
    ///
    /// # Errors
    /// [`Fault`] where there is no such thing, or the rules refuse it.
    pub fn put_off(&self, rig: &str, number: u32, until: &str, why: &str) -> Result<Told, Fault> {
        self.with_rig(rig, |core, rig| {
            due::put_off(core, rig, number, (until, why))
        })
    }
}
