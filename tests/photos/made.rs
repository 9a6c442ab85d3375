//! What is kept of a photo, whichever it was.

use crate::read;
use baywalk_logbook::photo::{MASTER_EDGE, THUMBNAIL_EDGE, make, thumbnail};

#[test]
fn a_thumbnail_made_again_is_the_same() {
    for photo in read() {
        let made = make(photo.to_vec(), false).unwrap();
        assert_eq!(thumbnail(made.master.clone()), Ok(made.thumbnail));
    }
}

/// A master is a photo too: small enough to be kept as it is, and without notes beside the time.
#[test]
fn what_is_kept_is_taken_in_again() {
    for photo in read() {
        let made = make(photo.to_vec(), true).unwrap();
        let (original, _) = made.original.unwrap();
        for kept in [made.master, made.thumbnail, original] {
            let again = make(kept, false).unwrap();
            assert!(again.master.len() > again.thumbnail.len() / 2);
        }
    }
    const { assert!(MASTER_EDGE > THUMBNAIL_EDGE) };
}
