//! Random acts, strikes, repeats, reopenings and crashes, against a plain model. The long run,
//! `BAYWALK_LONG=1`, takes 10,000 sequences of 50.

#![expect(
    clippy::unwrap_used,
    reason = "a test that can't go on stops with the reason"
)]

use baywalk_crash::model::Model;
use baywalk_crash::walker::Walker;
use baywalk_crash::work::{STORE, book, open};
use baywalk_domain::ids::ActId;
use baywalk_domain::rig::{Book, BookChange};
use baywalk_domain::units::Stated;
use baywalk_domain::walk::{Act, Ending, Scope};
use baywalk_logbook::Logbook;
use proptest::prelude::*;
use proptest_state_machine::{ReferenceStateMachine, StateMachineTest};
use tempfile::TempDir;
use uuid::Uuid;

/// One step of a sequence.
#[derive(Debug, Clone)]
enum Step {
    /// What is next in the walk; a walk is begun where none is open.
    Next,
    /// What is next, so many times.
    Stretch(u8),
    /// The newest act that stands is struck.
    Strike,
    /// An act that does not stand newest is struck: refused.
    StrikeOld,
    /// The odometer is noted.
    Miles(u16),
    /// The newest act comes again under its own name.
    Repeat,
    /// The walk is stopped for now.
    Pause,
    /// The walk is ended early.
    EndEarly,
    /// The logbook is closed and opened.
    Reopen,
    /// The files are taken as they stand, unclosed, to another place and opened there.
    Crash,
    /// The computed tables are computed anew.
    Rebuild,
}

struct Steps;

impl ReferenceStateMachine for Steps {
    type State = ();
    type Transition = Step;

    fn init_state() -> BoxedStrategy<()> {
        Just(()).boxed()
    }

    fn transitions((): &()) -> BoxedStrategy<Step> {
        prop_oneof![
            12 => Just(Step::Next),
            6 => (2..40_u8).prop_map(Step::Stretch),
            6 => Just(Step::Strike),
            1 => Just(Step::StrikeOld),
            2 => (0..3_u16).prop_map(Step::Miles),
            3 => Just(Step::Repeat),
            1 => Just(Step::Pause),
            1 => Just(Step::EndEarly),
            3 => Just(Step::Reopen),
            3 => Just(Step::Crash),
            1 => Just(Step::Rebuild),
        ]
        .boxed()
    }

    fn apply((): (), _: &Step) {}
}

struct Held {
    folder: TempDir,
    logbook: Option<Logbook>,
    walker: Walker,
    book: Book,
    model: Model,
    miles: u32,
    seen: usize,
}

impl Held {
    fn logbook(&self) -> &Logbook {
        self.logbook.as_ref().unwrap()
    }

    /// Does what is next, or begins a walk.
    fn next(&mut self) {
        let logbook = self.logbook.as_mut().unwrap();
        match logbook.open_walk(self.book.rig.id).unwrap() {
            Some(walk) => self.walker.obey(logbook, &self.book, &walk),
            None => self.walker.begin(logbook, Scope::Whole),
        }
    }

    /// Tells the model of all that was accepted since.
    fn learn(&mut self) {
        for (call, _) in self.walker.calls.iter().skip(self.seen) {
            self.model.take(call);
        }
        self.seen = self.walker.calls.len();
    }

    fn strike(&mut self, act: ActId) -> bool {
        let logbook = self.logbook.as_mut().unwrap();
        self.walker.attempt(logbook, Act::Strike { act }).is_ok()
    }

    /// The files as they stand, as after a process that was killed.
    fn crash(&mut self) {
        let elsewhere = tempfile::tempdir_in("/dev/shm").unwrap();
        let (from, to) = (self.folder.path().join(STORE), elsewhere.path().join(STORE));
        std::fs::create_dir_all(&to).unwrap();
        for entry in std::fs::read_dir(from).unwrap().flatten() {
            if entry.path().is_file() {
                std::fs::copy(entry.path(), to.join(entry.file_name())).unwrap();
            }
        }
        self.logbook = Some(open(&to).unwrap());
        self.folder = elsewhere;
    }
}

struct Sequence;

impl StateMachineTest for Sequence {
    type SystemUnderTest = Held;
    type Reference = Steps;

    fn init_test((): &()) -> Held {
        let folder = tempfile::tempdir_in("/dev/shm").unwrap();
        let mut logbook = open(&folder.path().join(STORE)).unwrap();
        let book = book("sample-trailer");
        let mut walker = Walker::new(book.rig.id, 11, "2027-03-20T09:00:00-07:00");
        walker.act(
            &mut logbook,
            Act::Book(BookChange::Whole(Box::new(book.clone()))),
        );
        let mut held = Held {
            folder,
            logbook: Some(logbook),
            walker,
            book,
            model: Model::default(),
            miles: 41_000,
            seen: 0,
        };
        held.learn();
        held
    }

    fn apply(mut held: Held, (): &(), step: Step) -> Held {
        let before = held.model.entries;
        match step {
            Step::Next => held.next(),
            Step::Stretch(many) => (0..many).for_each(|_| held.next()),
            Step::Strike => match held.model.newest() {
                Some(newest) if held.model.is_walking() => assert!(held.strike(newest)),
                _ => assert!(!held.strike(ActId::new(Uuid::from_u128(1)))),
            },
            Step::StrikeOld => assert!(!held.strike(ActId::new(Uuid::from_u128(2)))),
            Step::Miles(more) => {
                held.miles += u32::from(more);
                let text = format!("{} mi", held.miles);
                let logbook = held.logbook.as_mut().unwrap();
                held.walker
                    .act(logbook, Act::Odometer(Stated::parse_pair(&text).unwrap()));
            }
            Step::Repeat => {
                let (call, at) = held.walker.calls.last().unwrap().clone();
                let outcome = held.logbook.as_mut().unwrap().call(&call, &at).unwrap();
                assert!(outcome.repeated);
                assert_eq!(outcome.seq, before);
            }
            Step::Pause => {
                let logbook = held.logbook.as_mut().unwrap();
                let _refused_where_stopped = held.walker.attempt(logbook, Act::Pause);
            }
            Step::EndEarly => {
                let logbook = held.logbook.as_mut().unwrap();
                let end = Act::End(Ending::Early("rain".to_owned()));
                let _refused_where_none = held.walker.attempt(logbook, end);
            }
            Step::Reopen => {
                held.logbook = None;
                held.logbook = Some(open(&held.folder.path().join(STORE)).unwrap());
            }
            Step::Crash => held.crash(),
            Step::Rebuild => {
                let kept = held.logbook().fingerprint().unwrap();
                held.logbook.as_mut().unwrap().rebuild().unwrap();
                assert_eq!(held.logbook().fingerprint().unwrap(), kept);
            }
        }
        held.learn();
        held.model.same(held.logbook(), held.book.rig.id).unwrap();
        held
    }

    fn teardown(held: Held, (): ()) {
        assert_eq!(held.logbook().verify().unwrap().broken, None);
    }
}

#[test]
fn any_acts_and_crashes_leave_what_a_plain_model_knows() {
    let cases = match std::env::var_os("BAYWALK_LONG") {
        Some(_) => 10_000,
        None => 60,
    };
    let config = ProptestConfig {
        cases,
        failure_persistence: None,
        max_shrink_iters: 300,
        ..ProptestConfig::default()
    };
    proptest!(config, |((start, steps, seen) in Steps::sequential_strategy(50..51))| {
        Sequence::test_sequential(ProptestConfig::default(), start, steps, seen);
    });
}
