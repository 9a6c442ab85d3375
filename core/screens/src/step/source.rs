//! A source: taking it away, bringing it back.

use super::{Typed, blank};
use crate::Problem;
use crate::card::{Ask, Card, Count, Key};
use crate::here::Here;
use baywalk_domain::ids::SourceId;
use baywalk_domain::isolation::Wiring;
use baywalk_domain::rig::{Isolation, Presence, Source, SourceKind, SupplyKind};
use baywalk_domain::walk::{Act, Away};

pub(super) fn away(here: &Here<'_>, id: SourceId) -> Result<Card, Problem> {
    let words = here.words;
    let source = here.source(id)?;
    let name = words.source_name(id, &*here.book);
    let searching = source.presence == Presence::NotSure;
    let question = if searching {
        "step-away-search"
    } else {
        "step-away-question"
    };
    let mut card = blank(
        "isolate",
        here.line(),
        name.clone(),
        words.fill(question, &[("source", name.clone().into())]),
    );
    card.place.clone_from(&source.how);
    let dealt = here
        .book
        .live_sources()
        .filter(|s| here.walk.is_dealt_with(s.id))
        .count();
    card.count = Some(Count::new(dealt + 1, here.book.live_sources().count()));
    card.lines.push(words.code(source.isolation));
    if let Some(wait) = &source.wait {
        let args = [
            ("minutes", wait.minutes.into()),
            ("basis", wait.basis.clone().into()),
        ];
        card.lines.push(words.fill("step-away-wait", &args));
    }
    card.lines.extend(wiring(here, id));
    card.cautions = cautions(here, source);
    card.keys = away_keys(here, source);
    Ok(card)
}

/// Which bays a source reaches, and what of it stays live when it is away.
fn wiring(here: &Here<'_>, id: SourceId) -> Vec<String> {
    let (words, book) = (here.words, &here.book);
    let wiring = Wiring::of(book);
    let bays = wiring.feeding().bays_of(id).into_iter();
    let bays: Vec<&str> = bays
        .filter_map(|bay| Some(book.bay(bay)?.code.as_str()))
        .collect();
    let staying = wiring.staying().sets_of(id).into_iter();
    let staying: Vec<String> = staying
        .filter_map(|(device, set)| Some(format!("{}/{set}", book.device(device)?.code)))
        .collect();
    let told = |key, what, list: String| {
        (!list.is_empty()).then(|| words.fill(key, &[(what, list.into())]))
    };
    let reaches = told("step-away-reaches", "bays", bays.join(", "));
    let stays = told("step-away-stays-live", "sets", staying.join(", "));
    reaches.into_iter().chain(stays).collect()
}

fn away_keys(here: &Here<'_>, source: &Source) -> Vec<Key> {
    let words = here.words;
    let note = || Ask::Words {
        question: words.say("step-away-kept"),
    };
    let mut keys = Vec::new();
    if source.isolation != Isolation::Never {
        keys.push(Key::plain("away", words.say("step-away-key")).asking(note()));
    }
    if source.presence == Presence::NotSure {
        let question = words.say("step-away-searched");
        keys.push(
            Key::plain("not_found", words.say("step-away-not-found"))
                .asking(Ask::Words { question }),
        );
    }
    let question = words.say("step-why");
    keys.push(Key::plain("stays", words.say("step-away-stays")).asking(Ask::Words { question }));
    keys
}

fn cautions(here: &Here<'_>, source: &Source) -> Vec<String> {
    let key = match source.kind {
        SourceKind::HouseBattery | SourceKind::ChassisBattery => "caution-battery",
        SourceKind::Solar => "caution-solar",
        SourceKind::Inverter => "caution-capacitor",
        SourceKind::Shore => "caution-shore",
        SourceKind::Generator => "caution-generator",
        SourceKind::TowLink | SourceKind::EngineLink | SourceKind::Portable => return Vec::new(),
    };
    vec![here.words.say(key)]
}

pub(super) fn away_act(source: SourceId, key: &str, typed: &Typed<'_>) -> Option<Act> {
    let words = typed.words(0);
    let away = match key {
        "away" => Away::Isolated(words),
        "not_found" => Away::NotFound(words),
        "stays" => Away::Stays(words),
        _ => return None,
    };
    Some(Act::Isolate { source, away })
}

pub(super) fn back(here: &Here<'_>, id: SourceId) -> Result<Card, Problem> {
    let words = here.words;
    let source = here.source(id)?;
    let name = words.source_name(id, &*here.book);
    let question = words.fill("step-back-question", &[("source", name.clone().into())]);
    let mut card = blank("restore", here.line(), name, question);
    card.place.clone_from(&source.how);
    let key = match (source.kind, source.supply) {
        (SourceKind::HouseBattery | SourceKind::ChassisBattery, _) => "caution-battery-back",
        (SourceKind::Shore, _) => "caution-shore-back",
        (_, SupplyKind::Ac) => "caution-ac-back",
        (_, SupplyKind::Dc) => "caution-dc-back",
    };
    card.cautions.push(words.say(key));
    card.keys
        .push(Key::plain("back", words.say("step-back-key")));
    let why = words.say("step-why");
    card.keys.push(
        Key::plain("leave_away", words.say("step-back-leave")).asking(Ask::Words { question: why }),
    );
    Ok(card)
}

pub(super) fn back_act(source: SourceId, key: &str, typed: &Typed<'_>) -> Option<Act> {
    match key {
        "back" => Some(Act::Restore { source }),
        "leave_away" => Some(Act::LeaveAway {
            source,
            why: typed.words(0),
        }),
        _ => None,
    }
}
