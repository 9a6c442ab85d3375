//! Why an act is not taken, in whole sentences: what, what was found, what to do.

use crate::Words;
use baywalk_domain::isolation::{KNOWN_LIVE_AC, KNOWN_LIVE_DC};
use baywalk_domain::rig::{Book, SupplyKind};
use baywalk_domain::supply::ReadingStep;
use baywalk_domain::walk::{BayStage, NoException, Phase, Refusal};

impl Words {
    /// Why an act is not taken, with things called by code and name where the book is at hand.
    ///
    /// # Example
    /// ```
    /// use baywalk_domain::walk::Refusal;
    /// use baywalk_words::Words;
    /// let told = Words::for_locales(&["en"]).refusal(&Refusal::Paused, None);
    /// assert!(told.starts_with("The walk is stopped for now."));
    /// ```
    #[must_use]
    pub fn refusal<'b>(&self, refusal: &Refusal, book: impl Into<Option<&'b Book>>) -> String {
        let book = book.into();
        let text = match refusal {
            Refusal::NoRig
            | Refusal::NoWalk
            | Refusal::WalkOpen
            | Refusal::Paused
            | Refusal::NotPaused
            | Refusal::NoRoute
            | Refusal::NoSources
            | Refusal::Proximity
            | Refusal::NameMeter
            | Refusal::NoMeter
            | Refusal::NoSuchPair
            | Refusal::NoTool
            | Refusal::SayWhy
            | Refusal::NoFinding
            | Refusal::OdometerBack
            | Refusal::NothingToMend
            | Refusal::PutOffTooFar
            | Refusal::NotNewest { .. }
            | Refusal::NothingToStrike => self.plain_refusal(refusal),
            Refusal::Phase { .. }
            | Refusal::NotReady(_)
            | Refusal::MustHave(_)
            | Refusal::NotInBook(_)
            | Refusal::Rule(_)
            | Refusal::Book(_) => self.walk_refusal(refusal),
            Refusal::SourceNotAway(_)
            | Refusal::SourceFirst(_)
            | Refusal::SourceDone(_)
            | Refusal::AliveByChoice { .. }
            | Refusal::Bay { .. }
            | Refusal::NotCounted(_)
            | Refusal::ToolNotSet(_)
            | Refusal::BayOpen(_) => self.place_refusal(refusal, book),
            Refusal::Locked { .. }
            | Refusal::WrongKind(_)
            | Refusal::NotedAlready(_)
            | Refusal::NothingNoted(_)
            | Refusal::NotBy { .. }
            | Refusal::LeaveWhatHeld(_)
            | Refusal::RemakeNotSet { .. }
            | Refusal::CantLeaveSo(_)
            | Refusal::WaitsForLeft(_) => self.point_refusal(refusal, book),
            Refusal::NotKnownLive(_)
            | Refusal::MeterCategory(_)
            | Refusal::NoProof(_)
            | Refusal::NoException(_)
            | Refusal::ReadingFirst(_)
            | Refusal::ReadingStops(_)
            | Refusal::NoSuchReading(_)
            | Refusal::WrongMeasure(_) => self.reading_refusal(refusal),
        };
        crate::words::sentence(&text)
    }

    /// Refusals that name nothing.
    fn plain_refusal(&self, refusal: &Refusal) -> String {
        self.say(match refusal {
            Refusal::NoRig => "refusal-no-rig",
            Refusal::NoWalk => "refusal-no-walk",
            Refusal::WalkOpen => "refusal-walk-open",
            Refusal::Paused => "refusal-paused",
            Refusal::NotPaused => "refusal-not-paused",
            Refusal::NoRoute => "refusal-no-route",
            Refusal::NoSources => "refusal-no-sources",
            Refusal::Proximity => "refusal-proximity",
            Refusal::NameMeter => "refusal-name-meter",
            Refusal::NoMeter => "refusal-no-meter",
            Refusal::NoSuchPair => "refusal-no-such-pair",
            Refusal::NoTool => "refusal-no-tool",
            Refusal::SayWhy => "refusal-say-why",
            Refusal::NoFinding => "refusal-no-finding",
            Refusal::OdometerBack => "refusal-odometer-back",
            Refusal::NothingToMend => "refusal-nothing-to-mend",
            Refusal::PutOffTooFar => "refusal-put-off-too-far",
            Refusal::NotNewest { .. } => "refusal-not-newest",
            Refusal::NothingToStrike => "refusal-nothing-to-strike",
            _ => "refusal-other",
        })
    }

    /// Refusals about the walk, its list before and its book.
    fn walk_refusal(&self, refusal: &Refusal) -> String {
        match refusal {
            Refusal::Phase { found, expected } => self.phase_refusal(*found, *expected),
            Refusal::NotReady(item) => {
                self.fill("refusal-not-ready", &[("item", self.code(*item).into())])
            }
            Refusal::MustHave(item) => {
                self.fill("refusal-must-have", &[("item", self.code(*item).into())])
            }
            Refusal::NotInBook("photo") => self.say("refusal-photo"),
            Refusal::NotInBook(what) => {
                let what = self.record_word(what);
                self.fill("refusal-not-in-book", &[("what", what.into())])
            }
            Refusal::Book(fault) => self.book_fault(fault),
            Refusal::Rule(fault) => self.code(*fault),
            _ => self.say("refusal-other"),
        }
    }

    /// Refusals about where a source or a bay stands.
    fn place_refusal(&self, refusal: &Refusal, book: Option<&Book>) -> String {
        let source = |key, id| self.fill(key, &[("source", self.source_name(id, book).into())]);
        let bay = |key, id| self.fill(key, &[("bay", self.bay_name(id, book).into())]);
        match refusal {
            Refusal::SourceNotAway(id) => source("refusal-source-not-away", *id),
            Refusal::SourceFirst(id) => source("refusal-source-first", *id),
            Refusal::SourceDone(id) => source("refusal-source-done", *id),
            Refusal::AliveByChoice { bay, feeding } => self.fill(
                "refusal-alive-by-choice",
                &[
                    ("bay", self.bay_name(*bay, book).into()),
                    ("source", self.source_name(*feeding, book).into()),
                ],
            ),
            Refusal::Bay {
                bay,
                found,
                expected,
            } => self.bay_refusal(&self.bay_name(*bay, book), *found, *expected),
            Refusal::ToolNotSet(id) => self.fill(
                "refusal-tool-not-set",
                &[("tool", self.tool_name(*id, book).into())],
            ),
            Refusal::NotCounted(id) => bay("refusal-not-counted", *id),
            Refusal::BayOpen(id) => bay("refusal-bay-open", *id),
            _ => self.say("refusal-other"),
        }
    }

    fn bay_refusal(&self, bay: &str, found: BayStage, expected: BayStage) -> String {
        let mut args = vec![("bay", bay.into()), ("found", self.code(found).into())];
        if expected == BayStage::Open {
            return self.fill("refusal-bay-not-open", &args);
        }
        args.push(("expected", self.code(expected).into()));
        self.fill("refusal-bay-stage", &args)
    }

    fn phase_refusal(&self, found: Phase, expected: Phase) -> String {
        let key = if found < expected {
            "refusal-phase-early"
        } else {
            "refusal-phase-late"
        };
        let args = [
            ("found", self.code(found).into()),
            ("expected", self.code(expected).into()),
        ];
        self.fill(key, &args)
    }

    /// Refusals about one point.
    fn point_refusal(&self, refusal: &Refusal, book: Option<&Book>) -> String {
        let point = |key, id| self.fill(key, &[("point", self.point_name(id, book).into())]);
        match refusal {
            Refusal::Locked { point, needs } => self.fill(
                "refusal-locked",
                &[
                    ("point", self.point_name(*point, book).into()),
                    ("needs", self.needs(needs, book).into()),
                ],
            ),
            Refusal::WrongKind(id) => {
                let known = book.and_then(|book| book.point(*id));
                match known.and_then(|known| known.terminal()) {
                    Some(_) => point("refusal-wrong-kind-terminal", *id),
                    None => point("refusal-wrong-kind-look", *id),
                }
            }
            Refusal::NotedAlready(id) => point("refusal-noted-already", *id),
            Refusal::NothingNoted(id) => point("refusal-nothing-noted", *id),
            Refusal::NotBy { point, advice } => self.fill(
                "refusal-not-by",
                &[
                    ("point", self.point_name(*point, book).into()),
                    ("advice", self.code(*advice).into()),
                ],
            ),
            Refusal::LeaveWhatHeld(id) => point("refusal-leave-what-held", *id),
            Refusal::RemakeNotSet { point, because } => self.fill(
                "refusal-remake-not-set",
                &[
                    ("point", self.point_name(*point, book).into()),
                    ("because", self.code(*because).into()),
                ],
            ),
            Refusal::CantLeaveSo(id) => point("refusal-cant-leave-so", *id),
            Refusal::WaitsForLeft(id) => point("refusal-waits-for-left", *id),
            _ => self.say("refusal-other"),
        }
    }

    /// Refusals about readings, and all that is left.
    fn reading_refusal(&self, refusal: &Refusal) -> String {
        let reading =
            |key, step: ReadingStep| self.fill(key, &[("reading", self.code(step).into())]);
        match refusal {
            Refusal::NotKnownLive(supply) => {
                let least = match supply {
                    SupplyKind::Ac => KNOWN_LIVE_AC,
                    SupplyKind::Dc => KNOWN_LIVE_DC,
                };
                let least = self.number(least, 0);
                let args = [
                    ("least", least.into()),
                    ("supply", self.code(*supply).into()),
                ];
                self.fill("refusal-not-known-live", &args)
            }
            Refusal::MeterCategory(found) => {
                let args = [("found", self.code(*found).into())];
                self.fill("refusal-meter-category", &args)
            }
            Refusal::NoProof(supply) => {
                self.fill("refusal-no-proof", &[("supply", self.code(*supply).into())])
            }
            Refusal::NoException(why) => {
                let key = match why {
                    NoException::Switch => "refusal-exception-isolate",
                    NoException::NotNoted => "refusal-exception-note",
                    NoException::Ac | NoException::TooHigh => "refusal-exception-qualified",
                };
                self.fill(key, &[("reason", self.code(*why).into())])
            }
            Refusal::ReadingFirst(step) => reading("refusal-reading-first", *step),
            Refusal::ReadingStops(step) => reading("refusal-reading-stops", *step),
            Refusal::NoSuchReading(step) => reading("refusal-no-such-reading", *step),
            Refusal::WrongMeasure(step) if step.is_voltage() => {
                reading("refusal-measure-is-voltage", *step)
            }
            Refusal::WrongMeasure(step) => reading("refusal-measure-is-test", *step),
            _ => self.say("refusal-other"),
        }
    }
}
