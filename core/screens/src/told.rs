//! Doing an act, and what is told of it.

use crate::{Core, Problem};
use baywalk_domain::coded::Coded;
use baywalk_domain::ids::{ActId, RigId};
use baywalk_domain::moment::Moment;
use baywalk_domain::walk::{Act, Call, Entry};
use baywalk_logbook::{ActFault, Outcome};
use serde::Serialize;

/// What is told of an act that was taken.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct Told {
    /// The kind of act.
    pub kind: String,
    /// What is so now, the gravest first.
    pub sentences: Vec<String>,
    /// The kinds of the findings it raised, by their codes.
    pub findings: Vec<String>,
    /// The entry's number in the ledger.
    pub seq: u64,
    /// Whether the same act had been taken before.
    pub repeated: bool,
}

impl Core {
    /// Does an act now.
    ///
    /// # Errors
    /// [`Problem`] where the rules refuse it or it can't be kept; nothing is changed then.
    pub fn act(&mut self, rig: RigId, act: Act) -> Result<Told, Problem> {
        let outcome = self.logbook.act(rig, act);
        self.tell(rig, outcome)
    }

    /// Does an act now, under the name that a card gave it.
    ///
    /// # Errors
    /// [`Problem`] as [`Core::act`].
    pub(crate) fn act_as(&mut self, id: ActId, rig: RigId, act: Act) -> Result<Told, Problem> {
        let outcome = self.logbook.act_as(id, rig, act);
        self.tell(rig, outcome)
    }

    /// What is told of an act that was taken before under a name, where one was.
    pub(crate) fn told_before(&self, id: ActId) -> Result<Option<Told>, Problem> {
        let first = self.logbook.outcome(id);
        match first.map_err(|fault| self.storage(&fault))? {
            Some(outcome) => self.tell(outcome.entry.rig, Ok(outcome)).map(Some),
            None => Ok(None),
        }
    }

    /// Does an act that has its name and moment already, as a script has them.
    ///
    /// # Errors
    /// [`Problem`] as [`Core::act`], and where the moment is before the newest entry.
    pub fn call(&mut self, call: &Call, at: &Moment) -> Result<Told, Problem> {
        let outcome = self.logbook.call(call, at);
        self.tell(call.rig, outcome)
    }

    fn tell(&self, rig: RigId, outcome: Result<Outcome, ActFault>) -> Result<Told, Problem> {
        let book = self.logbook.shared_book(rig).ok();
        match outcome {
            Ok(outcome) => Ok(Told {
                kind: outcome.entry.act.kind().to_owned(),
                sentences: self.sentences(rig, &outcome.entry),
                findings: outcome
                    .entry
                    .shown
                    .findings
                    .iter()
                    .map(|raised| raised.kind.code().to_owned())
                    .collect(),
                seq: outcome.seq,
                repeated: outcome.repeated,
            }),
            Err(ActFault::Refused(refusal)) => Err(Problem::refused(
                self.words.refusal(&refusal, book.as_deref()),
            )),
            Err(ActFault::Storage(fault)) => Err(self.storage(&fault)),
            Err(ActFault::Earlier { found, newest }) => {
                let time = |moment: &Moment| moment.wall.to_rfc3339();
                let args = [
                    ("found", time(&found).into()),
                    ("expected", time(&newest).into()),
                ];
                Err(Problem::input(self.words.fill("storage-earlier", &args)))
            }
            Err(ActFault::NameTaken { .. }) => {
                Err(Problem::input(self.words.say("storage-same-act")))
            }
        }
    }

    pub(crate) fn sentences(&self, rig: RigId, entry: &Entry) -> Vec<String> {
        let words = &self.words;
        let book = self.logbook.shared_book(rig).ok();
        let mut told = Vec::new();
        match entry.shown.dead {
            Some(true) => told.push(words.say("told-dead")),
            Some(false) => {
                let suspects = entry.shown.suspects.iter();
                let named = suspects.map(|id| words.source_name(*id, book.as_deref()));
                let sources = named.collect::<Vec<_>>().join(", ");
                told.push(words.fill("told-live", &[("sources", sources.into())]));
            }
            None => {}
        }
        if let Some(judged) = &entry.shown.judged {
            told.push(words.verdict(judged));
        }
        if let Some(seen) = &entry.shown.service {
            told.push(words.service_seen(seen));
        }
        for raised in &entry.shown.findings {
            told.push(words.finding(raised, book.as_deref()));
        }
        if let Some(lapse) = entry.flags.lapse {
            told.push(words.fill("told-lapse", &[("why", words.code(lapse).into())]));
        }
        if entry.flags.clock_back {
            told.push(words.say("told-clock-back"));
        }
        if matches!(entry.act, Act::Strike { .. }) {
            told.push(words.say("told-struck"));
        }
        if told.is_empty() {
            told.push(words.say("told-recorded"));
        }
        told
    }
}
