//! Setting text into lines of a width.

use super::faces::{BOX, FAMILY, Faces};
use crate::plain::shown;
use krilla::text::{GlyphId, KrillaGlyph};
use parley::style::{FontFamily, FontFamilyName, LineHeight, StyleProperty};
use parley::{FontWeight, Layout, OverflowWrap};
use std::borrow::Cow;
use std::ops::Range;
use std::sync::Arc;

/// How text is set.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Type {
    /// Height of the type in points.
    pub(super) size: f32,
    /// Whether it is strong.
    pub(super) bold: bool,
}

/// One line of text, set.
#[derive(Clone)]
pub(super) struct Line {
    /// The whole text that the line is part of; glyphs name their range in it.
    pub(super) text: Arc<str>,
    /// What the line says, where that is more than the type can set.
    pub(super) says: Option<String>,
    pub(super) set: Type,
    /// Glyphs from left to right, each stretch with its distance from the left.
    pub(super) runs: Vec<(f32, Vec<KrillaGlyph>)>,
    /// From the upper edge of the line to its baseline.
    pub(super) baseline: f32,
    pub(super) width: f32,
    pub(super) height: f32,
}

/// Distance of baselines as a share of the size.
const LEADING: f32 = 1.25;

impl Type {
    /// Plain text of a size.
    pub(super) const fn plain(size: f32) -> Self {
        Self { size, bold: false }
    }

    /// Strong text of a size.
    pub(super) const fn strong(size: f32) -> Self {
        Self { size, bold: true }
    }
}

impl Faces {
    /// Sets a text into lines that are no wider than told; a word that is wider is broken. What
    /// the type lacks is set as a box, and the line still says what it stands for.
    pub(super) fn set(&mut self, text: &str, set: Type, width: f32) -> Vec<Line> {
        let paragraphs = text
            .split('\n')
            .map(|text| self.paragraph(text, set, width));
        let lines: Vec<Vec<Line>> = paragraphs.collect();
        lines.into_iter().flatten().collect()
    }

    fn paragraph(&mut self, text: &str, set: Type, width: f32) -> Vec<Line> {
        let text: String = text
            .chars()
            .map(|letter| if letter == '\t' { ' ' } else { shown(letter) })
            .collect();
        let put = self.put(&text, set.bold);
        let layout = self.lay(&put.text, set, width);
        let shown: Arc<str> = put.text.as_str().into();
        let lines = layout.lines();
        lines
            .map(|line| Line {
                says: put.lacks.then(|| put.origin(&text, &line.text_range())),
                ..self.line(&line, &shown, set)
            })
            .collect()
    }

    fn lay(&mut self, text: &str, set: Type, width: f32) -> Layout<()> {
        let mut builder = self
            .layout
            .ranged_builder(&mut self.context, text, 1.0, false);
        let family = FontFamilyName::Named(Cow::Borrowed(FAMILY));
        let weight = if set.bold {
            FontWeight::BOLD
        } else {
            FontWeight::NORMAL
        };
        builder.push_default(StyleProperty::FontFamily(FontFamily::Single(family)));
        builder.push_default(StyleProperty::FontSize(set.size));
        builder.push_default(StyleProperty::FontWeight(weight));
        builder.push_default(StyleProperty::LineHeight(LineHeight::FontSizeRelative(
            LEADING,
        )));
        builder.push_default(StyleProperty::OverflowWrap(OverflowWrap::Anywhere));
        let mut layout = builder.build(text);
        layout.break_all_lines(Some(width));
        layout
    }

    fn line(&self, line: &parley::layout::Line<'_, ()>, text: &Arc<str>, set: Type) -> Line {
        let placeholder = self.placeholder(set.bold);
        let mut x = 0.0;
        let mut runs = Vec::new();
        for run in line.runs() {
            let (start, mut glyphs) = (x, Vec::new());
            for cluster in run.visual_clusters() {
                let range = cluster.text_range();
                if cluster.is_ligature_continuation() {
                    widen(glyphs.last_mut(), &range);
                    continue;
                }
                for glyph in cluster.glyphs() {
                    let id = match glyph.id {
                        0 => placeholder,
                        id => GlyphId::new(id),
                    };
                    glyphs.push(drawn(id, &glyph, set.size, range.clone()));
                    x += glyph.advance;
                }
            }
            runs.push((start, glyphs));
        }
        let height = set.size * LEADING;
        Line {
            text: Arc::clone(text),
            says: None,
            set,
            runs,
            baseline: line.metrics().baseline - line.metrics().block_min_coord,
            width: x,
            height,
        }
    }

    /// The text as the type can set it.
    fn put(&mut self, text: &str, bold: bool) -> Put {
        let mut put = Put {
            text: String::with_capacity(text.len()),
            from: Vec::with_capacity(text.len() + 1),
            lacks: false,
        };
        for (place, letter) in text.char_indices() {
            let set = if self.has(letter, bold) || is_unseen(letter) {
                letter
            } else {
                *self.lacking.entry(letter).or_insert(0) += 1;
                put.lacks = true;
                BOX
            };
            put.text.push(set);
            put.from.resize(put.text.len(), place);
        }
        put.from.push(text.len());
        put
    }
}

/// A text that can be set, and where each of its bytes comes from.
struct Put {
    text: String,
    from: Vec<usize>,
    /// Whether some of its letters stand for others.
    lacks: bool,
}

impl Put {
    /// A range of the text as it was given.
    fn origin(&self, given: &str, range: &Range<usize>) -> String {
        let place = |at: usize| self.from.get(at).copied().unwrap_or(given.len());
        let told = given.get(place(range.start)..place(range.end));
        told.unwrap_or_default().to_owned()
    }
}

fn widen(glyph: Option<&mut KrillaGlyph>, range: &Range<usize>) {
    if let Some(glyph) = glyph {
        glyph.text_range.start = glyph.text_range.start.min(range.start);
        glyph.text_range.end = glyph.text_range.end.max(range.end);
    }
}

fn drawn(id: GlyphId, glyph: &parley::Glyph, size: f32, range: Range<usize>) -> KrillaGlyph {
    KrillaGlyph::new(
        id,
        glyph.advance / size,
        glyph.x / size,
        glyph.y / size,
        0.0,
        range,
        None,
    )
}

/// Whether a letter is one that nobody sees: joiners, marks of direction, selectors of variants.
const fn is_unseen(letter: char) -> bool {
    matches!(
        letter,
        '\u{ad}' | '\u{200b}'..='\u{200f}' | '\u{2060}'..='\u{2064}' | '\u{fe00}'..='\u{fe0f}'
    )
}
