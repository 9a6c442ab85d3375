//! Older entry bodies, read in their current form. Stored bytes are never changed.

use serde_json::Value;

/// Turns the body of one version into that of the next.
type Upcaster = fn(Value) -> Value;

/// What leads from a kind's version to the next.
const UPCASTERS: &[((&str, u32), Upcaster)] = &[
    // What sets are wired to and what a source opens came in; left out, they are not known.
    (("book", 1), as_it_was),
    // The photos of bays, and what the owner says of a point's rank, came in; left out, there is none.
    (("book", 2), as_it_was),
    (("known_live", 1), meter_of_its_kind_alone),
    // What the circuit says came in; older readings were judged one by one.
    (("measure", 1), as_it_was),
];

/// Name and category of the meter came in; before, its kind alone was noted.
fn meter_of_its_kind_alone(mut body: Value) -> Value {
    if let Some(meter) = body.pointer_mut("/act/known_live/meter") {
        let kind = meter.take();
        *meter = serde_json::json!({"kind": kind, "name": "", "category": "not_noted"});
    }
    body
}

/// A body whose older form reads as it is.
const fn as_it_was(body: Value) -> Value {
    body
}

/// The body in the current form of its kind; `None` where a step is missing.
pub(super) fn upcast(kind: &str, from: u32, to: u32, body: Value) -> Option<Value> {
    (from..to).try_fold(body, |body, version| {
        UPCASTERS
            .iter()
            .find(|(step, _)| *step == (kind, version))
            .map(|(_, turn)| turn(body))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_current_version_stays_and_a_missing_step_is_told() {
        let body = Value::from(1);
        assert_eq!(upcast("open", 1, 1, body.clone()), Some(body.clone()));
        assert_eq!(upcast("open", 0, 1, body), None);
    }
}
