//! Photos, two beside each other, each with its words under it.

use super::cell::SMALL;
use super::line::Type;
use super::setter::Setter;
use super::size::points;
use super::stack::{Stack, Thing};
use super::tree::Kind;
use crate::photo::{Photo, Photos};
use krilla::image::Image;

/// Room between two photos.
const BETWEEN: f32 = 12.0;
/// How high a photo may stand.
const HIGHEST: f32 = 210.0;

impl Setter<'_> {
    pub(super) fn photos(&mut self, photos: &[Photo]) {
        let width = (self.flow.width() - BETWEEN) / 2.0;
        self.flow.gap(4.0);
        for pair in photos.chunks(2) {
            let mut stack = Stack::default();
            let mut x = 0.0;
            for photo in pair {
                stack.stack(self.photo(photo, width), x, 0.0);
                x += width + BETWEEN;
            }
            stack.gap(6.0);
            self.flow.whole_stack(stack);
        }
    }

    fn photo(&mut self, photo: &Photo, width: f32) -> Stack {
        let mut stack = Stack::default();
        if let Some(image) = image(self.photos, &photo.digest) {
            let node = self.node(Kind::Figure(photo.aloud()));
            let (wide, high) = fitted(image.size(), width);
            let picture = Thing::Picture(photo.digest.clone(), wide, high);
            stack.add(0.0, high, picture, Some(node));
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

/// A picture by its digest, where it is there and can be read.
pub(super) fn image(photos: &dyn Photos, digest: &str) -> Option<Image> {
    Image::from_jpeg(photos.jpeg(digest)?.into(), true).ok()
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
