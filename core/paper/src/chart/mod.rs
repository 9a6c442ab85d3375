//! Charts: a terminal through the years, the kinds that loosen, minutes in each bay, the voltage of the
//! service. Each comes as a drawing, told in sentences, and as a table of its numbers.
//!
//! A chart is dark on light and tells by shape: it is read the same without colour.

mod canvas;
mod kinds;
mod minutes;
mod page;
mod plot;
mod point;
mod volts;

pub use kinds::{KindFacts, kinds};
pub use minutes::{BayMinutes, minutes};
pub use point::{PointWalk, point};
pub use volts::{SERVICE_READINGS, VoltWalk, volts};

use crate::table::Table;
use baywalk_shapes::Drawing;
use baywalk_shapes::palette::Palette;
use baywalk_shapes::svg::{Told, svg};

/// A chart.
#[derive(Debug, Clone, PartialEq)]
pub struct Chart {
    /// What it shows, in a few words.
    pub title: String,
    /// What it tells, in sentences: all that a reader who can't see it needs.
    pub told: Vec<String>,
    /// The picture; its title stands beside it, not in it.
    pub drawing: Drawing,
    /// The numbers that it shows.
    pub numbers: Table,
}

impl Chart {
    /// The chart as an SVG file that stands by itself: dark on white, text as text, its title and
    /// what it tells inside.
    #[must_use]
    pub fn svg(&self, language: &str) -> String {
        let description = self.told.join(" ");
        let (title, description) = (self.title.as_str(), description.as_str());
        let told = Told { title, description };
        let picture = svg(&self.drawing, &Palette::PAPER, Some(told));
        let (width, height) = (self.drawing.width, self.drawing.height);
        let head = format!(
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" \
             xml:lang=\"{language}\" width=\"{width}\" height=\"{height}\" \
             font-family=\"sans-serif\" style=\"background:#ffffff\" "
        );
        let rest = picture.strip_prefix("<svg ").unwrap_or(&picture);
        format!("{head}{rest}\n")
    }
}
