//! Writes the TOML file: the rig, its sources, bays, devices and tools.

use super::FORMAT;
use baywalk_domain::coded::Coded;
use baywalk_domain::ids::{BayId, SourceId};
use baywalk_domain::rig::{Bay, Book, Code, ConductorSet, Device, Opening, Source, Tool, Wait};

/// Lines of TOML; what is empty or false is left out, as the reader takes it.
#[derive(Default)]
struct Lines(String);

impl Lines {
    fn head(&mut self, text: &str) {
        self.0.push_str(&format!("\n{text}\n"));
    }

    fn raw(&mut self, key: &str, value: &str) {
        self.0.push_str(&format!("{key} = {value}\n"));
    }

    fn text(&mut self, key: &str, value: &str) {
        if !value.is_empty() {
            self.raw(key, &quoted(value));
        }
    }

    fn coded<T: Coded>(&mut self, key: &str, value: T) {
        self.text(key, value.code());
    }

    fn list(&mut self, key: &str, items: &[String]) {
        if !items.is_empty() {
            self.raw(key, &format!("[{}]", items.join(", ")));
        }
    }

    fn retired(&mut self, retired: bool) {
        if retired {
            self.raw("retired", "true");
        }
    }
}

/// Writes everything of a book but its points.
pub(super) fn write(book: &Book) -> String {
    let mut lines = Lines::default();
    lines.raw("format", &FORMAT.to_string());
    rig(&mut lines, book);
    for source in &book.sources {
        self::source(&mut lines, source);
    }
    for bay in &book.bays {
        self::bay(&mut lines, bay, book);
    }
    for device in &book.devices {
        self::device(&mut lines, device, book);
    }
    for tool in &book.tools {
        self::tool(&mut lines, tool);
    }
    lines.0
}

fn rig(lines: &mut Lines, book: &Book) {
    lines.head("[rig]");
    lines.text("name", &book.rig.name);
    lines.coded("kind", book.rig.kind);
    lines.coded("service", book.rig.service);
    lines.text("note", &book.rig.note);
    lines.head("[yearly]");
    lines.raw("months", &book.rig.rule.months.to_string());
    let distance = book.rig.rule.distance.as_ref();
    lines.text("distance", &distance.map_or_else(String::new, |d| d.pair()));
}

fn source(lines: &mut Lines, source: &Source) {
    lines.head("[[source]]");
    lines.text("code", source.code.as_str());
    lines.text("name", &source.name);
    lines.coded("kind", source.kind);
    lines.coded("presence", source.presence);
    lines.coded("supply", source.supply);
    let highest = source.highest.as_ref();
    lines.text("highest", &highest.map_or_else(String::new, |v| v.pair()));
    lines.coded("isolation", source.isolation);
    let opens = source.opens.as_ref();
    lines.text("opens", &opens.map_or_else(String::new, Opening::text));
    lines.text("how", &source.how);
    if let Some(Wait { minutes, basis }) = &source.wait {
        let basis = quoted(basis);
        lines.raw(
            "wait",
            &format!("{{ minutes = {minutes}, basis = {basis} }}"),
        );
    }
    lines.retired(source.retired);
}

fn bay(lines: &mut Lines, bay: &Bay, book: &Book) {
    lines.head("[[bay]]");
    lines.text("code", bay.code.as_str());
    lines.text("name", &bay.name);
    lines.text("place", &bay.place);
    lines.raw("station", &bay.station.thousandths().to_string());
    lines.coded("side", bay.side);
    lines.raw("open_minutes", &bay.open_minutes.to_string());
    lines.raw("close_minutes", &bay.close_minutes.to_string());
    let code = |id: &SourceId| book.source(*id).map(|source| in_list(&source.code));
    let feeds: Vec<String> = bay.fed_by.iter().filter_map(code).collect();
    lines.list("fed_by", &feeds);
    lines.text("keep_out", &bay.keep_out);
    lines.retired(bay.retired);
}

fn device(lines: &mut Lines, device: &Device, book: &Book) {
    lines.head("[[device]]");
    lines.text("code", device.code.as_str());
    lines.text("name", &device.name);
    lines.text("bay", bay_code(book, device.bay));
    lines.coded("kind", device.kind);
    let sets: Vec<String> = device.sets.iter().map(set).collect();
    lines.list("sets", &sets);
    let posts: Vec<String> = device.unswitched.iter().map(in_list).collect();
    lines.list("unswitched", &posts);
    lines.retired(device.retired);
}

fn bay_code(book: &Book, id: BayId) -> &str {
    book.bay(id).map_or("", |bay| bay.code.as_str())
}

fn set(set: &ConductorSet) -> String {
    let (name, system) = (quoted(&set.name), quoted(set.system.code()));
    if set.from.is_empty() {
        return format!("{{ name = {name}, system = {system} }}");
    }
    let from: Vec<String> = set.from.iter().map(|feed| quoted(&feed.text())).collect();
    let from = from.join(", ");
    format!("{{ name = {name}, system = {system}, from = [{from}] }}")
}

fn tool(lines: &mut Lines, tool: &Tool) {
    lines.head("[[tool]]");
    lines.text("code", tool.code.as_str());
    lines.text("name", &tool.name);
    lines.coded("kind", tool.kind);
    lines.text("least", &tool.least.pair());
    lines.text("most", &tool.most.pair());
    lines.text("step", &tool.step.pair());
    if let Some(day) = tool.calibrated {
        lines.raw("calibrated", &day.format("%Y-%m-%d").to_string());
    }
    if tool.cycles > 0 {
        lines.raw("cycles", &tool.cycles.to_string());
    }
    lines.retired(tool.retired);
}

/// A code as an item of a list.
fn in_list(code: &Code) -> String {
    quoted(code.as_str())
}

/// A text as a TOML string on one line.
fn quoted(text: &str) -> String {
    let mut quoted = String::from("\"");
    for character in text.chars() {
        match character {
            '"' | '\\' => quoted.extend(['\\', character]),
            '\n' => quoted.push_str("\\n"),
            '\t' => quoted.push_str("\\t"),
            c if c.is_control() => quoted.push_str(&format!("\\u{:04X}", u32::from(c))),
            c => quoted.push(c),
        }
    }
    quoted.push('"');
    quoted
}
