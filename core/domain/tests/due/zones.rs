//! Every zone of the IANA database, compiled in by chrono-tz, over ten years of its changes of clocks.

use super::day;
use baywalk_domain::due::instant;
use chrono::{Days, Duration, NaiveDate, Offset, TimeZone};
use chrono_tz::{TZ_VARIANTS, Tz};

fn offset(zone: Tz, on: NaiveDate) -> i32 {
    let at = zone.from_utc_datetime(&on.and_hms_opt(0, 0, 0).unwrap());
    at.offset().fix().local_minus_utc()
}

/// The days about each change of the clocks from 2026 to 2036.
fn edges(zone: Tz) -> Vec<NaiveDate> {
    let weeks = (0..522).map(|week| day("2026-01-01") + Days::new(7 * week));
    weeks
        .filter(|week| offset(zone, *week) != offset(zone, *week + Days::new(7)))
        .flat_map(|week| (0..10).map(move |n| week + Days::new(n)))
        .collect()
}

#[test]
fn a_day_is_told_on_that_day_in_every_zone() {
    let mut seen = 0;
    for zone in TZ_VARIANTS {
        let mut days = edges(zone);
        days.extend(["2028-02-29", "2027-12-31", "2028-01-01"].map(day));
        days.sort_unstable();
        days.dedup();
        seen += days.len();
        let mut before = None;
        for on in days {
            for half_hour in 0..48 {
                let local = on.and_hms_opt(0, 0, 0).unwrap() + Duration::minutes(30 * half_hour);
                let at = instant(local, &zone).unwrap();
                let shown = at.naive_local();
                // Put forward by two hours at most, and never earlier than was said.
                assert!(
                    shown >= local && shown - local <= Duration::hours(2),
                    "{zone} {local} {shown}"
                );
                if half_hour == 18 {
                    assert_eq!(shown, local, "{zone}: no zone changes at nine");
                    assert!(before.is_none_or(|before| before < at), "{zone} {local}");
                    before = Some(at);
                }
                // Of a time that comes twice it is the first.
                let earlier = at - Duration::hours(1);
                assert!(earlier.naive_local() != local, "{zone} {local}");
            }
        }
    }
    assert!(seen > 20_000, "{seen} days");
}

#[test]
fn half_past_two_in_the_gap_is_half_past_three() {
    // US rule of 2007 on (Energy Policy Act of 2005, from memory): second Sunday of March.
    let local = day("2027-03-14").and_hms_opt(2, 30, 0).unwrap();
    let at = instant(local, &chrono_tz::America::New_York).unwrap();
    assert_eq!(at.to_rfc3339(), "2027-03-14T03:30:00-04:00");
    let twice = day("2027-11-07").and_hms_opt(1, 30, 0).unwrap();
    let at = instant(twice, &chrono_tz::America::New_York).unwrap();
    assert_eq!(at.to_rfc3339(), "2027-11-07T01:30:00-04:00");
}
