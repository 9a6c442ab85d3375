//! The condition of a rig's terminations, by analogy with maintenance of industrial equipment.

use super::Known;
use crate::coded::coded;
use crate::finding::{Finding, Urgency};
use crate::rig::YearlyRule;
use chrono::{Months, NaiveDate};

coded! {
    /// The physical condition of equipment as NFPA 70B-2023, 9.3.1 has it (second hand, the wording
    /// from memory). That standard leaves out what is for the home and does not bind the owner of a
    /// vehicle: it is an analogy, told beside the due day and never moving it.
    Condition as "condition" {
        /// Like new: nothing open, and walked in time.
        One = "one",
        /// Findings that are not urgent, or a walk missed.
        Two = "two",
        /// Urgent findings, or the last two walks missed.
        Three = "three",
    }
}

/// The condition on a day.
///
/// # Example
/// ```
/// use baywalk_domain::due::{Condition, Known, condition};
/// use baywalk_domain::rig::YearlyRule;
/// let rule = YearlyRule { months: 12, distance: None };
/// let known = Known { last_walk: "2027-03-20".parse().ok(), ..Known::default() };
/// assert_eq!(condition(&rule, &known, &[], "2028-03-20".parse()?), Condition::One);
/// assert_eq!(condition(&rule, &known, &[], "2028-03-21".parse()?), Condition::Two);
/// assert_eq!(condition(&rule, &known, &[], "2029-03-21".parse()?), Condition::Three);
/// # Ok::<(), chrono::ParseError>(())
/// ```
#[must_use]
pub fn condition(
    rule: &YearlyRule,
    known: &Known,
    findings: &[Finding],
    today: NaiveDate,
) -> Condition {
    let missed = |walks: u32| {
        let months = Months::new(u32::from(rule.months) * walks);
        let last = known
            .last_walk
            .and_then(|day| day.checked_add_months(months));
        last.is_none_or(|due| today > due)
    };
    let open = || findings.iter().filter(|finding| finding.is_open());
    let urgent = open().any(|finding| finding.raised.kind.urgency() == Urgency::BeforeUse);
    if urgent || missed(2) {
        Condition::Three
    } else if open().next().is_some() || missed(1) {
        Condition::Two
    } else {
        Condition::One
    }
}
