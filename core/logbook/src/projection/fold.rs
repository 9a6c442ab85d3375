//! What is so with one rig: its book and its open walk, entry by entry.

use crate::ledger::Numbered;
use baywalk_domain::rig::{Book, BookChange};
use baywalk_domain::walk::{Act, Entry, Phase, WalkState};
use std::sync::Arc;

/// A rig as its entries tell it. Book and walk are shared with the screens that look at them, and
/// copied only where they change meanwhile.
#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct RigFold {
    /// Its book, once it has one.
    pub(crate) book: Option<Arc<Book>>,
    /// Its open walk.
    pub(crate) walk: Option<OpenWalk>,
}

/// A walk that is open, with all it needs to be folded anew.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct OpenWalk {
    /// The number of the entry that started it.
    pub(crate) begun: u64,
    /// What is so in it.
    pub(crate) state: Arc<WalkState>,
    /// The book as it stood when it was started.
    first_book: Arc<Book>,
    /// Its entries and, at the same places, their numbers.
    entries: Vec<Entry>,
    numbers: Vec<u64>,
}

impl OpenWalk {
    /// Folds a walk from its entries, with the book it was started by; gives the book it left.
    pub(crate) fn fold(first_book: Arc<Book>, walk: Vec<Numbered>) -> Option<(Self, Arc<Book>)> {
        let (numbers, entries): (Vec<u64>, Vec<Entry>) = walk
            .into_iter()
            .map(|numbered| (numbered.seq, numbered.entry))
            .unzip();
        let (state, book) = WalkState::fold_with_book(&entries, Book::clone(&first_book))?;
        let walk = Self {
            begun: *numbers.first()?,
            state: Arc::new(state),
            first_book,
            entries,
            numbers,
        };
        Some((walk, Arc::new(book)))
    }

    fn find(&self, act: baywalk_domain::ids::ActId) -> Option<Numbered> {
        let mut both = self.numbers.iter().zip(&self.entries);
        let (seq, entry) = both.find(|(_, entry)| entry.id == act)?;
        Some(Numbered {
            seq: *seq,
            entry: entry.clone(),
        })
    }

    fn push(&mut self, numbered: &Numbered) {
        self.entries.push(numbered.entry.clone());
        self.numbers.push(numbered.seq);
    }
}

impl RigFold {
    /// Takes the next entry of the rig; gives the entry that it strikes, where it strikes one.
    pub(crate) fn take(&mut self, numbered: &Numbered) -> Option<Numbered> {
        match &numbered.entry.act {
            Act::Start { .. } => self.start(numbered),
            Act::Strike { act } => return self.strike(numbered, *act),
            Act::Book(change) => {
                self.put(change);
                self.go_on(numbered);
            }
            _ => self.go_on(numbered),
        }
        None
    }

    /// The walk that is open and has not ended.
    pub(crate) fn open_walk(&self) -> Option<&OpenWalk> {
        let open = |walk: &&OpenWalk| walk.state.phase != Phase::Ended;
        self.walk.as_ref().filter(open)
    }

    /// Lets a walk go that has ended; until then it can still be read here.
    pub(crate) fn let_go(&mut self) {
        self.walk.take_if(|walk| walk.state.phase == Phase::Ended);
    }

    fn start(&mut self, numbered: &Numbered) {
        let folded = self
            .book
            .clone()
            .and_then(|book| OpenWalk::fold(book, vec![numbered.clone()]));
        self.walk = folded.map(|(walk, _)| walk);
    }

    fn go_on(&mut self, numbered: &Numbered) {
        let walk = self.walk.as_mut().filter(|_| numbered.entry.walk.is_some());
        if let (Some(walk), Some(book)) = (walk, &self.book) {
            walk.push(numbered);
            Arc::make_mut(&mut walk.state).apply(&numbered.entry, book);
        }
    }

    /// Leaves the struck entry out and folds the walk anew.
    fn strike(&mut self, numbered: &Numbered, act: baywalk_domain::ids::ActId) -> Option<Numbered> {
        let walk = self.walk.as_mut()?;
        walk.push(numbered);
        let folded = WalkState::fold_with_book(&walk.entries, Book::clone(&walk.first_book));
        if let Some((state, book)) = folded {
            walk.state = Arc::new(state);
            self.book = Some(Arc::new(book));
        }
        walk.find(act)
    }

    fn put(&mut self, change: &BookChange) {
        match (&mut self.book, change) {
            (Some(book), change) => Arc::make_mut(book).apply(change),
            (book, BookChange::Whole(whole)) => *book = Some(Arc::new((**whole).clone())),
            (None, _) => {}
        }
    }
}
