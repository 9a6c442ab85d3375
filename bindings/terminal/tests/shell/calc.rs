//! The `calc` door: one JSON object in, one out.

use super::{Shell, said};

#[test]
fn the_names_are_listed_and_each_has_its_schemas() {
    let shell = Shell::new();
    let names = shell.ok(&["calc"]);
    for wanted in ["torque", "due"] {
        assert!(
            names
                .lines()
                .any(|line| line.starts_with(&format!("{wanted}:"))),
            "{names}"
        );
    }
    for line in names.lines() {
        let name = line.split(':').next().unwrap();
        let schemas: serde_json::Value =
            serde_json::from_str(&shell.ok(&["calc", name, "--schema"])).unwrap();
        assert!(
            schemas["input"].is_object() && schemas["output"].is_object(),
            "{name}"
        );
    }
}

#[test]
fn due_is_computed_from_an_object() {
    let shell = Shell::new();
    let input = r#"{"today":"2028-01-01","months":12,"distance":"5000 mi","last":{"on":"2027-03-20","odometer":"41230 mi"},
        "notes":[{"on":"2027-03-20","odometer":"41230 mi"},{"on":"2027-09-20","odometer":"44910 mi"}]}"#;
    let output = shell.typed(&["calc", "due"], input);
    let value: serde_json::Value =
        serde_json::from_slice(&output.stdout).unwrap_or_else(|_| panic!("{}", said(&output)));
    // By hand: 3,680 miles in 184 days are 20 a day; 1,320 left are 66 days after 20 September.
    assert_eq!(value["on"], "2027-11-25");
    assert_eq!(value["reason"], "distance");
    assert_eq!(value["limits"][0]["on"], "2028-03-20");
    assert_eq!(value["limits"][1]["reason"], "distance");
}

#[test]
fn what_is_no_object_is_refused() {
    let shell = Shell::new();
    for input in ["", "[]", "{\"months\":0}"] {
        let output = shell.typed(&["calc", "due"], input);
        assert_eq!(output.status.code(), Some(2), "{input}");
        assert!(output.stdout.is_empty());
    }
    shell.fails(&["calc", "horoscope"], 2);
}
