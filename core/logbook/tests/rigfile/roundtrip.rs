//! What is written reads back as the same book, for any book that holds together.

use crate::books::book;
use crate::tried::texts;
use baywalk_logbook::rigfile::write;
use proptest::prelude::*;

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, cases: 400, ..Default::default() })]

    #[test]
    fn a_book_comes_back_the_same(book in book()) {
        prop_assert_eq!(book.check_whole(), Ok(()));
        let files = write(&book);
        match texts(&files.toml, &files.csv) {
            Ok(again) => {
                prop_assert_eq!(&again, &book);
                prop_assert_eq!(write(&again), files);
            }
            Err(faults) => prop_assert!(false, "{faults:?}\n{}\n{}", files.toml, files.csv),
        }
    }
}
