//! Screens: one call each.

use crate::view::{self, BayView, CardView, ResultView, RigView, Room};
use crate::{Baywalk, Fault, Field};
use baywalk_screens::card::Key;
use baywalk_screens::due::DueScreen;
use baywalk_screens::findings::FindingsScreen;
use baywalk_screens::learned::LearnedScreen;
use baywalk_screens::notice::NoticeLine;
use baywalk_screens::practice::PracticeScreen;
use baywalk_screens::rigs::RigsScreen;
use baywalk_screens::rule::RulesScreen;
use baywalk_screens::torque::{TorqueQuestion, TorqueScreen};
use baywalk_screens::{
    Told, calendar, due, findings, learned, notice, paper, practice, rigs, room, rule, step, torque,
};
use std::path::Path;

#[uniffi::export]
impl Baywalk {
    /// The rigs in the logbook.
    ///
    /// # Errors
    /// [`Fault`] where the logbook can't be read.
    pub fn rigs(&self) -> Result<RigsScreen, Fault> {
        self.with(|core| rigs::rigs(core))
    }

    /// One rig, its strip drawn over a width.
    ///
    /// # Errors
    /// [`Fault`] where there is no such rig or the logbook can't be read.
    pub fn rig(&self, rig: &str, width: f64) -> Result<RigView, Fault> {
        self.with_rig(rig, |core, rig| view::rig(core, rig, width))
    }

    /// The card of the next step of the open walk, drawn over some room.
    ///
    /// # Errors
    /// [`Fault`] where no walk is open or the logbook can't be read.
    pub fn card(&self, rig: &str, room: Room) -> Result<CardView, Fault> {
        self.with_rig(rig, |core, rig| {
            let card = step::card(core, rig)?;
            view::card(core, rig, card, room)
        })
    }

    /// One bay by its code, its line drawn over a width.
    ///
    /// # Errors
    /// [`Fault`] where there is no such bay or the logbook can't be read.
    pub fn bay(&self, rig: &str, code: &str, width: f64) -> Result<BayView, Fault> {
        self.with_rig(rig, |core, rig| view::bay(core, rig, code, width))
    }

    /// How the newest walk of a rig ended, or how it stands, its strip drawn over a width.
    ///
    /// # Errors
    /// [`Fault`] where none was walked or the logbook can't be read.
    pub fn result(&self, rig: &str, width: f64) -> Result<ResultView, Fault> {
        self.with_rig(rig, |core, rig| view::result(core, rig, width))
    }

    /// What can be put on paper of a rig, one key each.
    ///
    /// # Errors
    /// [`Fault`] where there is no such rig or the logbook can't be read.
    pub fn papers(&self, rig: &str) -> Result<Vec<Key>, Fault> {
        self.with_rig(rig, |core, rig| paper::papers(core, rig))
    }

    /// Writes the paper of a key into a folder and gives the path of its file. `country` is the code
    /// of two letters that decides what paper is usual.
    ///
    /// # Errors
    /// [`Fault`] where there is no such key, the logbook can't be read, or the file can't be written.
    pub fn write_paper(
        &self,
        rig: &str,
        key: &str,
        country: &str,
        folder: &str,
    ) -> Result<String, Fault> {
        self.with_rig(rig, |core, rig| {
            let path = paper::write_by_key(core, rig, key, country, Path::new(folder))?;
            Ok(path.display().to_string())
        })
    }

    /// The findings of a rig, the open and most urgent first, with the keys to decide about them.
    ///
    /// # Errors
    /// [`Fault`] where there is no such rig or the logbook can't be read.
    pub fn findings(&self, rig: &str) -> Result<FindingsScreen, Fault> {
        self.with_rig(rig, |core, rig| findings::screen(core, rig))
    }

    /// Takes a key of the findings, with what was answered, in order.
    ///
    /// # Errors
    /// [`Fault`] where there is no such key, or the rules refuse it.
    pub fn findings_press(
        &self,
        rig: &str,
        key: &str,
        answers: Vec<String>,
    ) -> Result<Told, Fault> {
        self.with_rig(rig, |core, rig| findings::press(core, rig, key, &answers))
    }

    /// When the next walk is due, and why.
    ///
    /// # Errors
    /// [`Fault`] where there is no such rig or the logbook can't be read.
    pub fn due(&self, rig: &str) -> Result<DueScreen, Fault> {
        self.with_rig(rig, |core, rig| due::due(core, rig))
    }

    /// The next notices of all rigs, one a rig and day, the nearest first and at most 32; a shell asks
    /// for them anew at each start, after acts, and when clock or zone have changed.
    ///
    /// # Errors
    /// [`Fault`] where the logbook can't be read.
    pub fn notices(&self) -> Result<Vec<NoticeLine>, Fault> {
        self.with(|core| notice::notices(core))
    }

    /// What is due of a rig as a calendar file (RFC 5545).
    ///
    /// # Errors
    /// [`Fault`] where there is no such rig or the logbook can't be read.
    pub fn calendar(&self, rig: &str) -> Result<String, Fault> {
        self.with_rig(rig, |core, rig| calendar::file(core, rig))
    }

    /// The owner's rules of when to look again.
    ///
    /// # Errors
    /// [`Fault`] where there is no such rig or the logbook can't be read.
    pub fn rules(&self, rig: &str) -> Result<RulesScreen, Fault> {
        self.with_rig(rig, |core, rig| rule::rules(core, rig))
    }

    /// What the rig's own past tells of its terminals.
    ///
    /// # Errors
    /// [`Fault`] where there is no such rig or the logbook can't be read.
    pub fn learned(&self, rig: &str) -> Result<LearnedScreen, Fault> {
        self.with_rig(rig, |core, rig| learned::told(core, rig))
    }

    /// The advice for a point of a rig, by its code.
    ///
    /// # Errors
    /// [`Fault`] where the rig has no such terminal or the logbook can't be read.
    pub fn torque_of(&self, rig: &str, code: &str) -> Result<TorqueScreen, Fault> {
        self.with_rig(rig, |core, rig| torque::of_point(core, rig, code))
    }

    /// The advice for a terminal that stands in no rig, by its columns.
    ///
    /// # Errors
    /// [`Fault`] with every fault of the description.
    pub fn torque(&self, fields: Vec<Field>) -> Result<TorqueScreen, Fault> {
        let pairs = Field::pairs(fields);
        self.with(|core| torque::by_hand(core, &pairs))
    }

    /// What is asked of a terminal that stands in no rig.
    ///
    /// # Errors
    /// None today; a shell treats one as any other.
    pub fn torque_form(&self) -> Result<Vec<TorqueQuestion>, Fault> {
        Ok(torque::form(&self.words))
    }

    /// The owner's settings of the check.
    ///
    /// # Errors
    /// [`Fault`] where the logbook can't be read.
    pub fn practice(&self) -> Result<PracticeScreen, Fault> {
        self.with(|core| practice::practice(core))
    }

    /// Sets the share of the label's torque at which is checked, in percent.
    ///
    /// # Errors
    /// [`Fault`] where it is out of bounds or can't be kept.
    pub fn set_practice(&self, percent: u8) -> Result<PracticeScreen, Fault> {
        self.with(|core| practice::set(core, percent))
    }

    /// Whether room for a walk is short, in words; nothing where there is room.
    ///
    /// # Errors
    /// [`Fault`] where the disk can't be asked.
    pub fn low_room(&self) -> Result<Option<String>, Fault> {
        self.with(|core| room::low(core))
    }
}
