//! Forms of pictures beside the plain one: four inks, 16 bits, several pictures, interlaced.

use baywalk_logbook::photo::{PhotoFault, make};
use baywalk_tests::hostile::PHOTOS;

#[test]
fn four_inks_are_refused_in_words() {
    let inks = PHOTOS[PHOTOS.len() - 1].to_vec();
    assert!(matches!(make(inks, false), Err(PhotoFault::Unsupported(_))));
}

/// The same pixels with 16 bits and interlaced, and the first of several: each is the same master.
#[test]
fn the_same_pixels_in_any_form_of_png_are_the_same_photo() {
    let master = |photo: usize| make(PHOTOS[photo].to_vec(), false).unwrap().master;
    assert_eq!(master(7), master(8));
    assert_eq!(master(8), master(9));
}

/// ITU-T T.81 has forms that cameras don't write: lossless, arithmetic coding, differential frames.
#[test]
fn forms_that_cameras_do_not_write_are_refused_in_words() {
    let photo = PHOTOS[0];
    let frame = photo
        .windows(2)
        .position(|two| two == [0xFF, 0xC0])
        .unwrap();
    for form in [0xC3, 0xC5, 0xC6, 0xC7, 0xC9, 0xCA, 0xCB, 0xCD, 0xCE, 0xCF] {
        let mut other = photo.to_vec();
        other[frame + 1] = form;
        let refused = make(other, false);
        assert!(
            matches!(
                refused,
                Err(PhotoFault::Unsupported(_) | PhotoFault::Damaged(_))
            ),
            "{form:x}: {refused:?}"
        );
    }
    let mut deep = photo.to_vec();
    deep[frame + 4] = 12;
    assert!(make(deep, false).is_err());
}
