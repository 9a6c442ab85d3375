//! Takes a scenario line by line, as the models of the phone shells do.

use baywalk_mobile::{Baywalk, CardView, Fault, Field, Room, SteadyClock};
use baywalk_screens::card::{Ask, Key};
use baywalk_screens::step::Press;
use serde::{Deserialize, Serialize};
use std::sync::Arc;
use tempfile::TempDir;

/// One thing that a person does.
#[derive(Debug, Clone, Default, Serialize, Deserialize)]
pub(crate) struct Line {
    /// What is done.
    #[serde(rename = "do")]
    pub(crate) act: String,
    /// The key, layout or record.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub(crate) code: String,
    /// What is typed or answered.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub(crate) text: String,
    /// The kind of the card that has to stand.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub(crate) kind: String,
}

const ROOM: Room = Room {
    width: 360.0,
    scale: 1.0,
};
/// Seconds that pass before each line.
const PACE: u32 = 7;

/// A logbook by the steady clock, and the card that stands.
pub(crate) struct Driver {
    folder: TempDir,
    clock: Arc<SteadyClock>,
    pub(crate) core: Arc<Baywalk>,
    pub(crate) rig: String,
    name: String,
    pub(crate) card: Option<CardView>,
    asking: Option<(Key, Vec<String>)>,
    typed: String,
    pub(crate) refused: bool,
}

impl Driver {
    pub(crate) fn new() -> Self {
        let folder = tempfile::tempdir().unwrap();
        let clock = SteadyClock::begin().unwrap();
        Self {
            core: open(&folder, &clock),
            folder,
            clock,
            rig: String::new(),
            name: String::new(),
            card: None,
            asking: None,
            typed: String::new(),
            refused: false,
        }
    }

    pub(crate) fn digest(&self) -> String {
        self.core.verify().unwrap().digest
    }

    pub(crate) fn take(&mut self, line: &Line) {
        self.clock.pass(PACE).unwrap();
        match line.act.as_str() {
            "name" => self.name.clone_from(&line.text),
            "from" => self.rig = self.core.start_from(&line.code, &self.name).unwrap(),
            "presence" => {
                let field = Field {
                    name: "presence".to_owned(),
                    value: line.text.clone(),
                };
                self.core
                    .change(&self.rig, &line.code, vec![field])
                    .unwrap();
            }
            "walk" => {
                self.core.start(&self.rig, "", vec![], false).unwrap();
                self.stand();
            }
            "again" => {
                self.core.let_go().unwrap();
                self.core = open(&self.folder, &self.clock);
                self.stand();
            }
            "plan" => {
                let minutes = line.text.parse().unwrap();
                self.core.plan(&self.rig, minutes).unwrap();
                self.core.follow_plan(&self.rig, minutes).unwrap();
                self.stand();
            }
            "note" => {
                let typed = vec![line.text.clone()];
                self.core.when_press(&self.rig, &line.code, typed).unwrap();
            }
            "press" => self.press(line),
            "type" => self.typed.clone_from(&line.text),
            "answer" => self.answer(&line.text),
            "leave" => self.asking = None,
            "refused" => assert!(self.refused, "not refused: {line:?}"),
            other => panic!("no such thing to do: {other}"),
        }
        assert!(self.refused || line.act != "refused");
    }

    fn stand(&mut self) {
        self.card = Some(self.core.card(&self.rig, ROOM).unwrap());
        (self.asking, self.typed) = (None, String::new());
    }

    fn press(&mut self, line: &Line) {
        let view = self
            .card
            .clone()
            .unwrap_or_else(|| panic!("no card: {line:?}"));
        assert_eq!(view.card.kind, line.kind, "{line:?}");
        let key = view.card.keys.iter().find(|key| key.code == line.code);
        let key = key
            .unwrap_or_else(|| panic!("no such key: {line:?}"))
            .clone();
        match key.asks.as_slice() {
            [] => self.record(&key, vec![]),
            [Ask::Number { .. }] if pad_key(&view).is_some_and(|pad| pad.code == key.code) => {
                self.record(&key, vec![self.typed.clone()]);
            }
            _ => self.asking = Some((key, vec![])),
        }
    }

    fn answer(&mut self, text: &str) {
        let (key, mut answers) = self
            .asking
            .take()
            .unwrap_or_else(|| panic!("nothing is asked"));
        answers.push(text.to_owned());
        if answers.len() == key.asks.len() {
            self.record(&key, answers);
        } else {
            self.asking = Some((key, answers));
        }
    }

    fn record(&mut self, key: &Key, typed: Vec<String>) {
        let card = self.card.clone().map(|view| view.card).unwrap();
        let press = Press {
            act: card.act,
            seq: card.seq,
            point: card.point,
            key: key.code.clone(),
            typed,
        };
        match self.core.press(&self.rig, press, ROOM) {
            Ok(pressed) => {
                self.card = pressed.view;
                (self.typed, self.refused) = (String::new(), false);
            }
            Err(Fault::Told { .. }) => self.refused = true,
            Err(fault) => panic!("{fault}"),
        }
    }

    /// What the key that was pressed still asks.
    pub(crate) fn ask(&self) -> Option<&Ask> {
        let (key, answers) = self.asking.as_ref()?;
        key.asks.get(answers.len())
    }
}

fn open(folder: &TempDir, clock: &Arc<SteadyClock>) -> Arc<Baywalk> {
    let path = folder.path().join("store").to_str().unwrap().to_owned();
    Baywalk::open_steady(path, vec!["en".to_owned()], Arc::clone(clock)).unwrap()
}

/// Keys that stand on every card and answer none.
const ALWAYS: [&str; 8] = [
    "undo",
    "damage",
    "photo",
    "skip",
    "note",
    "stop",
    "close_early",
    "end_early",
];

/// The key that a number is typed for on the card itself.
pub(crate) fn pad_key(view: &CardView) -> Option<&Key> {
    let first = view
        .card
        .keys
        .iter()
        .find(|key| !ALWAYS.contains(&key.code.as_str()))?;
    matches!(first.asks.as_slice(), [Ask::Number { .. }]).then_some(first)
}
