//! The line: whether power is away, and proved so, here.

use crate::card::{Line, LineState};
use crate::here::Here;
use baywalk_domain::ids::BayId;
use baywalk_domain::isolation::Wiring;
use baywalk_domain::rig::{Bay, Device};
use baywalk_domain::walk::{BayStage, Phase};

impl Here<'_> {
    /// The line of the rig as a whole.
    pub(crate) fn line(&self) -> Line {
        let waiting = self
            .book
            .live_sources()
            .filter(|source| !self.walk.is_dealt_with(source.id));
        let live = waiting.count();
        if live > 0 || self.walk.phase == Phase::PoweringUp {
            return Line {
                state: LineState::Live,
                words: self.words.fill("line-live", &[("count", live.into())]),
            };
        }
        Line {
            state: LineState::Unproved,
            words: self.words.say("line-unproved"),
        }
    }

    /// The line of one bay.
    pub(crate) fn line_of(&self, bay: BayId) -> Line {
        let code = self
            .book
            .bay(bay)
            .map(|bay| bay.code.to_string())
            .unwrap_or_default();
        let open = self.walk.stage(bay) == BayStage::Open;
        let mut devices = self.book.devices_of(bay).peekable();
        let proved = open
            && devices.peek().is_some()
            && devices.all(|device| self.proved_or_excepted(device));
        if !proved {
            return self.line();
        }
        let work = self.walk.bays.get(&bay);
        let excepted = work.is_some_and(|work| !work.exceptions.is_empty());
        let time = work.and_then(|work| {
            let mut finished = work.proofs.iter().filter_map(|proof| proof.after.as_ref());
            finished.next_back().map(|known| known.at.wall.time())
        });
        let key = match (excepted, time) {
            (false, _) => "line-dead",
            (true, Some(_)) => "line-dead-but",
            (true, None) => "line-excepted",
        };
        let mut args = vec![("bay", code.into())];
        args.extend(time.map(|time| ("time", self.words.time(time).into())));
        Line {
            state: if excepted {
                LineState::Unproved
            } else {
                LineState::Dead
            },
            words: self.words.fill(key, &args),
        }
    }

    /// How long the hands stay off a bay, by the longest wait of its sources that runs.
    ///
    /// The end of a wait unlocks nothing. After a start anew of the machine it runs from that start.
    pub(crate) fn hands_off(&self, bay: &Bay) -> Option<String> {
        let fed = Wiring::of(&self.book).feeding().bay(bay.id);
        let left = fed.iter().filter_map(|source| {
            let wait = self.book.source(*source)?.wait.as_ref()?;
            let away = self.walk.away_at.get(source)?;
            let boot = &self.now.boot;
            let passed = boot.seconds_since(&away.boot).unwrap_or(boot.seconds());
            (u64::from(wait.minutes) * 60)
                .checked_sub(passed)
                .filter(|left| *left > 0)
        });
        let args = |left| {
            [
                ("bay", bay.code.as_str().into()),
                ("left", self.words.countdown(left).into()),
            ]
        };
        left.max()
            .map(|left| self.words.fill("line-hands-off", &args(left)))
    }

    fn proved_or_excepted(&self, device: &Device) -> bool {
        self.walk.is_proved(device) || self.walk.unread(device).is_empty()
    }
}
