//! Axes with their ticks, and where a value lies between them.

use super::canvas::{Canvas, FINE, colour, fine, place};
use baywalk_shapes::{Drawing, Path, Role};
use plotters::coord::types::RangedCoordf64;
use plotters::prelude::{Cartesian2d, ChartBuilder, CoordTranslate, DrawingArea, IntoDrawingArea};
use plotters::style::{Color, FontDesc, FontFamily, FontStyle, TextStyle};
use std::ops::Range;

/// One axis: what it covers, about how many ticks, and the word at each.
pub(super) struct Axis<'a> {
    pub(super) over: Range<f64>,
    pub(super) ticks: usize,
    pub(super) word: &'a dyn Fn(&f64) -> String,
}

/// Where the axes lie in a drawing: from the left edge on, so much room for words at their left and
/// foot.
#[derive(Clone, Copy)]
pub(super) struct Spot {
    pub(super) top: f64,
    pub(super) height: f64,
    pub(super) left: f64,
    pub(super) foot: f64,
}

/// Where values lie in the drawing.
pub(super) struct Map {
    coordinates: Cartesian2d<RangedCoordf64, RangedCoordf64>,
    top: f64,
}

impl Map {
    /// The place of a value.
    pub(super) fn at(&self, x: f64, y: f64) -> (f64, f64) {
        let (across, down) = place(self.coordinates.translate(&(x, y)));
        (across, down + self.top)
    }

    /// A line through values.
    pub(super) fn line(&self, values: impl IntoIterator<Item = (f64, f64)>) -> Option<Path> {
        let mut places = values.into_iter().map(|(x, y)| self.at(x, y));
        let first = Path::from(places.next()?);
        Some(places.fold(first, |path, (x, y)| path.to(x, y)))
    }
}

/// Draws two axes over the whole width of a drawing; `None` where they can't be laid out.
pub(super) fn axes(drawing: &mut Drawing, spot: Spot, x: &Axis<'_>, y: &Axis<'_>) -> Option<Map> {
    let mut own = Drawing::new(drawing.width, spot.height);
    let canvas = Canvas::new(&mut own, (fine(drawing.width), fine(spot.height)));
    let root = canvas.into_drawing_area();
    let coordinates = laid_out(&root, spot, x, y)?;
    drop(root);
    drawing.add(&own, 0.0, spot.top);
    let top = spot.top;
    Some(Map { coordinates, top })
}

fn laid_out(
    root: &DrawingArea<Canvas<'_>, plotters::coord::Shift>,
    spot: Spot,
    x: &Axis<'_>,
    y: &Axis<'_>,
) -> Option<Cartesian2d<RangedCoordf64, RangedCoordf64>> {
    let mut chart = ChartBuilder::on(root)
        .x_label_area_size(fine(spot.foot))
        .y_label_area_size(fine(spot.left))
        .margin_right(fine(14.0))
        .margin_top(fine(8.0))
        .build_cartesian_2d(x.over.clone(), y.over.clone())
        .ok()?;
    let ink = colour(Role::Ink);
    let font = FontDesc::new(FontFamily::SansSerif, 14.0 * FINE, FontStyle::Normal);
    let words: TextStyle<'_> = TextStyle::from(font).color(&ink);
    let mut mesh = chart.configure_mesh();
    mesh.disable_mesh()
        .axis_style(ink.stroke_width(fine(1.0)))
        .label_style(words)
        .set_all_tick_mark_size(fine(4.0))
        .x_labels(x.ticks)
        .y_labels(y.ticks)
        .x_label_formatter(&x.word)
        .y_label_formatter(&y.word);
    mesh.draw().ok()?;
    Some(chart.as_coord_spec().clone())
}
