//! As found and as left in words.

use crate::Words;
use baywalk_domain::rig::Book;
use baywalk_domain::walk::{AsFound, AsLeft, Away, Movement, Seen, Test};

impl Words {
    /// What was found at a terminal, the grade first.
    ///
    /// # Example
    /// ```
    /// use baywalk_domain::walk::{Angle, AsFound, Movement};
    /// use baywalk_words::Words;
    /// let found = AsFound::Moved(Movement::MarkOff { angle: Angle::Quarter });
    /// let words = Words::for_locales(&["en"]);
    /// assert_eq!(words.as_found(&found, None), "Moved: paint mark off by 1/4 turn");
    /// ```
    #[must_use]
    pub fn as_found<'b>(&self, found: &AsFound, book: impl Into<Option<&'b Book>>) -> String {
        match found {
            AsFound::Held(Test::Torque { at, tool }) => self.fill(
                "walk-found-held-torque",
                &[
                    ("at", self.torque(at).into()),
                    ("tool", self.tool_name(*tool, book).into()),
                ],
            ),
            AsFound::Held(Test::Tug) => self.say("walk-found-held-tug"),
            AsFound::Moved(movement) => self.movement(movement, book.into()),
            AsFound::Loose => self.say("walk-found-loose"),
            AsFound::Apart => self.say("walk-found-apart"),
            AsFound::OpenedByUs => self.say("walk-found-opened"),
            AsFound::LookedAt { tugged: true } => self.say("walk-found-looked-tugged"),
            AsFound::LookedAt { tugged: false } => self.say("walk-found-looked"),
            AsFound::NotJudged { why, note } if note.trim().is_empty() => {
                self.fill("walk-found-not-judged", &[("why", self.code(*why).into())])
            }
            AsFound::NotJudged { why, note } => self.fill(
                "walk-found-not-judged-note",
                &[("why", self.code(*why).into()), ("note", note.into())],
            ),
        }
    }

    fn movement(&self, movement: &Movement, book: Option<&Book>) -> String {
        match movement {
            Movement::Turned { angle, below, tool } => self.fill(
                "walk-found-turned",
                &[
                    ("angle", self.code(*angle).into()),
                    ("below", self.torque(below).into()),
                    ("tool", self.tool_name(*tool, book).into()),
                ],
            ),
            Movement::Began { at, tool } => self.fill(
                "walk-found-began",
                &[
                    ("at", self.torque(at).into()),
                    ("tool", self.tool_name(*tool, book).into()),
                ],
            ),
            Movement::MarkOff { angle } => self.fill(
                "walk-found-mark-off",
                &[("angle", self.code(*angle).into())],
            ),
            Movement::Gave => self.say("walk-found-gave"),
        }
    }

    /// What was done at a terminal.
    #[must_use]
    pub fn as_left<'b>(&self, left: &AsLeft, book: impl Into<Option<&'b Book>>) -> String {
        let book = book.into();
        match left {
            AsLeft::Alone(why) => self.fill("walk-left-alone", &[("why", self.code(*why).into())]),
            AsLeft::Set { torque, tool } => {
                let tool = self.tool_name(*tool, book);
                let args = [
                    ("torque", self.torque(torque).into()),
                    ("tool", tool.into()),
                ];
                self.fill("walk-left-set", &args)
            }
            AsLeft::Remade { set: None } => self.say("walk-left-remade"),
            AsLeft::Remade {
                set: Some((torque, tool)),
            } => {
                let tool = self.tool_name(*tool, book);
                let args = [
                    ("torque", self.torque(torque).into()),
                    ("tool", tool.into()),
                ];
                self.fill("walk-left-remade-set", &args)
            }
            AsLeft::OutOfService { how } => {
                self.fill("walk-left-out-of-service", &[("how", how.into())])
            }
        }
    }

    /// What was seen at a look.
    #[must_use]
    pub fn seen(&self, seen: &Seen) -> String {
        match seen {
            Seen::Clear => self.say("walk-seen-clear"),
            Seen::NotLooked(why) => self.fill("walk-seen-not-looked", &[("why", why.into())]),
            Seen::Trouble(what) => self.fill("walk-seen-trouble", &[("what", what.into())]),
        }
    }

    /// How a source was taken away.
    #[must_use]
    pub fn away(&self, away: &Away) -> String {
        let (key, note) = match away {
            Away::Isolated(note) if note.trim().is_empty() => ("walk-away-isolated", note),
            Away::Isolated(note) => ("walk-away-isolated-note", note),
            Away::NotFound(note) if note.trim().is_empty() => ("walk-away-not-found", note),
            Away::NotFound(note) => ("walk-away-not-found-note", note),
            Away::Stays(why) => ("walk-away-stays", why),
        };
        self.fill(key, &[("note", note.into())])
    }
}
