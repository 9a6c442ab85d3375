//! One table of the TOML file, read key by key.

use super::FaultKind;
use super::sink::Sink;
use super::slot::Slot;
use chrono::NaiveDate;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// A table of the TOML file whose keys are known beforehand.
#[derive(Clone, Copy)]
pub(super) struct Entry<'a> {
    table: &'a DeTable<'a>,
    start: usize,
    pub(super) sink: &'a Sink<'a>,
}

/// A value and its key.
#[derive(Clone, Copy)]
struct Value<'a> {
    key: &'static str,
    spanned: &'a Spanned<DeValue<'a>>,
    sink: &'a Sink<'a>,
}

impl<'a> Entry<'a> {
    /// Takes a table that begins at a byte; each key that is not known is a fault.
    pub(super) fn new(
        table: &'a DeTable<'a>,
        start: usize,
        known: &'static [&'static str],
        sink: &'a Sink<'a>,
    ) -> Self {
        let entry = Self { table, start, sink };
        entry.judge_keys(known);
        entry
    }

    /// Takes the whole document, whose keys are judged once its format is known.
    pub(super) fn document(table: &'a DeTable<'a>, sink: &'a Sink<'a>) -> Self {
        let start = 0;
        Self { table, start, sink }
    }

    /// Notes each key that is not known.
    pub(super) fn judge_keys(&self, known: &'static [&'static str]) {
        for key in self.table.keys() {
            let name: &str = key.get_ref();
            if !known.contains(&name) {
                let unknown = FaultKind::UnknownField { expected: known };
                self.sink.fault(key.span().start, name, unknown);
            }
        }
    }

    /// Where the value of a key begins; where it is missing, where the table does.
    pub(super) fn place(&self, key: &str) -> usize {
        self.table
            .get(key)
            .map_or(self.start, |value| value.span().start)
    }

    /// Notes that a key is missing from the table.
    fn missing(&self, key: &str) {
        self.sink.fault(self.start, key, FaultKind::Missing);
    }

    fn value(&self, key: &'static str) -> Option<Value<'a>> {
        self.table.get(key).map(|spanned| Value {
            key,
            spanned,
            sink: self.sink,
        })
    }

    fn needed(&self, key: &'static str) -> Option<Value<'a>> {
        let value = self.value(key);
        if value.is_none() {
            self.missing(key);
        }
        value
    }

    /// A text that may be left out or empty.
    pub(super) fn text(&self, key: &'static str) -> Option<Slot<'a>> {
        self.value(key)?.slot().filter(|slot| !slot.text.is_empty())
    }

    /// A text that must be there and not be empty.
    pub(super) fn need(&self, key: &'static str) -> Option<Slot<'a>> {
        let slot = self.needed(key)?.slot()?;
        if slot.text.is_empty() {
            slot.fault(FaultKind::Missing);
            return None;
        }
        Some(slot)
    }

    /// A text that is shown as it stands; empty where it is left out.
    pub(super) fn words(&self, key: &'static str) -> String {
        self.text(key).map(|slot| slot.owned()).unwrap_or_default()
    }

    /// A whole number that must be there.
    pub(super) fn whole<T: TryFrom<i64>>(
        &self,
        key: &'static str,
        least: i64,
        most: i64,
    ) -> Option<T> {
        self.needed(key)?.whole(least, most)
    }

    /// A whole number that is 0 where it is left out.
    pub(super) fn count(&self, key: &'static str) -> Option<u32> {
        match self.value(key) {
            Some(value) => value.whole(0, i64::from(u32::MAX)),
            None => Some(0),
        }
    }

    /// A truth that is false where it is left out.
    pub(super) fn flag(&self, key: &'static str) -> bool {
        self.value(key).is_some_and(|value| {
            let found = value.get().as_bool();
            value.typed(found, "boolean").unwrap_or(false)
        })
    }

    /// A day that may be left out.
    pub(super) fn date(&self, key: &'static str) -> Option<NaiveDate> {
        let value = self.value(key)?;
        let found = value.typed(value.get().as_datetime(), "datetime")?;
        let day = found
            .date
            .filter(|_| found.time.is_none() && found.offset.is_none());
        let date = day.and_then(|day| {
            NaiveDate::from_ymd_opt(i32::from(day.year), day.month.into(), day.day.into())
        });
        if date.is_none() {
            let found = found.to_string();
            value.fault(FaultKind::Date { found });
        }
        date
    }

    /// The texts of a list; none where it is left out.
    pub(super) fn texts(&self, key: &'static str) -> Vec<Slot<'a>> {
        let items = self.items(key);
        items.iter().filter_map(|item| item.slot()).collect()
    }

    /// A table that may be left out.
    pub(super) fn table(&self, key: &'static str, known: &'static [&'static str]) -> Option<Self> {
        self.value(key)?.entry(known)
    }

    /// A table that must be there.
    pub(super) fn need_table(
        &self,
        key: &'static str,
        known: &'static [&'static str],
    ) -> Option<Self> {
        self.needed(key)?.entry(known)
    }

    /// The tables of a list; none where it is left out.
    pub(super) fn tables(&self, key: &'static str, known: &'static [&'static str]) -> Vec<Self> {
        let items = self.items(key);
        items.iter().filter_map(|item| item.entry(known)).collect()
    }

    fn items(&self, key: &'static str) -> Vec<Value<'a>> {
        let array = self
            .value(key)
            .and_then(|value| value.typed(value.get().as_array(), "array"));
        let item = |spanned| Value {
            key,
            spanned,
            sink: self.sink,
        };
        array.map_or_else(Vec::new, |list| list.iter().map(item).collect())
    }
}

impl<'a> Value<'a> {
    fn get(self) -> &'a DeValue<'a> {
        self.spanned.get_ref()
    }

    fn fault(self, kind: FaultKind) {
        self.sink.fault(self.spanned.span().start, self.key, kind);
    }

    /// Passes a value of the expected type on; notes that it is of another.
    fn typed<T>(self, found: Option<T>, expected: &'static str) -> Option<T> {
        if found.is_none() {
            let found = self.get().type_str();
            self.fault(FaultKind::Type { found, expected });
        }
        found
    }

    fn slot(self) -> Option<Slot<'a>> {
        let text = self.typed(self.get().as_str(), "string")?;
        Some(Slot {
            field: self.key,
            offset: self.spanned.span().start,
            text: text.trim(),
            sink: self.sink,
        })
    }

    fn entry(self, known: &'static [&'static str]) -> Option<Entry<'a>> {
        let table = self.typed(self.get().as_table(), "table")?;
        let start = self.spanned.span().start;
        Some(Entry::new(table, start, known, self.sink))
    }

    fn whole<T: TryFrom<i64>>(self, least: i64, most: i64) -> Option<T> {
        let number = self.typed(self.get().as_integer(), "integer")?;
        let taken = i64::from_str_radix(number.as_str(), number.radix())
            .ok()
            .filter(|number| (least..=most).contains(number))
            .and_then(|number| T::try_from(number).ok());
        if taken.is_none() {
            self.fault(FaultKind::Whole {
                found: number.to_string(),
                least,
                most,
            });
        }
        taken
    }
}
