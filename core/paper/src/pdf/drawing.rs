//! A drawing with its labels as a stack.

use super::line::Type;
use super::setter::Setter;
use super::size::points;
use super::stack::{Item, Stack, Thing};
use super::tree::Node;
use baywalk_shapes::{Anchor, Drawing, Label, Shape};

impl Setter<'_> {
    /// A drawing, so many points a unit: its lines belong to `lines`, its labels to `labels`; what
    /// belongs to nothing is ornament.
    pub(super) fn drawing(
        &mut self,
        drawing: &Drawing,
        scale: f32,
        labels: Option<Node>,
        lines: Option<Node>,
    ) -> Stack {
        let mut stack = Stack::default();
        let height = points(drawing.height) * scale;
        stack.add(0.0, height, Thing::Drawing(drawing.clone(), scale), lines);
        for part in &drawing.parts {
            if let Shape::Label(label) = &part.shape {
                stack.items.extend(self.label(label, scale, labels));
            }
        }
        stack
    }

    /// A label at its place; it never makes the drawing higher.
    fn label(&mut self, label: &Label, scale: f32, node: Option<Node>) -> Option<Item> {
        let set = Type {
            size: points(label.size.height()) * scale,
            bold: label.size.weight() >= 600,
        };
        let line = self
            .faces
            .set(&label.text, set, f32::MAX)
            .into_iter()
            .next()?;
        let before = match label.anchor {
            Anchor::Start => 0.0,
            Anchor::Middle => line.width / 2.0,
            Anchor::End => line.width,
        };
        Some(Item {
            x: points(label.x) * scale - before,
            y: points(label.y) * scale - line.baseline,
            height: 0.0,
            thing: Thing::Line(line),
            node,
        })
    }
}
