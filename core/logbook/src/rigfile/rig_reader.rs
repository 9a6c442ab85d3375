//! Reads the TOML file: the rig, its sources and bays, and with `device_reader` the rest.

use super::device_reader::{self, DEVICE, TOOL};
use super::entry::Entry;
use super::records::{Codes, limit};
use super::{FORMAT, FaultKind, Limit, MOST_RECORDS};
use baywalk_domain::ids::{ActId, BayId, RigId, SourceId};
use baywalk_domain::rig::{Bay, Book, Code, Rig, Source, Station, Wait, YearlyRule};

pub(super) const TOP: &[&str] = &["format", "rig", "yearly", "source", "bay", "device", "tool"];
const RIG: &[&str] = &["name", "kind", "service", "note"];
const YEARLY: &[&str] = &["months", "distance"];
const SOURCE: &[&str] = &[
    "code",
    "name",
    "kind",
    "presence",
    "supply",
    "highest",
    "isolation",
    "opens",
    "how",
    "wait",
    "retired",
];
const WAIT: &[&str] = &["minutes", "basis"];
const BAY: &[&str] = &[
    "code",
    "name",
    "place",
    "station",
    "side",
    "open_minutes",
    "close_minutes",
    "fed_by",
    "keep_out",
    "retired",
];

/// Reads all of the file that can be read; what can't is noted in its sink.
pub(super) fn read(top: Entry<'_>, act: ActId, codes: &mut Codes) -> Option<Book> {
    let rig = rig(top, act);
    let sources = list(top, "source", SOURCE, |entry| source(entry, act, codes));
    let bays = list(top, "bay", BAY, |entry| bay(entry, act, codes));
    let devices = list(top, "device", DEVICE, |entry| {
        device_reader::device(entry, act, codes)
    });
    codes.see_wiring(top.sink);
    let tools = list(top, "tool", TOOL, |entry| {
        device_reader::tool(entry, act, codes)
    });
    Some(Book {
        rig: rig?,
        sources,
        bays,
        devices,
        points: Vec::new(),
        tools,
        bay_photos: Vec::new(),
    })
}

/// Sees that the file is of a format that is known; nothing else is read where it is newer.
pub(super) fn is_known(top: Entry<'_>) -> bool {
    let Some(found) = top.whole::<i64>("format", 1, i64::MAX) else {
        return true;
    };
    if found > FORMAT {
        let offset = top.place("format");
        let known = FORMAT;
        top.sink
            .fault(offset, "format", FaultKind::Newer { found, known });
    }
    found <= FORMAT
}

fn list<'a, T>(
    top: Entry<'a>,
    key: &'static str,
    known: &'static [&'static str],
    mut read: impl FnMut(Entry<'a>) -> Option<T>,
) -> Vec<T> {
    let entries = top.tables(key, known);
    limit(entries.len(), MOST_RECORDS, Limit::Records, key, top.sink);
    let some = entries.into_iter().take(MOST_RECORDS);
    some.filter_map(&mut read).collect()
}

fn rig(top: Entry<'_>, act: ActId) -> Option<Rig> {
    let rule = top.need_table("yearly", YEARLY).and_then(rule);
    let entry = top.need_table("rig", RIG)?;
    let name = entry.need("name");
    let kind = entry.need("kind").and_then(|slot| slot.coded());
    let service = entry.need("service").and_then(|slot| slot.coded());
    Some(Rig {
        id: RigId::made_by(act, "rig"),
        name: name?.owned(),
        kind: kind?,
        service: service?,
        rule: rule?,
        note: entry.words("note"),
    })
}

fn rule(entry: Entry<'_>) -> Option<YearlyRule> {
    let months = entry.whole("months", 1, 12);
    let distance = entry.text("distance").and_then(|slot| slot.stated());
    Some(YearlyRule {
        months: months?,
        distance,
    })
}

fn source(entry: Entry<'_>, act: ActId, codes: &mut Codes) -> Option<Source> {
    let code = entry.need("code").and_then(|slot| codes.take(slot));
    let id = |code: &Code| SourceId::made_by(act, &format!("source:{code}"));
    if let Some(code) = &code {
        codes.sources.insert(code.clone(), id(code));
    }
    let name = entry.need("name");
    let kind = entry.need("kind").and_then(|slot| slot.coded());
    let presence = entry.need("presence").and_then(|slot| slot.coded());
    let supply = entry.need("supply").and_then(|slot| slot.coded());
    let highest = entry.text("highest").and_then(|slot| slot.stated());
    let isolation = entry.need("isolation").and_then(|slot| slot.coded());
    let opens = entry.text("opens").and_then(|slot| codes.opening(slot));
    let wait = entry.table("wait", WAIT).and_then(wait);
    let retired = entry.flag("retired");
    let how = entry.words("how");
    let code = code?;
    Some(Source {
        id: id(&code),
        code,
        name: name?.owned(),
        kind: kind?,
        presence: presence?,
        supply: supply?,
        highest,
        isolation: isolation?,
        opens,
        how,
        wait,
        retired,
    })
}

fn wait(entry: Entry<'_>) -> Option<Wait> {
    let minutes = entry.whole("minutes", 0, u16::MAX.into());
    let basis = entry.need("basis");
    Some(Wait {
        minutes: minutes?,
        basis: basis?.owned(),
    })
}

fn bay(entry: Entry<'_>, act: ActId, codes: &mut Codes) -> Option<Bay> {
    let code = entry.need("code").and_then(|slot| codes.take(slot));
    let id = |code: &Code| BayId::made_by(act, &format!("bay:{code}"));
    if let Some(code) = &code {
        codes.bays.insert(code.clone(), id(code));
    }
    let name = entry.need("name");
    let station = entry.whole("station", 0, 1000).and_then(Station::new);
    let side = entry.need("side").and_then(|slot| slot.coded());
    let open_minutes = entry.whole("open_minutes", 0, u16::MAX.into());
    let close_minutes = entry.whole("close_minutes", 0, u16::MAX.into());
    let feeds = entry.texts("fed_by");
    let fed_by = feeds.into_iter().filter_map(|slot| codes.source(slot));
    let fed_by = fed_by.map(|(_, id)| id).collect();
    let (place, keep_out) = (entry.words("place"), entry.words("keep_out"));
    let retired = entry.flag("retired");
    let code = code?;
    Some(Bay {
        id: id(&code),
        code,
        name: name?.owned(),
        place,
        station: station?,
        side: side?,
        open_minutes: open_minutes?,
        close_minutes: close_minutes?,
        fed_by,
        keep_out,
        retired,
    })
}
