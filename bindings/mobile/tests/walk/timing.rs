//! A plan followed, and when next.

use super::*;

#[test]
fn a_plan_is_followed_made_anew_at_the_close_of_a_bay_left_and_rejoined() {
    let phone = phone();
    let planned = phone.core.plan(&phone.rig, 10).unwrap();
    let first = planned.stops.first().unwrap().code.clone();
    assert_eq!(planned.proof.code, "best");
    let nose = phone.until("open").card.tag.unwrap();
    assert_ne!(nose, first);
    let mut ten = press(&phone.card(), "plan");
    ten.typed = vec!["10".to_owned()];
    let told = phone.press(ten).told.unwrap();
    assert!(
        told.sentences
            .iter()
            .any(|said| said.starts_with("The plan is followed"))
    );
    let stop = phone.until("open").card;
    assert_eq!(stop.tag.as_deref(), Some(first.as_str()));
    assert!(stop.keys.iter().all(|key| key.code != "plan"));
    phone.until("close");
    let told = phone.first_key().told.unwrap();
    assert!(
        told.sentences
            .iter()
            .any(|said| said.starts_with("Planned anew")),
        "{told:?}"
    );
    let done = phone.core.bay(&phone.rig, &first, WIDTH).unwrap();
    assert!(!done.points.is_empty());
    phone.press(press(&phone.card(), "leave_plan"));
    assert_eq!(phone.card().card.tag.unwrap(), nose);
    let told = phone
        .press(press(&phone.card(), "rejoin_plan"))
        .told
        .unwrap();
    assert_eq!(told.kind, "follow");
    assert_ne!(phone.card().card.tag.unwrap_or_default(), nose);
}

#[test]
fn when_next_is_noted_ruled_and_put_off_by_its_keys() {
    let phone = phone();
    let (core, rig) = (&phone.core, &phone.rig);
    let press = |key: &str, typed: &[&str]| {
        let typed = typed.iter().map(|text| (*text).to_owned()).collect();
        core.when_press(rig, key, typed)
    };
    press("odometer", &["41234 mi"]).unwrap();
    assert!(press("odometer", &["forty"]).is_err());
    press("rule", &["months", "6"]).unwrap();
    press("event", &["hard_impact", "a curb"]).unwrap();
    let screen = core.when_next(rig).unwrap();
    assert_eq!(screen.rules.rules.len(), 1);
    let put_off = screen
        .keys
        .iter()
        .find(|key| key.code == "put_off 1")
        .unwrap();
    let Some(Ask::Choice { options, .. }) = put_off.asks.first() else {
        panic!("no days to put off to");
    };
    let until = options.first().unwrap().code.clone();
    assert!(
        press("put_off 1", &[&until, ""]).is_err(),
        "without a reason"
    );
    press("put_off 1", &[&until, "away until then"]).unwrap();
    press("drop_rule 1", &[]).unwrap();
    assert!(core.when_next(rig).unwrap().rules.rules.is_empty());
    assert!(press("no such key", &[]).is_err());
}
