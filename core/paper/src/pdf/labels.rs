//! A sheet of labels to cut out: two columns, each label with its QR code at the right.

use super::cell::tagged;
use super::line::Type;
use super::setter::Setter;
use super::size::{Paper, points};
use super::stack::{Item, Stack, Thing};
use super::tree::{Kind, Node};
use super::{Front, Unwritten};
use crate::labels::Label;
use crate::photo::NoPhotos;
use baywalk_shapes::frame::{Frame, frame};
use baywalk_shapes::{Drawing, Path, Role};
use baywalk_words::Words;
use qrcodegen::{QrCode, QrCodeEcc};

/// Height of a label: 32 mm.
const HEIGHT: f32 = 90.7;
/// Free edge inside a label.
const INSET: f32 = 6.0;
/// Width of the QR code with its free edge of four modules (ISO/IEC 18004, 5.3.8): 26 mm.
const CODE: f32 = 74.0;
/// Points a unit of the frame around a torque.
const FRAMED: f32 = 0.5;

/// The bytes of a sheet of labels.
pub(crate) fn labels(
    (title, note): (&str, &str),
    labels: &[Label],
    paper: Paper,
    words: &Words,
    front: &Front<'_>,
) -> Result<Vec<u8>, Unwritten> {
    let mut setter = Setter::new(paper, &NoPhotos)?;
    setter.head(title, &[note.to_owned()]);
    setter.flow.gap(6.0);
    let list = setter.node(Kind::List);
    let width = setter.flow.width() / 2.0;
    for pair in labels.chunks(2) {
        let mut row = Stack::default();
        let mut x = 0.0;
        for label in pair {
            row.put(Item {
                x,
                y: 0.0,
                height: HEIGHT,
                thing: Thing::Frame(width, HEIGHT, 0.4),
                node: None,
            });
            row.stack(setter.one_label(label, width, list), x, 0.0);
            x += width;
        }
        setter.flow.whole_stack(row);
    }
    setter.flow.gap(6.0);
    setter.lacking(words);
    setter.emit(words, front)
}

impl Setter<'_> {
    fn one_label(&mut self, label: &Label, width: f32, list: Node) -> Stack {
        let item = self.under(list, Kind::Item);
        let said = self.under(item, Kind::Said);
        let room = width - CODE - INSET;
        let mut stack = Stack::default();
        stack.gap(INSET);
        stack.stack(self.label_head(label, room, said), INSET, INSET);
        let y = stack.height;
        if let Some((kind, figure)) = &label.figure {
            let boxed = self.label_figure(*kind, figure, room, said);
            stack.stack(boxed, INSET, y + 2.0);
            stack.gap(2.0);
        }
        let small = Type::plain(7.8);
        let lines: Vec<_> = label
            .lines
            .iter()
            .flat_map(|line| self.faces.set(line, small, room - INSET))
            .collect();
        for line in lines {
            if stack.height + line.height <= HEIGHT - 2.0 {
                stack.line(line, INSET, Some(said));
            }
        }
        if let Some(code) = code(&label.id) {
            let scale = CODE / points(code.width);
            let node = self.under(said, Kind::Figure(label.id.clone()));
            let drawn = self.drawing(&code, scale, None, Some(node));
            stack.stack(drawn, width - CODE, (HEIGHT - CODE) / 2.0);
        }
        stack
    }

    /// The tag, large, and the name beside it, in two lines at most.
    fn label_head(&mut self, label: &Label, room: f32, said: Node) -> Stack {
        let tag = tagged(&label.tag);
        let left = points(tag.width) + 6.0;
        let mut stack = self.drawing(&tag, 1.0, Some(said), None);
        let mut words = Stack::default();
        let lines = self.faces.set(&label.name, Type::strong(11.0), room - left);
        words.lines(lines.into_iter().take(2).collect(), left, said);
        stack.stack(words, 0.0, 2.0);
        stack
    }

    fn label_figure(&mut self, kind: Frame, text: &str, room: f32, said: Node) -> Stack {
        let side = 9.0;
        let lines = self.faces.set(text, Type::strong(10.5), room - side * 3.0);
        let wide = lines.iter().map(|line| line.width).fold(0.0, f32::max);
        let mut words = Stack::default();
        words.lines(lines, side * 1.5, said);
        let (wide, high) = (wide + side * 3.0, words.height + 11.0);
        let (units, tall) = (f64::from(wide / FRAMED), f64::from(high / FRAMED));
        let drawn = frame(kind, units, tall, 0.0);
        let mut stack = self.drawing(&drawn, FRAMED, None, None);
        stack.stack(words, 0.0, 7.0);
        stack
    }
}

/// The QR code of a text (ISO/IEC 18004), level M, with its free edge; none where it is too long.
fn code(text: &str) -> Option<Drawing> {
    let code = QrCode::encode_text(text, QrCodeEcc::Medium).ok()?;
    let edge = 4;
    let side = f64::from(code.size() + edge * 2);
    let mut drawing = Drawing::new(side, side);
    for y in 0..code.size() {
        for x in 0..code.size() {
            if code.get_module(x, y) {
                let (x, y) = (f64::from(x + edge), f64::from(y + edge));
                drawing.fill(Role::Ink, Path::rectangle(x, y, 1.0, 1.0));
            }
        }
    }
    Some(drawing)
}
