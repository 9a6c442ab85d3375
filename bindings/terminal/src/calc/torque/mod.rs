//! `calc torque`: the advice for one terminal.

mod found;
mod given;

use super::{Calculate, Fault, at};
use baywalk_domain::rig::Terminal;
use baywalk_domain::torque::{Past, Practice, advise};
use found::Found;
use given::Given;

/// The calculation.
pub(super) struct Calculation;

impl Calculate for Calculation {
    const NAME: &'static str = "torque";
    const ABOUT: &'static str = "What to do at a terminal, with which torque, from which source. \
        The label on the part and local codes come first.";
    type In = Given;
    type Out = Found;

    fn calculate(given: Given) -> Result<Found, Fault> {
        let practice = match given.check_percent {
            Some(percent) => Practice::new(percent).map_err(at("check_percent"))?,
            None => Practice::default(),
        };
        let past = given.past.map(Past::from).unwrap_or_default();
        let terminal = Terminal::try_from(given)?;
        Ok(Found::of(&terminal, &advise(&terminal, past, &practice)))
    }
}

#[cfg(test)]
mod tests {
    use crate::calc::{Fault, run};
    use serde_json::Value;

    fn found(input: &str) -> Value {
        serde_json::from_str(&run("torque", input).unwrap()).unwrap()
    }

    #[test]
    fn a_label_wins_and_comes_back_as_typed() {
        let found = found(
            r#"{ "fastening": "pressure_screw", "wire": { "size": "6 AWG" },
                 "drives": [{ "kind": "allen", "across": "3/16 in" }],
                 "maker": { "torque": "4,50 N.m", "basis": "label", "source": "cover" } }"#,
        );
        assert_eq!(found["action"], "check_then_set");
        assert_eq!(found["target"]["torque"]["text"], "4,50");
        assert_eq!(found["target"]["basis"]["kind"], "label");
        assert_eq!(found["check"]["text"], "3.6");
        assert_eq!(found["others"][0]["torque"]["text"], "120");
    }

    #[test]
    fn a_table_names_its_head() {
        let found = found(
            r#"{ "fastening": "pressure_screw", "wire": { "size": "6 AWG" },
                 "drives": [{ "kind": "hex" }] }"#,
        );
        let table = &found["target"]["basis"]["table"];
        assert_eq!(found["target"]["torque"]["text"], "110");
        assert_eq!(
            (&table["id"], &table["head"]["known"]),
            (&"nec_annex_i1".into(), &"second_hand".into())
        );
    }

    #[test]
    fn what_is_missing_is_said_and_no_number_given() {
        let found = found(r#"{ "fastening": "battery_post" }"#);
        assert_eq!(found["action"], "ask_maker");
        assert_eq!(found["target"], Value::Null);
        assert_eq!(found["missing"], serde_json::json!(["maker_torque"]));
    }

    #[test]
    fn findings_stand_beside_the_advice() {
        let found = found(
            r#"{ "fastening": "pressure_screw", "landed": 2, "wire": { "size": "10 AWG" },
                 "range": ["6 AWG", "2 AWG"] }"#,
        );
        assert_eq!(found["crowded"], true);
        assert_eq!(found["size_outside"], "too_thin");
    }

    #[test]
    fn refuses_what_can_not_be_with_the_field() {
        for (field, input) in [
            (
                "maker.torque",
                r#"{ "fastening": "stud", "maker": { "torque": "-4 N.m", "basis": "label", "source": "" } }"#,
            ),
            (
                "maker.torque",
                r#"{ "fastening": "stud", "maker": { "torque": "0 N.m", "basis": "label", "source": "" } }"#,
            ),
            (
                "maker.torque",
                r#"{ "fastening": "stud", "maker": { "torque": "NaN N.m", "basis": "label", "source": "" } }"#,
            ),
            (
                "maker.torque",
                r#"{ "fastening": "stud", "maker": { "torque": "9000 N.m", "basis": "label", "source": "" } }"#,
            ),
            ("thread", r#"{ "fastening": "stud", "thread": "M99" }"#),
            (
                "wire.size",
                r#"{ "fastening": "stud", "wire": { "size": "6" } }"#,
            ),
            (
                "check_percent",
                r#"{ "fastening": "stud", "check_percent": 100 }"#,
            ),
            (
                "maker",
                r#"{ "fastening": "push_in", "maker": { "torque": "4 N.m", "basis": "label", "source": "" } }"#,
            ),
        ] {
            match run("torque", input) {
                Err(Fault::Field { field: found, .. }) => assert_eq!(found, field),
                other => panic!("{input}: {other:?}"),
            }
        }
        assert!(matches!(
            run("torque", r#"{ "fastening": "nail" }"#),
            Err(Fault::Json(_))
        ));
    }
}
