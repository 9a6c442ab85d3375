//! Records the scenario: a whole walk with what happens on the way.

use crate::driver::{Driver, Line, pad_key};
use baywalk_screens::card::{Ask, Card, Key};

/// What is done once in the walk, at the first card that allows it.
const ON_THE_WAY: [&str; 6] = ["refusal", "moved", "loose", "undo", "again", "plan"];

struct Recorder {
    driver: Driver,
    lines: Vec<Line>,
    ahead: Vec<&'static str>,
}

/// The lines of the scenario, and the digest of its ledger.
pub(crate) fn record() -> (Vec<Line>, String) {
    let mut recorder = Recorder {
        driver: Driver::new(),
        lines: vec![],
        ahead: ON_THE_WAY.to_vec(),
    };
    recorder.set_up();
    recorder.act("walk", "", "");
    while let Some(card) = recorder.card() {
        recorder.step(&card);
    }
    recorder.act("note", "hours", "812 h");
    assert!(recorder.ahead.is_empty(), "{:?} never came", recorder.ahead);
    let digest = recorder.driver.digest();
    (recorder.lines, digest)
}

impl Recorder {
    fn set_up(&mut self) {
        self.act("name", "", "Wren");
        self.act("from", "sample-motorhome", "");
        let sources = self.driver.core.sources(&self.driver.rig).unwrap().sources;
        let unsure = sources.iter().find(|source| source.presence.code == "have");
        let code = unsure.map(|source| source.code.clone()).unwrap();
        self.act("presence", &code, "not_sure");
        self.act("presence", &code, "have");
        self.act("note", "odometer", "41234 mi");
    }

    fn card(&self) -> Option<Card> {
        self.driver.card.as_ref().map(|view| view.card.clone())
    }

    fn act(&mut self, act: &str, code: &str, text: &str) {
        let kind = self.card().filter(|_| act == "press");
        let line = Line {
            act: act.to_owned(),
            code: code.to_owned(),
            text: text.to_owned(),
            kind: kind.map(|card| card.kind).unwrap_or_default(),
        };
        self.driver.take(&line);
        self.lines.push(line);
    }

    /// Whether something is done here that is done once.
    fn once(&mut self, name: &str, fits: bool) -> bool {
        let first = fits && self.ahead.first() == Some(&name);
        if first {
            self.ahead.remove(0);
        }
        first
    }

    fn step(&mut self, card: &Card) {
        let point = card
            .keys
            .iter()
            .any(|key| key.code == "moved" && !key.asks.is_empty());
        if self.once("refusal", card.kind == "read") {
            let first = card.keys.first().unwrap().code.clone();
            self.act("press", &first, "");
            self.act("refused", "", "");
        } else if self.once("moved", point) {
            self.answer_by(card, "moved");
            return;
        } else if self.once("loose", point) {
            self.answer_by(card, "loose");
            return;
        } else if self.once("undo", point) {
            self.answer_by(card, "held");
            self.act("press", "undo", "");
            return;
        } else if self.once("again", point) {
            self.act("again", "", "");
            return;
        } else if self.once("plan", card.kind == "open") {
            self.act("plan", "", "25");
            return;
        }
        let first = card.keys.first().unwrap().code.clone();
        self.answer_by(card, &first);
    }

    fn answer_by(&mut self, card: &Card, code: &str) {
        let number = reading(card);
        let typed = self
            .driver
            .card
            .as_ref()
            .and_then(pad_key)
            .map(|key: &Key| key.code == code);
        if typed == Some(true) {
            self.act("type", "", number);
        }
        self.act("press", code, "");
        while let Some(ask) = self.driver.ask().cloned() {
            match ask {
                Ask::Words { .. } => self.act("answer", "", "outlet at the post"),
                Ask::Number { .. } => self.act("answer", "", number),
                Ask::Choice { options, .. } => {
                    let last = options.last().unwrap().code.clone();
                    self.act("answer", "", &last);
                }
            }
        }
        assert!(!self.driver.refused, "{}, {}", card.kind, card.title);
    }
}

/// A reading that a healthy service shows.
fn reading(card: &Card) -> &'static str {
    let about = format!("{}{}", card.title, card.question);
    let has = |part: &str| about.contains(part);
    match card.kind.as_str() {
        "known_live" if card.title.contains("AC") => "121",
        "known_live" => "12.8",
        "measure" if has("L1") && has("L2") => "240.4",
        "measure" if has("eutral to ground") || has("ody") || has("N to G") => "0.4",
        "measure" if has("DC") || has("attery") => "12.9",
        "measure" if has("oad") => "117.5",
        "measure" => "120.2",
        _ => "0.2",
    }
}
