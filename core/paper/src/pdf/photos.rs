//! Photos, two beside each other, each with its words under it.

use super::cell::SMALL;
use super::line::Type;
use super::setter::Setter;
use super::size::points;
use super::stack::{Stack, Thing};
use super::tree::Kind;
use crate::photo::Photo;
use krilla::image::Image;

/// Room between two photos.
const BETWEEN: f32 = 12.0;
/// How high a photo may stand.
const HIGHEST: f32 = 210.0;

impl Setter {
    pub(super) fn photos(&mut self, photos: Vec<Photo>) {
        let width = (self.flow.width() - BETWEEN) / 2.0;
        self.flow.gap(4.0);
        let mut photos = photos.into_iter().peekable();
        while photos.peek().is_some() {
            let mut stack = Stack::default();
            let mut x = 0.0;
            for photo in photos.by_ref().take(2) {
                stack.stack(self.photo(photo, width), x, 0.0);
                x += width + BETWEEN;
            }
            stack.gap(6.0);
            self.flow.whole_stack(stack);
        }
    }

    fn photo(&mut self, photo: Photo, width: f32) -> Stack {
        let mut stack = Stack::default();
        let aloud = photo.aloud();
        let jpeg = photo.jpeg.map(|jpeg| jpeg.0);
        let image = jpeg.and_then(|bytes| Image::from_jpeg(bytes.into(), true).ok());
        if let Some(image) = image {
            let node = self.node(Kind::Figure(aloud));
            let (wide, high) = fitted(image.size(), width);
            stack.add(0.0, high, Thing::Picture(image, wide, high), Some(node));
            stack.gap(2.0);
        }
        let node = self.node(Kind::Paragraph);
        let strong = Type::strong(SMALL.size);
        stack.lines(self.faces.set(&photo.head, strong, width), 0.0, node);
        for line in &photo.lines {
            stack.lines(self.faces.set(line, Type::plain(7.5), width), 0.0, node);
        }
        stack
    }
}

/// Width and height of a picture in the room that it has, its shape kept.
fn fitted((wide, high): (u32, u32), width: f32) -> (f32, f32) {
    let (wide, high) = (
        points(f64::from(wide)).max(1.0),
        points(f64::from(high)).max(1.0),
    );
    let scale = (width / wide).min(HIGHEST / high);
    (wide * scale, high * scale)
}
