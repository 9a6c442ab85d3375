//! The drawing that a plot writes into: plotters lays out axes and ticks, and each stroke and word of
//! it becomes a part of a [`Drawing`], so that paper and screens paint the same geometry.

use baywalk_shapes::{Anchor, Drawing, Label, Path, Role, Size, width_of};
use plotters::style::RGBColor;
use plotters_backend::text_anchor::{HPos, VPos};
use plotters_backend::{
    BackendColor, BackendCoord, BackendStyle, BackendTextStyle, DrawingBackend, DrawingErrorKind,
};
use std::convert::Infallible;

/// Steps of the plot's whole-number grid in one unit of a drawing.
pub(super) const FINE: f64 = 10.0;

type Drawn = Result<(), DrawingErrorKind<Infallible>>;

/// A part of a drawing as a plot sees it.
pub(super) struct Canvas<'a> {
    drawing: &'a mut Drawing,
    /// Width and height on the plot's grid.
    size: (u32, u32),
}

impl<'a> Canvas<'a> {
    pub(super) const fn new(drawing: &'a mut Drawing, size: (u32, u32)) -> Self {
        Self { drawing, size }
    }

    fn stroke(&mut self, path: Path, style: &impl BackendStyle) {
        let width = f64::from(style.stroke_width()) / FINE;
        self.drawing.stroke(role(style.color()), width, path);
    }

    fn shape(&mut self, path: Path, style: &impl BackendStyle, fill: bool) {
        if fill {
            self.drawing.fill(role(style.color()), path);
        } else {
            self.stroke(path, style);
        }
    }
}

/// The colour by which a plot names a role.
pub(super) fn colour(role: Role) -> RGBColor {
    let place = Role::ALL.iter().position(|other| *other == role);
    RGBColor(
        place
            .and_then(|place| u8::try_from(place).ok())
            .unwrap_or(0),
        0,
        0,
    )
}

fn role(colour: BackendColor) -> Role {
    let place = usize::from(colour.rgb.0);
    Role::ALL.get(place).copied().unwrap_or(Role::Ink)
}

/// A place of the plot's grid in the drawing.
pub(super) fn place((x, y): BackendCoord) -> (f64, f64) {
    (f64::from(x) / FINE, f64::from(y) / FINE)
}

fn run(points: impl IntoIterator<Item = BackendCoord>) -> Option<Path> {
    let mut points = points.into_iter().map(place);
    let first = Path::from(points.next()?);
    Some(points.fold(first, |path, (x, y)| path.to(x, y)))
}

impl DrawingBackend for Canvas<'_> {
    type ErrorType = Infallible;

    fn get_size(&self) -> (u32, u32) {
        self.size
    }

    fn ensure_prepared(&mut self) -> Drawn {
        Ok(())
    }

    fn present(&mut self) -> Drawn {
        Ok(())
    }

    fn draw_pixel(&mut self, point: BackendCoord, colour: BackendColor) -> Drawn {
        let (x, y) = place(point);
        let dot = Path::rectangle(x, y, 1.0 / FINE, 1.0 / FINE);
        self.drawing.fill(role(colour), dot);
        Ok(())
    }

    fn draw_line<S: BackendStyle>(
        &mut self,
        from: BackendCoord,
        to: BackendCoord,
        style: &S,
    ) -> Drawn {
        self.stroke(Path::line(place(from), place(to)), style);
        Ok(())
    }

    fn draw_rect<S: BackendStyle>(
        &mut self,
        from: BackendCoord,
        to: BackendCoord,
        style: &S,
        fill: bool,
    ) -> Drawn {
        let ((x, y), (right, foot)) = (place(from), place(to));
        self.shape(Path::rectangle(x, y, right - x, foot - y), style, fill);
        Ok(())
    }

    fn draw_path<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(
        &mut self,
        path: I,
        style: &S,
    ) -> Drawn {
        if let Some(path) = run(path) {
            self.stroke(path, style);
        }
        Ok(())
    }

    fn draw_circle<S: BackendStyle>(
        &mut self,
        centre: BackendCoord,
        radius: u32,
        style: &S,
        fill: bool,
    ) -> Drawn {
        let (x, y) = place(centre);
        self.shape(Path::circle(x, y, f64::from(radius) / FINE), style, fill);
        Ok(())
    }

    fn fill_polygon<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(
        &mut self,
        corners: I,
        style: &S,
    ) -> Drawn {
        if let Some(path) = run(corners) {
            self.shape(path.close(), style, true);
        }
        Ok(())
    }

    fn draw_text<T: BackendTextStyle>(&mut self, text: &str, style: &T, at: BackendCoord) -> Drawn {
        let (x, y) = place(at);
        let (across, size) = (style.anchor(), Size::Least);
        let drop = match across.v_pos {
            VPos::Top => 0.78 * size.height(),
            VPos::Center => size.drop(),
            VPos::Bottom => -0.22 * size.height(),
        };
        let anchor = match across.h_pos {
            HPos::Left => Anchor::Start,
            HPos::Center => Anchor::Middle,
            HPos::Right => Anchor::End,
        };
        let text = text.to_owned();
        let y = y + drop;
        let label = Label {
            text,
            x,
            y,
            anchor,
            size,
        };
        self.drawing.label(role(style.color()), label);
        Ok(())
    }

    fn estimate_text_size<T: BackendTextStyle>(
        &self,
        text: &str,
        _: &T,
    ) -> Result<(u32, u32), DrawingErrorKind<Infallible>> {
        let size = Size::Least;
        Ok((fine(width_of(text, size)), fine(size.height())))
    }
}

/// A measure of a drawing on the plot's grid.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "clamped above"
)]
pub(super) fn fine(measure: f64) -> u32 {
    (measure * FINE).round().clamp(0.0, 1e6) as u32
}
