//! One chart of a rig.

use super::facts::{find, of_bays, of_kinds, of_point, of_service};
use crate::{Core, Problem};
use baywalk_domain::ids::RigId;
use baywalk_paper::chart::{self as paper, Chart};

/// What a chart is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Subject<'a> {
    /// A terminal or look through the years, by its code.
    Point(&'a str),
    /// The kinds that loosen.
    Kinds,
    /// Minutes in each bay.
    Minutes,
    /// The voltage of the service on power-up.
    Volts,
}

impl<'a> Subject<'a> {
    /// The subject by its word, beside the code of a point.
    ///
    /// # Errors
    /// [`Problem`] where there is no such word, or a point is missing or not asked for.
    pub fn of(core: &Core, word: &str, point: Option<&'a str>) -> Result<Self, Problem> {
        let subject = match (word, point) {
            ("point", Some(code)) => return Ok(Self::Point(code)),
            ("point", None) => return Err(Problem::input(core.words.say("past-which-point"))),
            ("kinds", None) => Self::Kinds,
            ("minutes", None) => Self::Minutes,
            ("volts", None) => Self::Volts,
            ("kinds" | "minutes" | "volts", Some(found)) => {
                let args = [("found", found.into()), ("chart", word.into())];
                return Err(Problem::input(core.words.fill("past-no-point", &args)));
            }
            _ => {
                let args = [("found", word.into())];
                return Err(Problem::input(core.words.fill("past-no-chart", &args)));
            }
        };
        Ok(subject)
    }
}

/// Draws a chart of a rig over a width.
///
/// # Errors
/// [`Problem`] where there is no such rig or point, or the logbook can't be read.
pub fn chart(core: &Core, rig: RigId, of: Subject<'_>, width: f64) -> Result<Chart, Problem> {
    let book = core.logbook.shared_book(rig)?;
    let words = &core.words;
    Ok(match of {
        Subject::Point(code) => {
            let point = find(core, &book, code)?;
            let known = core.logbook.known(rig)?;
            let walks = of_point(core, &book, &known, point.id)?;
            paper::point(point, &walks, &book, words, width)
        }
        Subject::Kinds => {
            let known = core.logbook.known(rig)?;
            let none = words.say("timing-learned-none");
            paper::kinds(&of_kinds(core, &book, &known), &none, words, width)
        }
        Subject::Minutes => paper::minutes(&of_bays(core, rig, &book)?, words, width),
        Subject::Volts => paper::volts(&of_service(core, rig)?, words, width),
    })
}
