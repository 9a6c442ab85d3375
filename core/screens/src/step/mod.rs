//! The next step of a walk: its card, and what a pressed key becomes.

mod always;
mod bay;
mod found;
mod left;
mod line;
mod look;
mod point;
mod power;
mod press;
mod prove;
mod ready;
mod source;
mod tool;
mod weigh;

use crate::card::{Card, Line};
use crate::here::Here;
use crate::{Core, Problem, Told, book, photo, plan};
pub use press::{How, Press, Pressed, press_card};
pub use weigh::{Weighed, weigh};

use baywalk_domain::ids::{ActId, RigId};
use baywalk_domain::walk::{Act, Next};

/// The card of the next step of the open walk of a rig.
///
/// # Errors
/// [`Problem`] where no walk is open or the logbook can't be read.
pub fn card(core: &Core, rig: RigId) -> Result<Card, Problem> {
    let here = Here::read(core, rig)?;
    let mut card = draw(&here)?;
    card.keys.extend(always::keys(&here));
    card.keys.extend(plan::keys(&here));
    let named = |tag: &str| here.book.bays.iter().find(|bay| bay.code.as_str() == tag);
    card.bay = card
        .tag
        .as_deref()
        .and_then(named)
        .map(|bay| bay.name.clone());
    card.act = core.logbook.new_id().to_string();
    card.seq = core.logbook.digest().seq;
    Ok(card)
}

/// Presses a key of the card that stands now, with what was typed for what it asked.
///
/// # Errors
/// [`Problem`] where there is no such key, something typed can't be read, or the act is refused;
/// nothing is changed then.
pub fn press(core: &mut Core, rig: RigId, key: &str, typed: &[String]) -> Result<Told, Problem> {
    let id = ActId::new(core.logbook.new_id());
    press_as(core, rig, id, (key, typed))
}

fn press_as(
    core: &mut Core,
    rig: RigId,
    id: ActId,
    (key, typed): (&str, &[String]),
) -> Result<Told, Problem> {
    let here = Here::read(core, rig)?;
    match key {
        "photo" => {
            let about = always::subject(&here);
            return photo::take(core, rig, about, typed);
        }
        "note" => {
            return book::line(
                core,
                rig,
                typed.first().map(String::as_str).unwrap_or_default(),
            );
        }
        "plan" | "rejoin_plan" | "leave_plan" if plan::has_keys(&here) => {
            return plan::press(core, rig, id, (key, typed));
        }
        _ => {}
    }
    let act = act(&here, key, typed)?;
    let closes = matches!(act, Act::Close { .. });
    // What is looked at is let go first: the act would copy it to change it.
    drop(here);
    let mut told = core.act_as(id, rig, act)?;
    if closes {
        told.sentences.extend(plan::again(core, rig)?);
    }
    Ok(told)
}

/// The act that a key of the card that stands becomes, with what was typed for it.
fn act(here: &Here<'_>, key: &str, typed: &[String]) -> Result<Act, Problem> {
    match always::act(here, key, typed)? {
        Some(act) => Ok(act),
        None => answer(here, key, &Typed { here, typed }),
    }
}

fn draw(here: &Here<'_>) -> Result<Card, Problem> {
    match here.next() {
        Next::Resume => Ok(always::stopped(here)),
        Next::Ready(item) => Ok(ready::card(here, item)),
        Next::Isolate(source) => source::away(here, source),
        Next::Open(bay) => bay::open(here, bay),
        Next::Except { device, set } => prove::except(here, device, &set),
        Next::KnownLive { bay, supply, again } => prove::known_live(here, bay, supply, again),
        Next::Read { device, check } => prove::read(here, device, &check),
        Next::SetTool(wanted) => Ok(tool::card(here, &wanted)),
        Next::Point(point) => point::card(here, point),
        Next::Left(point) => left::card(here, point),
        Next::Close(bay) => bay::close(here, bay),
        Next::PowerUp => Ok(power::begin(here)),
        Next::Restore(source) => source::back(here, source),
        Next::Measure(step) => Ok(power::measure(here, step)),
        Next::Unsafe(step) => Ok(power::not_safe(here, step)),
        Next::End => Ok(power::end(here)),
    }
}

fn answer(here: &Here<'_>, key: &str, typed: &Typed<'_>) -> Result<Act, Problem> {
    let act = match here.next() {
        Next::Resume => (key == "go_on").then_some(Act::Resume),
        Next::Ready(item) => ready::act(item, key, typed),
        Next::Isolate(source) => source::away_act(source, key, typed),
        Next::Open(bay) => (key == "open").then_some(Act::Open { bay }),
        Next::Except { device, set } => prove::except_act(here, device, &set, key, typed),
        Next::KnownLive { bay, supply, .. } => prove::known_live_act(bay, supply, key, typed)?,
        Next::Read { device, check } => prove::read_act(device, check, key, typed)?,
        Next::SetTool(wanted) => tool::act(wanted, key),
        Next::Point(point) => point::act(here, point, key, typed)?,
        Next::Left(point) => left::act(here, point, key, typed)?,
        Next::Close(bay) => bay::close_act(bay, key),
        Next::PowerUp => (key == "power_up").then_some(Act::PowerUp),
        Next::Restore(source) => source::back_act(source, key, typed),
        Next::Measure(step) => power::measure_act(step, key, typed)?,
        Next::Unsafe(step) => power::not_safe_act(here, step, key, typed)?,
        Next::End => power::end_act(key),
    };
    act.ok_or_else(|| Problem::input(here.words.fill("step-no-key", &[("key", key.into())])))
}

/// What was typed for what a key asked.
struct Typed<'a> {
    here: &'a Here<'a>,
    typed: &'a [String],
}

impl Typed<'_> {
    /// The words at a place, empty where none were typed.
    fn words(&self, place: usize) -> String {
        self.typed
            .get(place)
            .map(|text| text.trim().to_owned())
            .unwrap_or_default()
    }

    /// The quantity at a place.
    fn stated<U: baywalk_domain::units::Unit>(
        &self,
        place: usize,
        unit: U,
    ) -> Result<baywalk_domain::units::Stated<U>, Problem> {
        baywalk_domain::units::Stated::parse(&self.words(place), unit)
            .map_err(|fault| Problem::input(self.here.words.stated_fault(&fault)))
    }

    /// The member of a closed list at a place.
    fn code<T: baywalk_domain::coded::Coded>(&self, place: usize) -> Result<T, Problem> {
        T::from_code(&self.words(place))
            .map_err(|fault| Problem::input(self.here.words.unknown_code(&fault)))
    }
}

/// A card with its kind, title and question, and nothing else yet.
fn blank(kind: &'static str, line: Line, title: String, question: String) -> Card {
    Card {
        act: String::new(),
        seq: 0,
        kind: kind.to_owned(),
        point: None,
        tag: None,
        bay: None,
        title,
        place: String::new(),
        count: None,
        line,
        figure: None,
        lines: Vec::new(),
        cautions: Vec::new(),
        waits: false,
        question,
        keys: Vec::new(),
    }
}
