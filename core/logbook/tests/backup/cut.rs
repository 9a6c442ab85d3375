//! A swap that was cut off at any of its renames leaves the old logbook or the new one.

use crate::script::open;
use crate::store::{Place, copy};
use std::path::PathBuf;

/// What stands beside one another when the power goes: the store, the one that is coming, the one
/// that is ready, the one that was.
fn cut(folder: Option<&str>, coming: Option<&str>, ready: Option<&str>) -> (Place, String) {
    let place = Place::new();
    let old = place.store("old", false);
    let (before, _) = (old.digest(), place.backup(&old, "old.zip", None));
    drop(old);
    let new = place.restore("old.zip", "new", false).logbook;
    assert_eq!(new.digest().seq, before.seq + 1);
    drop(new);
    let put = |from: Option<&str>, to: &str| {
        if let Some(from) = from {
            copy(&place.at(from), &place.at(to));
        }
    };
    put(folder, "store");
    put(coming, "store.coming");
    put(ready, "store.ready");
    let seq = open(&place.at("store")).digest().seq;
    let which = if seq == before.seq {
        "old"
    } else if seq == before.seq + 1 {
        "new"
    } else {
        "none"
    };
    (place, which.to_owned())
}

#[test]
fn every_cut_leaves_one_of_the_two_and_never_none() {
    assert_eq!(
        cut(Some("old"), Some("new"), None).1,
        "old",
        "while it is made"
    );
    assert_eq!(
        cut(Some("old"), None, Some("new")).1,
        "old",
        "when it is ready"
    );
    let (place, which) = cut(None, None, Some("new"));
    assert_eq!(which, "new", "between the two renames");
    assert!(!place.names().contains(&"store.ready".to_owned()));
    assert_eq!(cut(Some("new"), None, None).1, "new", "when it is done");
}

#[test]
fn what_a_cut_left_is_cleared_by_the_next_restore() {
    let (place, _) = cut(Some("old"), Some("new"), Some("new"));
    drop(place.restore("old.zip", "store", true));
    let left: Vec<String> = place
        .names()
        .into_iter()
        .filter(|name| name.starts_with("store."))
        .collect();
    assert_eq!(left.len(), 1, "{left:?}");
    assert!(left[0].starts_with("store.before-"));
    let kept: PathBuf = place.at(&left[0]);
    assert!(open(&kept).verify().unwrap().broken.is_none());
}
