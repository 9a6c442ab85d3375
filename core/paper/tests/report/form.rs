//! The report as a file: well-formed, whole in itself, readable by machines that read aloud.

use crate::scene::Scene;
use scraper::{Html, Selector};

fn page() -> String {
    Scene::new(str::to_owned).html("en")
}

#[test]
fn it_is_well_formed_by_the_html_standard() {
    // html5ever follows the parsing rules of the WHATWG HTML standard and counts every breach.
    let document = Html::parse_document(&page());
    assert!(document.errors.is_empty(), "{:?}", document.errors);
}

#[test]
fn it_asks_for_nothing_outside_itself() {
    let page = page();
    for word in [
        "http",
        "<script",
        "javascript:",
        "url(",
        "@import",
        "<link",
        "<img",
        "<iframe",
    ] {
        assert!(!page.contains(word), "{word}");
    }
}

#[test]
fn it_names_its_language() {
    let scene = Scene::new(str::to_owned);
    assert!(scene.html("en").contains("<html lang=\"en\">"));
    assert!(scene.html("es").contains("<html lang=\"es\">"));
}

#[test]
fn every_table_has_a_caption_and_scopes_and_rows_as_wide_as_its_head() {
    let document = Html::parse_document(&page());
    let pick = |path: &str| Selector::parse(path).unwrap();
    let (caption, head, row) = (pick("caption"), pick("thead th"), pick("tbody tr"));
    let (first, cells) = (pick("th[scope=row]"), pick("th, td"));
    let mut tables = 0;
    for table in document.select(&pick("table")) {
        tables += 1;
        assert_eq!(table.select(&caption).count(), 1);
        let width = table.select(&head).count();
        assert!(
            table
                .select(&head)
                .all(|cell| cell.attr("scope") == Some("col"))
        );
        for row in table.select(&row) {
            assert_eq!(row.select(&first).count(), 1);
            assert_eq!(row.select(&cells).count(), width);
        }
    }
    assert!(tables >= 12, "{tables}");
}

#[test]
fn headings_go_down_one_step_at_a_time() {
    let document = Html::parse_document(&page());
    let heading = Selector::parse("h1, h2, h3, h4, h5, h6").unwrap();
    let levels: Vec<u8> = document
        .select(&heading)
        .map(|heading| heading.value().name().as_bytes()[1] - b'0')
        .collect();
    assert_eq!(levels[0], 1);
    assert_eq!(levels.iter().filter(|level| **level == 1).count(), 1);
    assert!(
        levels.windows(2).all(|pair| pair[1] <= pair[0] + 1),
        "{levels:?}"
    );
}

#[test]
fn anchors_are_unique() {
    let document = Html::parse_document(&page());
    let anchored = Selector::parse("[id]").unwrap();
    let mut ids: Vec<_> = document
        .select(&anchored)
        .filter_map(|part| part.attr("id"))
        .collect();
    let count = ids.len();
    ids.sort_unstable();
    ids.dedup();
    assert_eq!(ids.len(), count);
}
