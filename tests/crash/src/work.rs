//! What is recorded while the calls are watched: a new store, a walk with photos, an end.

use crate::system::{Op, mark, unwatch, watch};
use crate::walker::Walker;
use baywalk_domain::ids::{ActId, RigId};
use baywalk_domain::moment::Moment;
use baywalk_domain::rig::{Book, BookChange};
use baywalk_domain::units::Stated;
use baywalk_domain::walk::{Act, Call, Scope};
use baywalk_logbook::ledger::Digest;
use baywalk_logbook::store::StoreFault;
use baywalk_logbook::{Logbook, SystemClock, rigfile};
use std::collections::BTreeMap;
use std::path::Path;
use uuid::Uuid;

/// The name of the store in the watched folder.
pub const STORE: &str = "store";

/// A piece of work: acts, each perhaps with a photo that is taken in just before it.
#[derive(Debug, Clone)]
pub struct Work {
    /// The acts, with the bytes of a photo where one belongs to it.
    pub acts: Vec<(Call, Moment, Option<Vec<u8>>)>,
    /// After how many acts the logbook is closed and opened anew.
    pub reopens_after: usize,
}

/// What stands after so many acts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Stands {
    /// The digest of the newest entry.
    pub head: Digest,
    /// The digest over all computed tables.
    pub tables: Digest,
}

/// Work that was done while it was watched.
#[derive(Debug)]
pub struct Done {
    /// Every change of the files, in order.
    pub ops: Vec<Op>,
    /// What stands after 0, 1, 2, … acts.
    pub stands: Vec<Stands>,
    /// After how many acts each photo is entered.
    pub photos: Vec<(usize, Digest)>,
}

/// The layout of a code as a book, the same each time.
#[must_use]
pub fn book(layout: &str) -> Book {
    let layout = rigfile::layouts().iter().find(|each| each.code == layout);
    let act = ActId::new(Uuid::from_u128(1));
    layout
        .unwrap()
        .book(act)
        .unwrap_or_else(|faults| panic!("{faults:?}"))
}

/// Opens the logbook in a folder with the clocks of this machine, which no act here looks at.
///
/// # Errors
/// As [`Logbook::open`].
pub fn open(folder: &Path) -> Result<Logbook, StoreFault> {
    Logbook::open(folder, Box::new(SystemClock::new()))
}

impl Work {
    /// A rig of a layout is noted and walked, so often, with photos.
    #[must_use]
    pub fn walks(layout: &str, walks: u64, photos: usize) -> Self {
        let folder = tempfile::tempdir().unwrap();
        let mut logbook = open(folder.path()).unwrap();
        let book = book(layout);
        let mut walker = Walker::new(book.rig.id, 7, "2027-03-20T09:00:00-07:00");
        walker.act(&mut logbook, Act::Book(BookChange::Whole(Box::new(book))));
        let miles = Stated::parse_pair("41230 mi").unwrap();
        walker.act(&mut logbook, Act::Odometer(miles));
        let (camera, mut taken) = (Camera::new(), BTreeMap::new());
        for walk in 0..walks {
            for number in 0..photos {
                let bytes = picture(walk, number);
                let digest = camera.hand_over(&mut logbook, &bytes).unwrap().to_string();
                walker.photos.push(digest.clone());
                taken.insert(digest, bytes);
            }
            walker.walk(&mut logbook, Scope::Whole);
            walker.wait(360);
        }
        let photo = |act: &Act| match act {
            Act::Photo { digest, .. } => taken.get(digest).cloned(),
            _ => None,
        };
        let calls = std::mem::take(&mut walker.calls).into_iter();
        Self {
            acts: calls
                .map(|(call, at)| {
                    let photo = photo(&call.act);
                    (call, at, photo)
                })
                .collect(),
            reopens_after: 61,
        }
    }

    /// The first acts of a walk, a photo taken in before the fourth of them.
    #[must_use]
    pub fn opening(acts: usize) -> Self {
        let mut work = Self::walks("sample-trailer", 1, 0);
        work.acts.truncate(acts);
        work.acts[3].2 = Some(picture(0, 0));
        work
    }

    /// The rig.
    #[must_use]
    pub fn rig(&self) -> RigId {
        self.acts[0].0.rig
    }

    /// Does it in a folder while all calls are watched.
    #[must_use]
    pub fn record(&self, root: &Path) -> Done {
        let (store, camera) = (root.join(STORE), Camera::new());
        watch(root, true, None);
        let mut logbook = open(&store).unwrap();
        mark(0);
        let mut done = Done {
            ops: Vec::new(),
            stands: vec![stands(&logbook)],
            photos: Vec::new(),
        };
        for (number, act) in self.acts.iter().enumerate() {
            if number > 0 && number % self.reopens_after == 0 {
                drop(logbook);
                logbook = open(&store).unwrap();
            }
            let (call, at, photo) = act;
            if let Some(bytes) = photo {
                let digest = camera.hand_over(&mut logbook, bytes).unwrap();
                done.photos.push((number + 1, digest));
            }
            logbook.call(call, at).unwrap();
            mark(number + 1);
            done.stands.push(stands(&logbook));
        }
        drop(logbook);
        done.ops = unwatch().ops;
        done
    }
}

/// What stands in a logbook.
#[must_use]
pub fn stands(logbook: &Logbook) -> Stands {
    Stands {
        head: logbook.digest().digest,
        tables: logbook.fingerprint().unwrap(),
    }
}

/// A folder outside the watched one, where photos come from.
#[derive(Debug)]
pub struct Camera(tempfile::TempDir);

impl Camera {
    /// An empty one.
    #[must_use]
    pub fn new() -> Self {
        Self(tempfile::tempdir().unwrap())
    }

    /// Hands a photo over.
    ///
    /// # Errors
    /// As [`Logbook::add_photo`].
    pub fn hand_over(&self, logbook: &mut Logbook, bytes: &[u8]) -> Result<Digest, StoreFault> {
        let path = self.0.path().join("photo.jpg");
        std::fs::write(&path, bytes).unwrap();
        logbook.add_photo(&path)
    }
}

impl Default for Camera {
    fn default() -> Self {
        Self::new()
    }
}

/// A small photo of noise.
fn picture(walk: u64, number: usize) -> Vec<u8> {
    let mut rng = fastrand::Rng::with_seed(walk * 1000 + u64::try_from(number).unwrap());
    let pixels: Vec<u8> = std::iter::repeat_with(|| rng.u8(..))
        .take(96 * 64 * 3)
        .collect();
    let mut bytes = Vec::new();
    let encoder = jpeg_encoder::Encoder::new(&mut bytes, 75);
    encoder
        .encode(&pixels, 96, 64, jpeg_encoder::ColorType::Rgb)
        .unwrap();
    bytes
}
