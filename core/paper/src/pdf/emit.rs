//! Writing the pages as one tagged file (PDF 1.7, ISO 32000-1; PDF/UA-1, ISO 14289-1).

use super::faces::Faces;
use super::flow::{Bookmark, Flow};
use super::ink::{self, INK, fill, paint, stroke};
use super::line::{Line, Type};
use super::photos::image;
use super::stack::{Item, Thing};
use super::tree::Drawn;
use super::{Front, Unwritten};
use crate::photo::Photos;
use krilla::configure::{Accessibility, ConfigurationBuilder};
use krilla::destination::XyzDestination;
use krilla::geom::{PathBuilder, Point, Rect, Size, Transform};
use krilla::metadata::Metadata;
use krilla::outline::{Outline, OutlineNode};
use krilla::page::PageSettings;
use krilla::surface::Surface;
use krilla::tagging::{Artifact, ArtifactType, ContentTag, SpanTag};
use krilla::{Document, SerializeSettings};

/// Writes the pages. `numbered` words the number of a page and how many there are.
pub(super) fn emit(
    flow: &Flow,
    faces: &mut Faces,
    photos: &dyn Photos,
    front: &Front<'_>,
    numbered: &dyn Fn(usize, usize) -> String,
) -> Result<Vec<u8>, Unwritten> {
    let mut document = Document::new_with(settings()?);
    let mut drawn = Drawn::default();
    let (width, height) = flow.paper.size();
    let size = PageSettings::from_wh(width, height).ok_or_else(|| Unwritten("page size".into()))?;
    let count = flow.pages.len();
    for (place, items) in flow.pages.iter().enumerate() {
        let mut page = document.start_page_with(size.clone());
        let mut surface = page.surface();
        for item in items {
            draw(&mut surface, (faces, photos), item, &mut drawn);
        }
        let foot = [front.foot.to_owned(), numbered(place + 1, count)];
        foot_lines(&mut surface, faces, flow, &foot);
        surface.finish();
        page.finish();
    }
    document.set_outline(outline(&flow.marks));
    document.set_tag_tree(flow.tree.tagged(&drawn));
    document.set_metadata(metadata(front));
    document
        .finish()
        .map_err(|error| Unwritten(format!("{error:?}")))
}

fn settings() -> Result<SerializeSettings, Unwritten> {
    let configuration = ConfigurationBuilder::new()
        .with_accessibility_validator(Accessibility::UA1)
        .finish()
        .map_err(|error| Unwritten(format!("{error:?}")))?;
    Ok(SerializeSettings {
        configuration,
        enable_tagging: true,
        ..SerializeSettings::default()
    })
}

fn metadata(front: &Front<'_>) -> Metadata {
    Metadata::new()
        .title(front.title.to_owned())
        .language(front.language.to_owned())
        .creator(front.edition.to_owned())
        .document_id(front.identity.to_owned())
}

fn draw(
    surface: &mut Surface<'_>,
    (faces, photos): (&Faces, &dyn Photos),
    item: &Item,
    drawn: &mut Drawn,
) {
    let tag = match (&item.thing, item.node) {
        (_, None) => ContentTag::Artifact(Artifact::with_kind(ArtifactType::Layout)),
        (Thing::Line(line), _) => {
            ContentTag::Span(SpanTag::empty().with_actual_text(line.says.as_deref()))
        }
        _ => ContentTag::Other,
    };
    let piece = surface.start_tagged(tag);
    match &item.thing {
        Thing::Line(line) => text(surface, faces, line, item.x, item.y),
        Thing::Drawing(drawing, scale) => moved(surface, item, |surface| {
            paint(surface, drawing, *scale);
        }),
        Thing::Picture(digest, width, height) => moved(surface, item, |surface| {
            let size = Size::from_wh(*width, *height);
            if let Some((image, size)) = image(photos, digest).zip(size) {
                surface.draw_image(image, size);
            }
        }),
        Thing::Rule(length, thickness) => {
            rectangle(surface, (item.x, item.y), (*length, *thickness), None);
        }
        Thing::Frame(width, height, thickness) => {
            rectangle(
                surface,
                (item.x, item.y),
                (*width, *height),
                Some(*thickness),
            );
        }
    }
    surface.end_tagged();
    if let Some(node) = item.node {
        drawn.note(node, piece);
    }
}

fn moved(surface: &mut Surface<'_>, item: &Item, draw: impl FnOnce(&mut Surface<'_>)) {
    surface.push_transform(&Transform::from_translate(item.x, item.y));
    draw(surface);
    surface.pop();
}

/// A filled rectangle, or its edge where a thickness is told.
fn rectangle(surface: &mut Surface<'_>, at: (f32, f32), size: (f32, f32), edge: Option<f32>) {
    let mut path = PathBuilder::new();
    if let Some(rect) = Rect::from_xywh(at.0, at.1, size.0, size.1) {
        path.push_rect(rect);
    }
    if let Some(path) = path.finish() {
        surface.set_fill(edge.is_none().then(|| fill(INK)));
        surface.set_stroke(edge.map(|thickness| stroke(INK, thickness)));
        surface.draw_path(&path);
    }
}

fn text(surface: &mut Surface<'_>, faces: &Faces, line: &Line, x: f32, y: f32) {
    surface.set_stroke(None);
    surface.set_fill(Some(ink::fill(INK)));
    for (offset, glyphs) in &line.runs {
        surface.draw_glyphs(
            Point::from_xy(x + offset, y + line.baseline),
            glyphs,
            faces.font(line.set.bold),
            &line.text,
            line.set.size,
            false,
        );
    }
}

/// What stands at the foot of each page: what it is a page of, and its number at the right.
fn foot_lines(surface: &mut Surface<'_>, faces: &mut Faces, flow: &Flow, foot: &[String; 2]) {
    let (width, height) = flow.paper.size();
    let side = (width - flow.width()) / 2.0;
    let y = height - 32.0;
    let artifact = Artifact::with_kind(ArtifactType::Footer);
    surface.start_tagged(ContentTag::Artifact(artifact));
    let [told, number] = foot;
    for line in faces
        .set(told, Type::plain(7.5), flow.width() - 90.0)
        .into_iter()
        .take(1)
    {
        text(surface, faces, &line, side, y);
    }
    for line in faces
        .set(number, Type::plain(7.5), 90.0)
        .into_iter()
        .take(1)
    {
        text(surface, faces, &line, width - side - line.width, y);
    }
    surface.end_tagged();
}

/// Bookmarks: headings of the second rank under those of the first.
fn outline(marks: &[Bookmark]) -> Outline {
    let mut outline = Outline::new();
    let mut open: Option<OutlineNode> = None;
    for mark in marks {
        let place = XyzDestination::new(mark.page, Point::from_xy(0.0, mark.y));
        let node = OutlineNode::new(mark.text.clone(), place);
        match (&mut open, mark.level) {
            (Some(parent), 2..) => parent.push_child(node),
            _ => {
                if let Some(done) = open.replace(node) {
                    outline.push_child(done);
                }
            }
        }
    }
    if let Some(done) = open {
        outline.push_child(done);
    }
    outline
}
