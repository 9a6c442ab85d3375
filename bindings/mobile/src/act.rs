//! Acts: a walk is started, a key of a card is pressed.

use crate::view::{self, PressedView, Room, WeighedView};
use crate::{Baywalk, Fault};
use baywalk_screens::Told;
use baywalk_screens::start::{self, FirstWalk};
use baywalk_screens::step::{Press, press_card};

#[uniffi::export]
impl Baywalk {
    /// Starts a walk: of some bays by their codes, of all where none is named, or a second look at
    /// what the last walk set.
    ///
    /// # Errors
    /// [`Fault`] where a bay is not known, a walk is open already, or nothing waits for a second look.
    pub fn start(
        &self,
        rig: &str,
        person: &str,
        bays: Vec<String>,
        second_look: bool,
    ) -> Result<Told, Fault> {
        let wish = start::Wish {
            person,
            bays: &bays,
            second_look,
        };
        self.with_rig(rig, |core, rig| start::start(core, rig, &wish))
    }

    /// The first walk that a newcomer is offered; none where the rig was walked before.
    ///
    /// # Errors
    /// [`Fault`] where there is no such rig or the logbook can't be read.
    pub fn first_walk(&self, rig: &str) -> Result<Option<FirstWalk>, Fault> {
        self.with_rig(rig, |core, rig| start::first(core, rig))
    }

    /// What a key of the card that stands would bring with what is typed so far; nothing is recorded.
    /// The scale of the neutral is drawn over a width.
    ///
    /// # Errors
    /// [`Fault`] where no walk is open or the logbook can't be read.
    pub fn weigh(
        &self,
        rig: &str,
        key: &str,
        typed: Vec<String>,
        width: f64,
    ) -> Result<WeighedView, Fault> {
        self.with_rig(rig, |core, rig| {
            view::weigh(core, rig, (key, &typed), width)
        })
    }

    /// Takes a key that was pressed on a card, once; gives what became of it and the card that stands
    /// now, drawn over a width.
    ///
    /// # Errors
    /// [`Fault`] where there is no such key, something typed can't be read, or the act is refused;
    /// nothing is changed then.
    pub fn press(&self, rig: &str, press: Press, room: Room) -> Result<PressedView, Fault> {
        self.with_rig(rig, |core, rig| {
            let pressed = press_card(core, rig, &press)?;
            let card = pressed.card.map(|card| view::card(core, rig, card, room));
            Ok(PressedView {
                how: pressed.how,
                told: pressed.told,
                view: card.transpose()?,
            })
        })
    }
}
