//! The script of the sample walk is what the recorder records today.

#[test]
fn the_script_that_comes_with_the_command_is_up_to_date() {
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR"))
        .parent()
        .unwrap();
    let kept = std::fs::read_to_string(root.join("bindings/terminal/scripts/wren.jsonl")).unwrap();
    let now = baywalk_tests::record::wren();
    let first = kept
        .lines()
        .zip(now.lines())
        .position(|(kept, now)| kept != now);
    assert_eq!(
        first.map(|place| kept.lines().collect::<Vec<_>>()[place]),
        None
    );
    assert_eq!(kept.lines().count(), now.lines().count());
}
