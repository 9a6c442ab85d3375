//! Adding a bay, a device or a point by the answers to its questions.

use super::{Fields, Piece, ask, code, field};
use crate::{Core, Problem, Told, book};
use baywalk_domain::coded::Coded;
use baywalk_domain::ids::RigId;
use baywalk_domain::rig::{Book, Code, FasteningKind, LookKind, SetSystem};
use serde::Serialize;

/// What was added.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct Added {
    /// The code it was given.
    pub code: String,
    /// What is told of it.
    pub told: Vec<Told>,
    /// In words.
    pub words: String,
    /// Whether a walk is open, so that a photo can be taken of it.
    pub walking: bool,
}

/// Adds a piece to a rig, or to its bay that has a code, by the answers to what
/// [`form`](super::form) asks, in order.
///
/// # Errors
/// [`Problem`] where answers are missing or can't be, or the rules refuse it; nothing is added then.
pub fn add(
    core: &mut Core,
    rig: RigId,
    piece: Piece,
    (bay, answers): (&str, &[String]),
) -> Result<Added, Problem> {
    let asked = ask::form(core, rig, piece, bay)?.asks.len();
    if answers.len() != asked {
        let args = [("found", answers.len().into()), ("expected", asked.into())];
        return Err(Problem::input(core.words.fill("set-up-answers", &args)));
    }
    let known = core.logbook.shared_book(rig)?;
    let answer = |place: usize| answers.get(place).map_or("", |text| text.trim());
    let (record, code, fields) = match piece {
        Piece::Bay => ("bay", code::bay(&known), of_bay(core, &answer)?),
        Piece::Device => of_device(core, &known, bay, &answer)?,
        Piece::Terminal | Piece::Look => of_point(core, &known, (piece, bay), &answer)?,
    };
    // Let go: an act copies a book that somebody looks at.
    drop(known);
    entered(core, rig, record, (code, fields))
}

/// Adds a record under a code and tells of it.
pub(super) fn entered(
    core: &mut Core,
    rig: RigId,
    record: &str,
    (code, mut fields): (String, Fields),
) -> Result<Added, Problem> {
    fields.insert(0, field("code", code.as_str()));
    let told = book::add(core, rig, record, &fields)?;
    let name = fields.iter().find(|(column, _)| column == "name");
    let args = [
        ("code", code.as_str().into()),
        ("name", name.map_or("", |(_, name)| name).into()),
    ];
    Ok(Added {
        words: core.words.fill("set-up-added", &args),
        walking: core.logbook.shared_walk(rig)?.is_some(),
        code,
        told,
    })
}

type Answer<'a> = dyn Fn(usize) -> &'a str + 'a;

fn of_bay(core: &Core, answer: &Answer<'_>) -> Result<Fields, Problem> {
    if ask::ALONG.iter().all(|(code, _)| *code != answer(2)) {
        return Err(not_offered(core, answer(2)));
    }
    Ok(vec![
        field("name", answer(0)),
        field("side", answer(1)),
        field("station", answer(2)),
        field("open_minutes", "1"),
        field("close_minutes", "1"),
    ])
}

fn of_device(
    core: &Core,
    known: &Book,
    bay: &str,
    answer: &Answer<'_>,
) -> Result<(&'static str, String, Fields), Problem> {
    let bay = bay_code(core, known, bay)?;
    let count = answer(3).parse().ok();
    let count = count.filter(|count| (1..=ask::MOST_SETS).contains(count));
    let count = count.ok_or_else(|| not_offered(core, answer(3)))?;
    let sets = sets(answer(2), count);
    let name = match answer(1) {
        "" => kind_word::<baywalk_domain::rig::DeviceKind>(core, answer(0)),
        name => name.to_owned(),
    };
    let fields = vec![
        field("bay", bay.as_str()),
        field("kind", answer(0)),
        field("name", name),
        field("sets", format!("[{}]", sets.join(", "))),
    ];
    Ok(("device", code::device(known, &bay), fields))
}

/// The sets of a device as its file has them. Names are numbers, as the groups are counted, and `dc` for
/// the one beside AC; what feeds them is left open on purpose.
fn sets(system: &str, count: u8) -> Vec<String> {
    let set = |name: &str, system: &str| format!("{{ name = \"{name}\", system = \"{system}\" }}");
    let (own, dc) = match system.strip_suffix(ask::AND_DC) {
        Some(ac) => (ac, Some(set("dc", SetSystem::Dc.code()))),
        None => (system, None),
    };
    let counted = (1..=count).map(|number| set(&number.to_string(), own));
    counted.chain(dc).collect()
}

fn of_point(
    core: &Core,
    known: &Book,
    (piece, bay): (Piece, &str),
    answer: &Answer<'_>,
) -> Result<(&'static str, String, Fields), Problem> {
    let bay = bay_code(core, known, bay)?;
    let (column, word) = match piece {
        Piece::Look => ("look", kind_word::<LookKind>(core, answer(1))),
        _ => ("fastening", kind_word::<FasteningKind>(core, answer(1))),
    };
    let name = match answer(2) {
        "" => word,
        name => name.to_owned(),
    };
    let mut fields = vec![
        field("device", answer(0)),
        field("name", name),
        field(column, answer(1)),
    ];
    if piece == Piece::Terminal {
        fields.push(field("role", answer(3)));
    }
    Ok(("point", code::point(known, &bay), fields))
}

fn kind_word<T: Coded>(core: &Core, code: &str) -> String {
    T::from_code(code).map_or_else(|_| code.to_owned(), |kind| core.words.code(kind))
}

pub(super) fn bay_code(core: &Core, known: &Book, bay: &str) -> Result<Code, Problem> {
    let named = Code::parse(bay.trim()).ok();
    let found = known
        .bays
        .iter()
        .find(|known| Some(&known.code) == named.as_ref());
    found
        .map(|bay| bay.code.clone())
        .ok_or_else(|| core.no_code(bay))
}

fn not_offered(core: &Core, found: &str) -> Problem {
    Problem::input(
        core.words
            .fill("set-up-not-offered", &[("found", found.into())]),
    )
}
