//! Rig files: what is read, what is refused and where, and what is written.

#[cfg(test)]
mod books;
#[cfg(test)]
mod cells;
#[cfg(test)]
mod faults;
#[cfg(test)]
mod guide;
#[cfg(test)]
mod hostile;
#[cfg(test)]
mod layouts;
#[cfg(test)]
mod roundtrip;
#[cfg(test)]
mod values;

#[cfg(test)]
mod tried {
    use baywalk_domain::ids::ActId;
    use baywalk_domain::rig::Book;
    use baywalk_logbook::rigfile::{Fault, NamedText, read};

    /// A rig of one bay, one device and no points.
    pub(crate) const SOUND: &str = r#"format = 1
rig = { name = "Pip", kind = "trailer", service = "30A-120V" }
yearly = { months = 12 }
source = [{ code = "S1", name = "shore", kind = "shore", presence = "have", supply = "ac", isolation = "unplug" }]
bay = [{ code = "A", name = "bay", station = 5, side = "left", open_minutes = 1, close_minutes = 1, fed_by = ["S1"] }]
device = [{ code = "ADV", name = "panel", bay = "A", kind = "ac_panel", sets = [{ name = "feed", system = "single_phase" }] }]
"#;

    /// The act that every book of these tests is made by.
    pub(crate) fn act() -> ActId {
        "0190f0c4-0000-7000-8000-000000000001".parse().unwrap()
    }

    /// Reads the texts of two files.
    pub(crate) fn texts(toml: &str, csv: &str) -> Result<Book, Vec<Fault>> {
        let toml = NamedText {
            name: "rig.toml",
            text: toml,
        };
        let csv = NamedText {
            name: "points.csv",
            text: csv,
        };
        read(&toml, &csv, act())
    }

    /// The faults of two files; none where they are sound.
    pub(crate) fn faults(toml: &str, csv: &str) -> Vec<Fault> {
        texts(toml, csv).err().unwrap_or_default()
    }
}
