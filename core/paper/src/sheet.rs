//! A paper before it has a format: parts, tables and lines of text in reading order.
//!
//! Nothing here is markup. Every string is text as people read it.

use crate::photo::Photo;
use baywalk_shapes::Drawing;
use baywalk_shapes::frame::Frame;

/// A whole paper. [`Sheet::html`] and [`Sheet::pdf`] write the same in the same order.
#[derive(Debug, Clone, PartialEq)]
pub struct Sheet {
    /// Language tag of the text, such as `en`.
    pub(crate) language: String,
    /// What it is.
    pub(crate) title: String,
    /// Which rig and who, one line each.
    pub(crate) under: Vec<String>,
    /// Its parts, in order.
    pub(crate) parts: Vec<Part>,
    /// Edition and time, at the foot.
    pub(crate) foot: String,
    /// The edition of the software.
    pub(crate) edition: String,
    /// What makes a file the same one when it is made again.
    pub(crate) identity: String,
}

/// A part of a report, under a heading of its own.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Part {
    /// The anchor of the part, unique in the sheet.
    pub(crate) anchor: &'static str,
    /// The heading.
    pub(crate) title: String,
    /// Whether it leaves the first page to what stands before it, where there are pages.
    pub(crate) apart: bool,
    /// What stands in it.
    pub(crate) blocks: Vec<Block>,
}

/// One block of a part.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Block {
    /// A heading inside a part, with the tag of the bay where it is about one.
    Heading { tag: Option<String>, text: String },
    /// What must be seen before all else: reversed and square.
    Caution { title: String, lines: Vec<String> },
    /// A paragraph.
    Text(String),
    /// Lines of equal rank.
    List(Vec<String>),
    /// Figures with their drawing and word.
    Counts(Vec<Count>),
    /// The rig from the side, with what is read aloud in its place.
    Strip {
        drawing: Drawing,
        title: String,
        description: String,
    },
    /// Terms with what is said of each.
    Terms(Vec<(String, Vec<String>)>),
    /// A table.
    Table(Table),
    /// Blocks at the left and at the right, where there is room beside each other.
    Beside(Vec<Block>, Vec<Block>),
    /// Photos with their words.
    Photos(Vec<Photo>),
    /// What is written in by hand, each with room for it.
    Blanks(Vec<String>),
}

/// How many there are of one grade.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Count {
    pub(crate) figure: usize,
    /// The drawing of the grade at a terminal.
    pub(crate) glyph: Drawing,
    /// The pattern of the grade in the strip.
    pub(crate) pattern: Drawing,
    pub(crate) word: String,
}

/// A table whose first column heads its rows.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Table {
    pub(crate) caption: String,
    pub(crate) columns: Vec<Column>,
    pub(crate) rows: Vec<Vec<Cell>>,
}

/// A column of a table.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Column {
    /// What heads it.
    pub(crate) heading: String,
    /// Its share of the width where the page is wide, in percent.
    pub(crate) share: u8,
}

/// One cell of a table.
#[derive(Debug, Clone, PartialEq, Default)]
pub(crate) struct Cell {
    /// The short word on the label of a bay or point.
    pub(crate) tag: Option<Tag>,
    /// The drawing.
    pub(crate) glyph: Option<Drawing>,
    /// A figure that stands first and large, in the frame that tells its basis.
    pub(crate) figure: Option<(Frame, String)>,
    /// What stands first, strong.
    pub(crate) head: String,
    /// What stands under it, one line each.
    pub(crate) lines: Vec<String>,
}

/// A short word on a label: square for a bay, round for a point.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Tag {
    Bay(String),
    Point(String),
}

impl Tag {
    /// The word.
    pub(crate) fn word(&self) -> &str {
        match self {
            Self::Bay(word) | Self::Point(word) => word,
        }
    }

    /// The name of the shape in a style sheet.
    pub(crate) const fn shape(&self) -> &'static str {
        match self {
            Self::Bay(_) => "bay",
            Self::Point(_) => "point",
        }
    }
}

impl Cell {
    /// A cell with a first line only.
    pub(crate) fn of(head: impl Into<String>) -> Self {
        Self {
            head: head.into(),
            ..Self::default()
        }
    }

    /// The cell with lines under it; empty ones are left out.
    pub(crate) fn with(mut self, lines: impl IntoIterator<Item = String>) -> Self {
        let told = lines.into_iter().filter(|line| !line.trim().is_empty());
        self.lines.extend(told);
        self
    }

    /// The cell with the tag of a bay before it.
    pub(crate) fn bay(mut self, code: &str) -> Self {
        self.tag = Some(Tag::Bay(code.to_owned()));
        self
    }

    /// The cell with the tag of a point before it.
    pub(crate) fn point(mut self, code: &str) -> Self {
        self.tag = Some(Tag::Point(code.to_owned()));
        self
    }

    /// The cell with a drawing.
    pub(crate) fn drawn(mut self, glyph: Drawing) -> Self {
        self.glyph = Some(glyph);
        self
    }

    /// The cell with a figure in its frame.
    pub(crate) fn framed(mut self, frame: Frame, figure: String) -> Self {
        self.figure = Some((frame, figure));
        self
    }
}

impl Table {
    /// The heading of a column; empty beyond the last.
    pub(crate) fn column(&self, place: &usize) -> &str {
        self.columns
            .get(*place)
            .map_or("", |column| &column.heading)
    }
}
