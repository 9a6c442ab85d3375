//! Setting a rig up by a few answers, where one stands.

use super::Shell;

#[test]
fn a_rig_is_set_up_from_nothing_by_answers() {
    let shell = Shell::new();
    shell.ok(&["rig", "start", "starter-empty-motorhome", "Plover"]);
    assert!(shell.ok(&["rig", "sources"]).contains("S9 house battery: "));
    let asked = shell.ok(&["rig", "here", "bay"]);
    assert!(asked.contains("What is the bay called?") && asked.contains("275: Front half"));
    let added = shell.ok(&["rig", "here", "bay", "step bay", "left", "275"]);
    assert!(added.contains("A is in the book: step bay."), "{added}");
    let early = shell.fails(&["rig", "here", "terminal", "--bay", "A"], 3);
    assert!(early.contains("Add the device first"), "{early}");
    shell.ok(&[
        "rig", "here", "device", "dc_panel", "", "dc", "2", "--bay", "A",
    ]);
    shell.ok(&[
        "rig", "here", "terminal", "AD1", "push_in", "", "power", "--bay", "A",
    ]);
    assert!(
        shell
            .ok(&["rig", "again", "A1"])
            .contains("A2 is in the book")
    );
    assert!(
        shell
            .ok(&["rig", "facts", "A2"])
            .contains("torque: not noted")
    );
    shell.ok(&[
        "rig",
        "here",
        "device",
        "inverter",
        "",
        "split_phase+dc",
        "2",
        "--bay",
        "A",
    ]);
    let files = shell.path("files");
    shell.ok(&["rig", "write", files.to_str().unwrap()]);
    let toml = std::fs::read_dir(&files)
        .unwrap()
        .map(|file| file.unwrap().path());
    let toml = toml
        .into_iter()
        .find(|path| path.extension().is_some_and(|e| e == "toml"));
    let toml = std::fs::read_to_string(toml.unwrap()).unwrap();
    assert_eq!(
        toml.matches("system = \"dc\"").count(),
        3,
        "two groups of the panel and one of the inverter to be proved dead"
    );
}

#[test]
fn what_is_not_offered_or_not_whole_is_refused_and_adds_nothing() {
    let shell = Shell::new();
    shell.ok(&["rig", "start", "starter-empty-trailer", "Plover"]);
    let before = shell.head();
    for (wrong, part) in [
        (vec!["rig", "here", "roof"], "can't be added"),
        (
            vec!["rig", "here", "bay", "x"],
            "1 answers were given; expected are 3",
        ),
        (
            vec!["rig", "here", "bay", "x", "left", "12"],
            "none of the answers",
        ),
        (
            vec!["rig", "here", "bay", "x", "starboard", "50"],
            "starboard",
        ),
        (
            vec!["rig", "here", "device", "pump", "", "dc", "9", "--bay", "A"],
            "A",
        ),
    ] {
        let output = shell.run(&wrong);
        assert!(!output.status.success(), "{wrong:?}");
        assert!(
            super::said(&output).contains(part),
            "{wrong:?}: {}",
            super::said(&output)
        );
    }
    assert_eq!(shell.head(), before);
}
