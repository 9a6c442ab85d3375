//! What stands on the pages, by meaning and in reading order, for those who hear or reflow it.

use krilla::tagging::{Identifier, ListNumbering, TableHeaderScope, Tag, TagGroup, TagKind};
use std::num::NonZeroU16;

/// A node of the tree.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Node(usize);

/// What a node is.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Kind {
    Section,
    Heading(NonZeroU16, String),
    Paragraph,
    List,
    Item,
    Term,
    Said,
    Table,
    TableHead,
    TableBody,
    Row,
    ColumnHead,
    RowHead,
    Cell,
    Caption,
    Figure(String),
}

/// The tree, as it grows.
#[derive(Default)]
pub(super) struct Tree {
    kinds: Vec<Kind>,
    children: Vec<Vec<Node>>,
    roots: Vec<Node>,
}

impl Tree {
    /// Adds a node to the end of another, or at the top.
    pub(super) fn add(&mut self, parent: Option<Node>, kind: Kind) -> Node {
        let node = Node(self.kinds.len());
        self.kinds.push(kind);
        self.children.push(Vec::new());
        match parent.and_then(|Node(parent)| self.children.get_mut(parent)) {
            Some(children) => children.push(node),
            None => self.roots.push(node),
        }
        node
    }

    /// The tree with what was drawn for its nodes.
    pub(super) fn tagged(&self, drawn: &Drawn) -> krilla::tagging::TagTree {
        let mut tree = krilla::tagging::TagTree::new();
        for root in &self.roots {
            tree.push(self.group(*root, drawn));
        }
        tree
    }

    fn group(&self, node: Node, drawn: &Drawn) -> TagGroup {
        let Node(place) = node;
        let mut group = TagGroup::new(self.kinds.get(place).map_or(Tag::P.into(), tag));
        for leaf in drawn.0.get(place).into_iter().flatten() {
            group.push(*leaf);
        }
        for child in self.children.get(place).into_iter().flatten() {
            group.push(self.group(*child, drawn));
        }
        group
    }
}

/// What was drawn for each node, in order.
#[derive(Default)]
pub(super) struct Drawn(Vec<Vec<Identifier>>);

impl Drawn {
    /// Notes a piece of a node.
    pub(super) fn note(&mut self, Node(place): Node, piece: Identifier) {
        if self.0.len() <= place {
            self.0.resize_with(place + 1, Vec::new);
        }
        if let Some(pieces) = self.0.get_mut(place) {
            pieces.push(piece);
        }
    }
}

fn tag(kind: &Kind) -> TagKind {
    match kind {
        Kind::Section => Tag::Section.into(),
        Kind::Heading(level, text) => Tag::Hn(*level, Some(text.clone())).into(),
        Kind::Paragraph => Tag::P.into(),
        Kind::List => Tag::L(ListNumbering::None).into(),
        Kind::Item => Tag::LI.into(),
        Kind::Term => Tag::Lbl.into(),
        Kind::Said => Tag::LBody.into(),
        Kind::Table => Tag::Table.into(),
        Kind::TableHead => Tag::THead.into(),
        Kind::TableBody => Tag::TBody.into(),
        Kind::Row => Tag::TR.into(),
        Kind::ColumnHead => Tag::TH(TableHeaderScope::Column).into(),
        Kind::RowHead => Tag::TH(TableHeaderScope::Row).into(),
        Kind::Cell => Tag::TD.into(),
        Kind::Caption => Tag::Caption.into(),
        Kind::Figure(told) => Tag::Figure(Some(told.clone())).into(),
    }
}
