//! Obeying what is next.

use super::{Recorder, line, scene};
use baywalk_domain::ids::ToolId;
use baywalk_domain::isolation::{Meter, MeterCategory};
use baywalk_domain::rig::{Isolation, Point, PointKind, Presence, SourceKind, SupplyKind};
use baywalk_domain::supply::{Measured, Reading, ReadingStep};
use baywalk_domain::units::{Stated, TorqueUnit, VoltageUnit};
use baywalk_domain::walk::{
    Act, Away, Counted, Ending, Next, NotJudgedWhy, ReadyAnswer, ReadyItem,
};
use baywalk_domain::walk::{AsFound, AsLeft, Movement, Seen, Setting};
use chrono::Duration;

impl Recorder {
    pub(super) fn obey(&mut self, next: &Next) {
        match next {
            Next::Resume => self.act(Act::Resume, 20 * 60),
            Next::Ready(item) => {
                let answer = match item {
                    ReadyItem::Company => {
                        ReadyAnswer::Without("alone today; neighbour knows".to_owned())
                    }
                    _ => ReadyAnswer::Done,
                };
                self.act(
                    Act::Ready {
                        item: *item,
                        answer,
                    },
                    4,
                );
            }
            Next::Isolate(source) => self.away(*source),
            Next::Open(bay) => self.act(Act::Open { bay: *bay }, 40),
            Next::Except { device, set } => self.except(*device, set),
            Next::KnownLive { bay, supply, .. } => {
                let (place, volts) = match supply {
                    SupplyKind::Ac => ("supply outlet at the post", "121.3"),
                    SupplyKind::Dc => ("jump battery on the step", "12.71"),
                };
                let act = Act::KnownLive {
                    bay: *bay,
                    supply: *supply,
                    place: place.to_owned(),
                    meter: Meter::contact("yellow meter, 600 V", MeterCategory::Three),
                    volts: Stated::parse(volts, VoltageUnit::Volts).unwrap(),
                };
                self.act(act, 12);
            }
            Next::Read { device, check } => {
                let volts = scene::dead_reading(self.acts, check.supply);
                let act = Act::Read {
                    device: *device,
                    check: check.clone(),
                    volts,
                };
                self.act(act, 3);
            }
            Next::SetTool(Setting { tool, at }) => {
                let (tool, at) = (*tool, at.clone());
                self.act(Act::SetTool { tool, at }, 8);
            }
            Next::Point(point) => self.judge(*point),
            Next::Left(point) => self.leave(*point),
            Next::Close(bay) => self.act(
                Act::Close {
                    bay: *bay,
                    counted: Counted::ALL,
                },
                45,
            ),
            Next::PowerUp => self.act(Act::PowerUp, 30),
            Next::Restore(source) => self.act(Act::Restore { source: *source }, 25),
            Next::Measure(step) => self.measure(*step),
            Next::Unsafe(step) => panic!("not safe: {step:?}"),
            Next::End => self.act(Act::End(Ending::Whole), 15),
        }
    }

    fn away(&mut self, id: baywalk_domain::ids::SourceId) {
        let book = self.book();
        let source = book.source(id).unwrap();
        let away = match (source.presence, source.isolation) {
            (Presence::NotSure, _) => Away::NotFound("every cupboard and the boot".to_owned()),
            (_, Isolation::Never) => Away::Stays("its own posts".to_owned()),
            (_, Isolation::Unplug) => Away::Isolated("plug locked in its box".to_owned()),
            (_, Isolation::Switch) => Away::Isolated("open, locked, tagged".to_owned()),
            (_, Isolation::LeadOff) => Away::Isolated("lead off and taped".to_owned()),
        };
        let seconds = if source.kind == SourceKind::Shore {
            150
        } else {
            70
        };
        self.act(Act::Isolate { source: id, away }, seconds);
    }

    /// Goes on by exception where the rules let it; else the device's points are look only.
    fn except(&mut self, device: baywalk_domain::ids::DeviceId, set: &str) {
        let reason =
            "the bank's own posts: nothing upstream to open; negative off and taped".to_owned();
        let act = Act::Except {
            device,
            set: set.to_owned(),
            reason,
        };
        let call = self.call(act.clone());
        let seen = self.logbook.call(&call, &{
            self.clock += Duration::seconds(15);
            self.moment()
        });
        let written = line::written(&self.book(), &act);
        self.write(written, seen.is_err(), 0);
        if seen.is_err() {
            let book = self.book();
            let walk = self.state().unwrap();
            let bay = book.device(device).unwrap().bay;
            for point in book.points_of(bay) {
                let done = walk
                    .point(point.id)
                    .is_some_and(baywalk_domain::walk::PointRecord::is_done);
                if point.device == device && point.terminal().is_some() && !done {
                    let found = AsFound::NotJudged {
                        why: NotJudgedWhy::Alive,
                        note: String::new(),
                    };
                    self.act(
                        Act::Found {
                            point: point.id,
                            found,
                        },
                        4,
                    );
                }
            }
        }
    }

    fn judge(&mut self, id: baywalk_domain::ids::PointId) {
        let book = self.book();
        let point = book.point(id).unwrap();
        let code = point.code.as_str();
        for (damage, note) in scene::damage(code) {
            self.act(
                Act::Damage {
                    point: id,
                    damage,
                    note: note.to_owned(),
                },
                6,
            );
        }
        match &point.kind {
            PointKind::Look(_) => {
                let seen =
                    scene::seen(code).map_or(Seen::Clear, |words| Seen::Trouble(words.to_owned()));
                self.act(Act::Look { point: id, seen }, 5);
            }
            PointKind::Terminal(terminal) => {
                let tool = self.setting(point);
                let tugged = !terminal.fastening.kind.takes_torque();
                let found =
                    scene::found(code).unwrap_or_else(|| scene::ordinary(tool.clone(), tugged));
                let found = match (found, tool) {
                    (AsFound::Moved(Movement::MarkOff { angle }), Some((below, tool))) => {
                        AsFound::Moved(Movement::Turned { angle, below, tool })
                    }
                    (found, _) => found,
                };
                self.act(Act::Found { point: id, found }, 9);
            }
        }
    }

    fn leave(&mut self, id: baywalk_domain::ids::PointId) {
        let book = self.book();
        let point = book.point(id).unwrap();
        let walk = self.state().unwrap();
        let advice = self.told(|outlook| walk.advice(point, outlook)).unwrap();
        let setting = self.setting(point);
        let left = scene::left(point.code.as_str()).unwrap_or_else(|| match setting {
            Some((torque, tool))
                if advice.action == baywalk_domain::torque::Action::CheckThenSet =>
            {
                AsLeft::Set { torque, tool }
            }
            set => AsLeft::Remade { set },
        });
        self.act(Act::Left { point: id, left }, 25);
    }

    fn measure(&mut self, step: ReadingStep) {
        let measured = match scene::reading(step) {
            Some(volts) => Measured::Volts(Stated::parse(volts, VoltageUnit::Volts).unwrap()),
            None if step.is_voltage() => {
                Measured::Not("no display at the post, probes do not reach".to_owned())
            }
            None => Measured::Works,
        };
        let place = scene::place(step).to_owned();
        self.act(
            Act::Measure(Reading {
                step,
                place,
                measured,
            }),
            20,
        );
    }

    /// The tool and its setting for what a point waits for.
    fn setting(&self, point: &Point) -> Option<(Stated<TorqueUnit>, ToolId)> {
        let walk = self.state().unwrap();
        let setting = self.told(|outlook| walk.setting_for(&self.book(), point, outlook));
        setting.map(|setting| (setting.at, setting.tool))
    }
}
