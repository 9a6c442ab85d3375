//! The report as PDF: that any text can be set, that photos stay what they are, that it can be made
//! again. What other programs read of it is checked in `tests/python/test_paper.py`.

use crate::hostile::{long, nasty, odd};
use crate::scene::{OnePhoto, Scene, html, html_with, words};
use baywalk_domain::finding::FindingKind;
use baywalk_paper::Paper;
use baywalk_paper::photo::NoPhotos;

fn keep(name: &str, bytes: &[u8]) {
    let folder = std::path::Path::new(env!("CARGO_TARGET_TMPDIR"));
    std::fs::write(folder.join(format!("report-{name}.pdf")), bytes).unwrap();
}

#[test]
fn any_text_can_be_set_on_any_paper() {
    // The writer holds each file against PDF/UA-1 (ISO 14289-1) and refuses one that breaks it.
    for (pen, name) in [
        (str::to_owned as fn(&str) -> String, "plain"),
        (long, "long"),
        (odd, "odd"),
        (nasty, "nasty"),
    ] {
        let papers = if name == "long" { 1 } else { 2 };
        for paper in Paper::ALL.into_iter().take(papers) {
            let scene = Scene::new(pen);
            let bytes = scene
                .sheet("es")
                .pdf(paper, &words("es"), &NoPhotos)
                .unwrap();
            assert!(bytes.starts_with(b"%PDF-1.7"), "{name}");
            keep(&format!("{name}-{}", paper.name()), &bytes);
        }
    }
}

#[test]
fn the_same_report_makes_the_same_bytes() {
    let once = || {
        let scene = Scene::new(str::to_owned);
        scene
            .sheet("en")
            .pdf(Paper::Letter, &words("en"), &NoPhotos)
            .unwrap()
    };
    assert!(once() == once());
}

#[test]
fn a_photo_stays_byte_for_byte_what_it_was() {
    let photos = OnePhoto::grey();
    let sheet = Scene::new(str::to_owned).sheet("en");
    let bytes = sheet.pdf(Paper::A4, &words("en"), &photos).unwrap();
    let inside = bytes
        .windows(photos.0.len())
        .any(|window| window == photos.0);
    assert!(inside);
    let page = html_with(&sheet, &photos);
    let (_, picture) = page.split_once("data:image/jpeg;base64,").unwrap();
    assert!(picture.contains("\"><figcaption>"));
    assert!(page.contains("<img alt=\"photo 1, F8, N in, shore"));
}

#[test]
fn a_photo_tells_whether_it_shows_as_found_or_as_left() {
    let page = html(&Scene::new(str::to_owned).sheet("en"));
    assert!(page.contains("photo 1, F8, N in, shore, as left"), "{page}");
}

#[test]
fn the_sheet_of_each_finding_can_be_set() {
    use baywalk_domain::coded::Coded;
    let scene = Scene::new(odd);
    for kind in FindingKind::ALL {
        let sheet = scene.follow_up("es", *kind);
        assert!(html(&sheet).contains("class=\"blanks\""));
        let bytes = sheet.pdf(Paper::Letter, &words("es"), &NoPhotos).unwrap();
        assert!(bytes.len() > 10_000);
    }
}
