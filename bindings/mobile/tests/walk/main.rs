//! A walk as a phone makes it: by the cards that were shown.

#![expect(
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test that can't go on stops with the reason"
)]

mod cards;
mod past;
mod set_up;
mod timing;

use baywalk_mobile::{Baywalk, CardView, Fault, Field, PinPlace, PressedView, Room};
use baywalk_screens::card::Ask;
use baywalk_screens::set_up::Piece;
use baywalk_screens::step::{How, Press};
use std::sync::Arc;
use tempfile::TempDir;

const WIDTH: f64 = 360.0;
const ROOM: Room = Room {
    width: WIDTH,
    scale: 1.0,
};

struct Phone {
    core: Arc<Baywalk>,
    rig: String,
    folder: TempDir,
}

fn phone() -> Phone {
    let folder = tempfile::tempdir().unwrap();
    let core = Baywalk::open(
        folder.path().to_str().unwrap().to_owned(),
        vec!["en".into()],
    )
    .unwrap();
    let rig = core.start_from("sample-motorhome", "Wren").unwrap();
    core.start(&rig, "Ada", vec![], false).unwrap();
    Phone { core, rig, folder }
}

/// A press of a key of a card, with an answer to all that it asks.
fn press(view: &CardView, code: &str) -> Press {
    let card = &view.card;
    let key = card.keys.iter().find(|key| key.code == code);
    let key = key.unwrap_or_else(|| panic!("no {code} on {card:?}"));
    let typed = key.asks.iter().map(|ask| match ask {
        Ask::Words { .. } => "outlet at the post".to_owned(),
        Ask::Number { .. } => "0.2".to_owned(),
        Ask::Choice { options, .. } => options.last().unwrap().code.clone(),
    });
    Press {
        act: card.act.clone(),
        seq: card.seq,
        point: card.point.clone(),
        key: code.to_owned(),
        typed: typed.collect(),
    }
}

impl Phone {
    /// The logbook opened anew, as after the process is gone.
    fn again(&self) -> Arc<Baywalk> {
        self.core.let_go().unwrap();
        let path = self.folder.path().to_str().unwrap().to_owned();
        Baywalk::open(path, vec!["en".into()]).unwrap()
    }

    fn card(&self) -> CardView {
        self.core.card(&self.rig, ROOM).unwrap()
    }

    fn press(&self, press: Press) -> PressedView {
        self.core.press(&self.rig, press, ROOM).unwrap()
    }

    fn first_key(&self) -> PressedView {
        let view = self.card();
        let code = view.card.keys.first().unwrap().code.clone();
        self.press(press(&view, &code))
    }

    /// Goes on by the first key of each card until one of a kind is shown.
    fn until(&self, kind: &str) -> CardView {
        for _ in 0..400 {
            let view = self.card();
            if view.card.kind == kind {
                return view;
            }
            let mut press = press(&view, &view.card.keys.first().unwrap().code);
            if view.card.kind == "known_live" {
                press
                    .typed
                    .iter_mut()
                    .filter(|text| *text == "0.2")
                    .for_each(|text| {
                        *text = if view.card.title.contains("AC") {
                            "121"
                        } else {
                            "12.8"
                        }
                        .to_owned();
                    });
            }
            self.press(press);
        }
        panic!("no {kind} was shown")
    }
}

/// A small photo as a camera would write it.
fn picture(phone: &Phone) -> String {
    let path = phone.folder.path().join("camera.png");
    let sample = concat!(
        env!("CARGO_MANIFEST_DIR"),
        "/../../core/logbook/tests/photos/clear.png"
    );
    std::fs::copy(sample, &path).unwrap();
    path.to_str().unwrap().to_owned()
}

fn field(name: &str, value: &str) -> Field {
    Field {
        name: name.to_owned(),
        value: value.to_owned(),
    }
}
