//! A drawing as SVG text (SVG 1.1; paths by its section 8.3).

mod escape;
mod path;

use crate::palette::Palette;
use crate::{Anchor, Drawing, Label, Shape};
use escape::escape;
use std::fmt::Write as _;

/// What a drawing is and shows, read aloud in its place.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Told<'a> {
    /// What it is, in a few words.
    pub title: &'a str,
    /// What it shows, in sentences; may be empty.
    pub description: &'a str,
}

/// The drawing as one SVG element, as large as its box. With words it is an image that is read
/// aloud; without, it is hidden from machines that read aloud, for text beside it tells the same.
///
/// All text is escaped; nothing outside of the element is named.
///
/// # Example
/// ```
/// use baywalk_shapes::{palette::Palette, screw, svg::{Told, svg}};
/// let told = Told { title: "Held", description: "" };
/// let text = svg(&screw::held(), &Palette::PAPER, Some(told));
/// assert!(text.starts_with("<svg viewBox=\"0 0 48 48\"") && text.contains("<title>Held</title>"));
/// ```
#[must_use]
pub fn svg(drawing: &Drawing, palette: &Palette, told: Option<Told<'_>>) -> String {
    let mut text = String::from("<svg viewBox=\"0 0 ");
    put(&mut text, drawing.width);
    text.push(' ');
    put(&mut text, drawing.height);
    text.push_str("\" fill=\"none\"");
    match told {
        None => text.push_str(" aria-hidden=\"true\">"),
        Some(told) => {
            text.push_str(" role=\"img\">");
            element(&mut text, "title", told.title);
            if !told.description.is_empty() {
                element(&mut text, "desc", told.description);
            }
        }
    }
    for part in &drawing.parts {
        shape(&mut text, &part.shape, palette.colour(part.role));
    }
    text.push_str("</svg>");
    text
}

fn element(text: &mut String, name: &str, content: &str) {
    // Writing to a string can't fail.
    let _ = write!(text, "<{name}>{}</{name}>", escape(content));
}

fn shape(text: &mut String, shape: &Shape, colour: &str) {
    let colour = escape(colour);
    match shape {
        Shape::Fill { path } => {
            path::open(text, path);
            attribute(text, "fill", &colour);
        }
        Shape::Stroke { path, width, dash } => {
            path::open(text, path);
            attribute(text, "stroke", &colour);
            text.push_str(" stroke-width=\"");
            put(text, *width);
            text.push('"');
            if let Some(dash) = dash {
                text.push_str(" stroke-dasharray=\"");
                put(text, dash.on);
                text.push(' ');
                put(text, dash.off);
                text.push('"');
            }
        }
        Shape::Label(label) => return words(text, label, &colour),
    }
    text.push_str("/>");
}

fn words(text: &mut String, label: &Label, colour: &str) {
    text.push_str("<text x=\"");
    put(text, label.x);
    text.push_str("\" y=\"");
    put(text, label.y);
    text.push_str("\" font-size=\"");
    put(text, label.size.height());
    let _ = write!(text, "\" font-weight=\"{}\"", label.size.weight());
    match label.anchor {
        Anchor::Start => {}
        Anchor::Middle => attribute(text, "text-anchor", "middle"),
        Anchor::End => attribute(text, "text-anchor", "end"),
    }
    attribute(text, "fill", colour);
    let _ = write!(text, ">{}</text>", escape(&label.text));
}

fn attribute(text: &mut String, name: &str, value: &str) {
    let _ = write!(text, " {name}=\"{value}\"");
}

/// A measure with two places at most.
fn put(text: &mut String, measure: f64) {
    let measure = (measure * 100.0).round() / 100.0;
    // Adding nothing makes a negative nought a plain one.
    let _ = write!(text, "{}", measure + 0.0);
}
