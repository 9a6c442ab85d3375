//! Text from people that tries to be more than text.

use crate::scene::{Scene, visible};
use scraper::{Html, Node};

pub(crate) fn nasty(text: &str) -> String {
    format!("{text}\"'><script>alert(1)</script><img src=x onerror=alert(1)><!--</style></table>")
}

pub(crate) fn long(text: &str) -> String {
    format!("{text}{}", "W".repeat(10_000))
}

pub(crate) fn odd(text: &str) -> String {
    format!(
        "{text} \u{202e}\u{5d0}\u{5d1} \u{1f469}\u{200d}\u{1f527} {{{{ text }}}} &amp; =1+1 \0\u{7} { }",
        "{ $day }"
    )
}

/// Keeps a page, so that it can be looked at in a browser.
fn sample(name: &str, page: &str) {
    let folder = std::path::Path::new(env!("CARGO_TARGET_TMPDIR"));
    std::fs::write(folder.join(format!("report-{name}.html")), page).unwrap();
}

/// Elements, attributes and comments of a page, without its text.
fn skeleton(page: &str) -> Vec<String> {
    let document = Html::parse_document(page);
    let told = document.tree.nodes().filter_map(|node| match node.value() {
        Node::Element(element) => {
            let mut names: Vec<&str> = element.attrs().map(|(name, _)| name).collect();
            names.sort_unstable();
            Some(format!("{} {names:?}", element.name()))
        }
        Node::Comment(_) => Some("comment".to_owned()),
        _ => None,
    });
    told.collect()
}

#[test]
fn markup_in_every_free_field_stays_text() {
    let plain = Scene::new(str::to_owned).html("en");
    let page = Scene::new(nasty).html("en");
    sample("nasty", &page);
    assert_eq!(skeleton(&page), skeleton(&plain));
    assert!(Html::parse_document(&page).errors.is_empty());
    assert!(!page.contains("<script") && !page.contains("<img"));
    assert!(visible(&page).matches("<script>alert(1)</script>").count() > 60);
}

#[test]
fn a_word_of_ten_thousand_letters_and_odd_scripts_keep_the_form() {
    let plain = Scene::new(str::to_owned).html("es");
    for (pen, name) in [(long as fn(&str) -> String, "long"), (odd, "odd")] {
        let page = Scene::new(pen).html("es");
        sample(name, &page);
        assert_eq!(skeleton(&page), skeleton(&plain));
        assert!(Html::parse_document(&page).errors.is_empty());
    }
}

#[test]
fn signs_that_turn_the_order_of_their_surroundings_are_shown_and_do_nothing() {
    let page = Scene::new(odd).html("en");
    assert!(!page.contains(['\u{202e}', '\0', '\u{7}']));
    assert!(page.contains("Alder \u{fffd}\u{5d0}\u{5d1}"));
}

#[test]
fn long_words_may_break_anywhere() {
    assert!(
        Scene::new(long)
            .html("en")
            .contains("overflow-wrap:anywhere")
    );
}
