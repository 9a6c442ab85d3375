//! The kinds that loosen. Figures of the lives: two checks of 100 joints, 10 moved by 12 months and 20
//! more by 24 (closed form: a share of 0.1, then 0.3).

use baywalk_domain::due::KindCurve;
use baywalk_domain::loosening::{Cloud, Life, Prior, Proportion, npmle, proportion, tally};
use baywalk_domain::rig::FasteningKind;
use baywalk_paper::chart::{Chart, KindFacts, kinds};
use baywalk_shapes::Shape;
use baywalk_words::Words;

fn facts(lives: &[Life], name: &str, lawful: bool) -> KindFacts {
    let (joints, moved) = tally(lives);
    let cloud = Cloud::exact(lives, &Prior::WEAK).unwrap();
    let ages = (0..=24).map(f64::from);
    let law = ages.map(|age| {
        let (least, most) = cloud.interval(0.9, |law| law.moved_by(age));
        let share = cloud.mean(|law| law.moved_by(age));
        (age, Proportion { share, least, most })
    });
    KindFacts {
        name: name.to_owned(),
        told: format!("{name} told."),
        share: proportion(joints, moved, 0.9),
        curve: KindCurve {
            kind: FasteningKind::PressureScrew,
            joints,
            moved,
            last: 24.0,
            steps: npmle(lives),
            law: lawful.then(|| law.collect()),
        },
    }
}

fn lives() -> Vec<Life> {
    vec![
        Life::moved(0.0, 12.0).unwrap().times(10).unwrap(),
        Life::moved(12.0, 24.0).unwrap().times(20).unwrap(),
        Life::held(24.0).unwrap().times(70).unwrap(),
    ]
}

fn drawn(facts: &[KindFacts], width: f64) -> Chart {
    kinds(
        facts,
        "Nothing is known.",
        &Words::for_locales(&["en"]),
        width,
    )
}

fn broken_lines(chart: &Chart) -> usize {
    let parts = chart.drawing.parts.iter();
    parts
        .filter(|part| matches!(part.shape, Shape::Stroke { dash: Some(_), .. }))
        .count()
}

#[test]
fn steps_stand_at_the_shares_that_were_counted() {
    let chart = drawn(&[facts(&lives(), "screw", true)], 328.0);
    let file = chart.numbers.csv();
    let rows: Vec<Vec<&str>> = file.lines().map(|line| line.split(',').collect()).collect();
    assert_eq!(rows[1][..4], ["pressure_screw", "100", "30", "0.3"]);
    let at = |months: &str| rows.iter().find(|row| row[6] == months).unwrap();
    assert_eq!(at("12")[7..9], ["0.1", "0.1"]);
    assert_eq!(at("18")[7..9], ["0.1", "0.3"]);
    assert_eq!(at("24")[7..9], ["0.3", "0.3"]);
    assert!(
        chart.told[1].contains("by 24 months 30 % had moved"),
        "{:?}",
        chart.told
    );
    assert_eq!(broken_lines(&chart), 1);
    // Kept, so that it can be looked at.
    let folder = std::path::Path::new(env!("CARGO_TARGET_TMPDIR"));
    std::fs::write(folder.join("chart-kinds.svg"), chart.svg("en")).unwrap();
}

#[test]
fn below_five_the_share_and_its_interval_alone_are_shown() {
    let few = [
        Life::moved(0.0, 12.0).unwrap().times(3).unwrap(),
        Life::held(12.0).unwrap().times(17).unwrap(),
    ];
    let chart = drawn(&[facts(&few, "lug", false)], 328.0);
    assert_eq!(chart.told, ["lug told."]);
    assert_eq!(broken_lines(&chart), 0);
    let file = chart.numbers.csv();
    let rows: Vec<&str> = file.lines().skip(1).collect();
    assert_eq!(rows.len(), 1);
    assert!(rows[0].starts_with("pressure_screw,20,3,0.15,") && rows[0].ends_with(",,,,,,"));
}

#[test]
fn nothing_known_is_said() {
    let chart = drawn(&[], 328.0);
    assert_eq!(chart.told, ["Nothing is known."]);
    assert!(chart.drawing.height > 10.0 && chart.numbers.rows.is_empty());
}

#[test]
fn nothing_is_drawn_outside_of_the_paper_whatever_the_names_and_the_width() {
    let names = [
        "screw",
        "W".repeat(10_000).as_str(),
        "<script>\u{202e}\u{5d0} & \"x\"",
        "",
    ]
    .map(|name| facts(&lives(), name, true));
    for width in [0.0, 240.0, 328.0, 720.0, 1e9, f64::NAN] {
        let chart = drawn(&names, width);
        let (right, foot) = (chart.drawing.width + 1.0, chart.drawing.height + 1.0);
        for bounds in chart.drawing.parts.iter().filter_map(|part| part.bounds()) {
            assert!(
                bounds.left >= -1.0 && bounds.top >= -1.0,
                "{width}: {bounds:?}"
            );
            assert!(
                bounds.right <= right && bounds.bottom <= foot,
                "{width}: {bounds:?}"
            );
        }
        let svg = chart.svg("en");
        assert!(!svg.contains("<script") && svg.contains("&#60;script&#62;"));
    }
}
