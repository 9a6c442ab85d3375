//! One cell of a table.

use super::guard;
use baywalk_domain::coded::Coded;
use baywalk_domain::units::{Stated, Unit};
use chrono::NaiveDate;

/// One cell.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Cell {
    /// Nothing.
    Empty,
    /// What the tool wrote: a number, a day, a code, a name for machines. Never guarded.
    Plain(String),
    /// What a person typed.
    Text(String),
}

impl Cell {
    /// What a person typed.
    #[must_use]
    pub fn text(text: &str) -> Self {
        if text.is_empty() {
            Self::Empty
        } else {
            Self::Text(text.to_owned())
        }
    }

    /// What the tool wrote.
    #[must_use]
    pub fn plain(value: impl ToString) -> Self {
        Self::Plain(value.to_string())
    }

    /// The code of a member of a list.
    #[must_use]
    pub fn code(member: impl Coded) -> Self {
        Self::plain(member.code())
    }

    /// A number, shortest and with a point, rounded to so many places.
    #[must_use]
    pub fn number(value: f64, places: i32) -> Self {
        let scale = 10_f64.powi(places);
        let rounded = (value * scale).round() / scale;
        if rounded.is_finite() {
            Self::plain(rounded + 0.0)
        } else {
            Self::Empty
        }
    }

    /// The number of a quantity with the digits as typed and a point, and the code of its unit.
    ///
    /// # Example
    /// ```
    /// use baywalk_domain::units::{Stated, TorqueUnit};
    /// use baywalk_paper::table::Cell;
    /// let [number, unit] = Cell::stated(Some(&Stated::parse("4,50", TorqueUnit::NewtonMetres)?));
    /// assert_eq!((number.written(), unit.written()), ("4.50".to_owned(), "N.m".to_owned()));
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    #[must_use]
    pub fn stated<U: Unit>(stated: Option<&Stated<U>>) -> [Self; 2] {
        stated.map_or([Self::Empty, Self::Empty], |stated| {
            let number = Self::plain(stated.text().replace(',', "."));
            [number, Self::code(stated.unit())]
        })
    }

    /// The cell as it stands in the file, before quoting.
    #[must_use]
    pub fn written(&self) -> String {
        match self {
            Self::Empty => String::new(),
            Self::Plain(text) => text.clone(),
            Self::Text(text) => guard::guarded(text),
        }
    }
}

/// Nothing where there is nothing.
impl<C: Into<Cell>> From<Option<C>> for Cell {
    fn from(cell: Option<C>) -> Self {
        cell.map_or(Self::Empty, Into::into)
    }
}

macro_rules! plain {
    ($($of:ty),+) => {$(
        impl From<$of> for Cell {
            fn from(value: $of) -> Self {
                Self::plain(value)
            }
        }
    )+};
}

plain!(bool, u16, u32, usize, NaiveDate);
