//! The dead proof: known live, the pairs, known live again; and the knowing exception.

use super::{Typed, blank};
use crate::card::{Ask, Card, Count, Key};
use crate::here::Here;
use crate::{Named, Problem};
use baywalk_domain::coded::Coded;
use baywalk_domain::ids::{BayId, DeviceId, PointId};
use baywalk_domain::isolation::{Meter, MeterCategory, checks_of};
use baywalk_domain::rig::{Check, Point, SupplyKind};
use baywalk_domain::units::VoltageUnit;
use baywalk_domain::walk::{Act, AsFound, NotJudgedWhy, PointRecord};

pub(super) fn known_live(
    here: &Here<'_>,
    id: BayId,
    supply: SupplyKind,
    again: bool,
) -> Result<Card, Problem> {
    let words = here.words;
    let bay = here.bay(id)?;
    let title = words.fill(
        "step-prove-title",
        &[
            ("bay", bay.code.as_str().into()),
            ("supply", words.code(supply).into()),
        ],
    );
    let question = if again {
        "step-live-again"
    } else {
        "step-live-before"
    };
    let mut card = blank("known_live", here.line_of(id), title, words.say(question));
    card.tag = Some(bay.code.to_string());
    card.place.clone_from(&bay.place);
    let source = match supply {
        SupplyKind::Ac => "step-live-source-ac",
        SupplyKind::Dc => "step-live-source-dc",
    };
    card.lines.push(words.say(source));
    card.lines.extend(lapsed(here, id));
    let wait = here.hands_off(bay);
    card.waits = wait.is_some();
    card.lines.extend(wait);
    card.cautions = vec![
        words.say("caution-pen-testers"),
        words.say("caution-method"),
    ];
    card.keys.extend(live_keys(here));
    card.lines.extend(here.walk.meter().map(|meter| {
        let category = words.code(meter.category);
        let args = [
            ("name", meter.name.as_str().into()),
            ("category", category.into()),
        ];
        words.fill("step-live-meter", &args)
    }));
    let undone = here.first_undone(|point| here.book.bay_of(point) == Some(id));
    look_only(here, &mut card, undone);
    Ok(card)
}

/// One key reads with the meter that was used last; the other, or the only one, asks which meter.
fn live_keys(here: &Here<'_>) -> Vec<Key> {
    let words = here.words;
    let place = || Ask::Words {
        question: words.say("step-live-where"),
    };
    let marked = MeterCategory::ALL.iter().skip(1);
    let options = marked.map(|one| Named::of(words, *one));
    let anew = |key: Key| {
        let name = words.say("step-live-meter-name");
        key.asking(place())
            .asking(volts(here))
            .asking(Ask::Words { question: name })
            .asking(Ask::Choice {
                question: words.say("step-live-meter-category"),
                options: options.clone().collect(),
            })
    };
    let live = Key::plain("live", words.say("step-live-key"));
    if here.walk.meter().is_none() {
        return vec![anew(live)];
    }
    let other = Key::plain("live_other", words.say("step-live-other-meter"));
    vec![live.asking(place()).asking(volts(here)), anew(other)]
}

/// Offers to look only at a terminal, without a proof: no hand, no tool.
fn look_only(here: &Here<'_>, card: &mut Card, point: Option<PointId>) {
    let Some(point) = point else {
        return;
    };
    let words = here.words;
    let args = [("point", words.point_name(point, &*here.book).into())];
    card.keys.push(
        Key::plain("look_only", words.say("step-look-only"))
            .noted(words.fill("step-look-only-at", &args)),
    );
}

/// Why an earlier proof of the bay no longer counts.
fn lapsed(here: &Here<'_>, bay: BayId) -> Option<String> {
    let proofs = &here.walk.bays.get(&bay)?.proofs;
    let last = proofs.last()?;
    match last.lapsed {
        Some(lapse) => Some(
            here.words
                .fill("step-prove-anew", &[("why", here.words.code(lapse).into())]),
        ),
        None if last.is_spoiled() => Some(here.words.say("step-prove-found-live")),
        None => None,
    }
}

fn volts(here: &Here<'_>) -> Ask {
    Ask::Number {
        question: here.words.say("step-reading"),
        unit: "V".to_owned(),
    }
}

pub(super) fn known_live_act(
    bay: BayId,
    supply: SupplyKind,
    key: &str,
    typed: &Typed<'_>,
) -> Result<Option<Act>, Problem> {
    if key == "look_only" {
        let here = typed.here;
        let undone = here.first_undone(|point| here.book.bay_of(point) == Some(bay));
        let found = AsFound::LookedAt { tugged: false };
        return Ok(undone.map(|point| Act::Found { point, found }));
    }
    let meter = match (key, typed.here.walk.meter()) {
        ("live", Some(meter)) => meter.clone(),
        ("live" | "live_other", _) => Meter::contact(&typed.words(2), typed.code(3)?),
        _ => return Ok(None),
    };
    Ok(Some(Act::KnownLive {
        bay,
        supply,
        place: typed.words(0),
        meter,
        volts: typed.stated(1, VoltageUnit::Volts)?,
    }))
}

pub(super) fn read(here: &Here<'_>, id: DeviceId, check: &Check) -> Result<Card, Problem> {
    let words = here.words;
    let device = here.device(id)?;
    let bay = here.bay(device.bay)?;
    let pair = words.pair(check);
    let question = words.fill("step-read-question", &[("pair", pair.clone().into())]);
    let mut card = blank("read", here.line_of(bay.id), pair, question);
    card.tag = Some(bay.code.to_string());
    card.place = words.device_name(id, &*here.book);
    let all = checks_of(&device.sets).len();
    card.count = Some(Count::new(all - here.walk.unread(device).len() + 1, all));
    card.lines.push(words.say("caution-dead-limit"));
    card.cautions.push(words.say("caution-until-proved"));
    card.keys
        .push(Key::plain("read", words.say("step-read-key")).asking(volts(here)));
    Ok(card)
}

pub(super) fn read_act(
    device: DeviceId,
    check: Check,
    key: &str,
    typed: &Typed<'_>,
) -> Result<Option<Act>, Problem> {
    if key != "read" {
        return Ok(None);
    }
    let volts = typed.stated(0, VoltageUnit::Volts)?;
    Ok(Some(Act::Read {
        device,
        check,
        volts,
    }))
}

pub(super) fn except(here: &Here<'_>, id: DeviceId, set: &str) -> Result<Card, Problem> {
    let words = here.words;
    let device = here.device(id)?;
    let bay = here.bay(device.bay)?;
    let title = words.device_name(id, &*here.book);
    let mut card = blank(
        "except",
        here.line_of(bay.id),
        title,
        words.fill("step-except-question", &[("set", set.into())]),
    );
    card.tag = Some(bay.code.to_string());
    card.place.clone_from(&bay.place);
    card.lines.push(words.say("step-except-rule"));
    card.cautions = vec![words.say("caution-battery"), words.say("caution-exception")];
    let question = words.say("step-why");
    let undone = here.first_undone(|point| point.device == id);
    look_only(here, &mut card, undone);
    card.keys
        .push(Key::plain("except", words.say("step-except-key")).asking(Ask::Words { question }));
    Ok(card)
}

pub(super) fn except_act(
    here: &Here<'_>,
    device: DeviceId,
    set: &str,
    key: &str,
    typed: &Typed<'_>,
) -> Option<Act> {
    match key {
        "except" => Some(Act::Except {
            device,
            set: set.to_owned(),
            reason: typed.words(0),
        }),
        "look_only" => here
            .first_undone(|point| point.device == device)
            .map(|point| Act::Found {
                point,
                found: AsFound::NotJudged {
                    why: NotJudgedWhy::Alive,
                    note: String::new(),
                },
            }),
        _ => None,
    }
}

impl Here<'_> {
    /// The first terminal of the book, by bays and codes, that fits and is not gone through.
    fn first_undone(&self, fits: impl Fn(&Point) -> bool) -> Option<PointId> {
        let done = |id| self.walk.point(id).is_some_and(PointRecord::is_done);
        let points = self.walk.points_to_do(&self.book).into_iter();
        points
            .filter(|point| point.terminal().is_some() && fits(point) && !done(point.id))
            .map(|point| point.id)
            .next()
    }
}
