//! The type: one face in two weights, embedded, so that a page looks the same anywhere.

use krilla::text::{Font, GlyphId};
use parley::fontique::{Blob, Collection, CollectionOptions, FontInfoOverride, SourceCache};
use parley::{FontContext, FontWeight, FontWidth, LayoutContext};
use skrifa::charmap::Charmap;
use skrifa::{FontRef, MetadataProvider as _};
use std::collections::BTreeMap;
use std::sync::Arc;

const REGULAR: &[u8] = include_bytes!("../../fonts/DejaVuSansCondensed.ttf");
const BOLD: &[u8] = include_bytes!("../../fonts/DejaVuSansCondensed-Bold.ttf");

/// The name under which both weights are found.
pub(super) const FAMILY: &str = "page";

/// What stands in place of a letter that the type lacks.
pub(super) const BOX: char = '\u{25a1}';

/// The type, and what it takes to set it.
pub(super) struct Faces {
    regular: Face,
    bold: Face,
    pub(super) context: FontContext,
    pub(super) layout: LayoutContext<()>,
    /// The letters that were asked for and are not in the type, with how often.
    pub(super) lacking: BTreeMap<char, usize>,
}

struct Face {
    font: Font,
    letters: Charmap<'static>,
}

impl Face {
    fn read(bytes: &'static [u8]) -> Option<Self> {
        Some(Self {
            font: Font::new(bytes.into(), 0)?,
            letters: FontRef::new(bytes).ok()?.charmap(),
        })
    }
}

impl Faces {
    /// Reads the type; none where the program was built with files that are no type.
    pub(super) fn read() -> Option<Self> {
        let options = CollectionOptions {
            shared: false,
            system_fonts: false,
        };
        let mut collection = Collection::new(options);
        for (bytes, weight) in [(REGULAR, FontWeight::NORMAL), (BOLD, FontWeight::BOLD)] {
            let known = FontInfoOverride {
                family_name: Some(FAMILY),
                width: Some(FontWidth::NORMAL),
                weight: Some(weight),
                ..FontInfoOverride::default()
            };
            collection.register_fonts(Blob::new(Arc::new(bytes)), Some(known));
        }
        Some(Self {
            regular: Face::read(REGULAR)?,
            bold: Face::read(BOLD)?,
            context: FontContext {
                collection,
                source_cache: SourceCache::default(),
            },
            layout: LayoutContext::new(),
            lacking: BTreeMap::new(),
        })
    }

    /// The font of a weight.
    pub(super) fn font(&self, bold: bool) -> Font {
        self.face(bold).font.clone()
    }

    /// Whether a weight has a letter.
    pub(super) fn has(&self, letter: char, bold: bool) -> bool {
        self.face(bold).letters.map(letter).is_some()
    }

    /// The glyph that stands in place of one that is lacking.
    pub(super) fn placeholder(&self, bold: bool) -> GlyphId {
        let glyph = self.face(bold).letters.map(BOX);
        GlyphId::new(glyph.map_or(0, |glyph| glyph.to_u32()))
    }

    const fn face(&self, bold: bool) -> &Face {
        if bold { &self.bold } else { &self.regular }
    }
}
