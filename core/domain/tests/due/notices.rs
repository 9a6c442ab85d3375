//! Notices of rigs by chance: 100,000 cases of days, rules, zones and clocks that jump.

use super::chance::Chance;
use super::{book, day};
use baywalk_domain::due::{
    Anchor, Due, Known, Limit, MOST_NOTICES, Reach, Rule, YearDay, due, notices,
};
use baywalk_domain::ids::{RigId, RuleId};
use chrono::{Datelike, Days, NaiveDate};
use chrono_tz::TZ_VARIANTS;
use std::collections::BTreeSet;
use uuid::Uuid;

/// A day so many months on, made a second time here.
fn months_on(from: NaiveDate, months: u32) -> NaiveDate {
    let months = u32::try_from(from.year()).unwrap() * 12 + from.month0() + months;
    let (year, month) = (i32::try_from(months / 12).unwrap(), months % 12 + 1);
    let lengths = (28..=31).rev();
    let mut ends = lengths.filter_map(|day| NaiveDate::from_ymd_opt(year, month, day));
    let end = ends.next().unwrap();
    NaiveDate::from_ymd_opt(year, month, from.day().min(end.day())).unwrap()
}

/// What is due of a rig by chance, and the day of its walk worked out here.
fn rig(chance: &mut Chance) -> (Vec<Due>, NaiveDate) {
    let months = chance.below(12) + 1;
    let last = day("2026-01-01") + Days::new(chance.below(3653).into());
    let mut known = Known {
        noted: Some(day("2025-01-01")),
        last_walk: Some(last),
        ..Known::default()
    };
    let mut expected = months_on(last, months);
    if chance.below(3) == 0 {
        let on = YearDay::new(u8::try_from(chance.below(12) + 1).unwrap(), 29);
        let on = on.unwrap_or(YearDay::new(2, 28).unwrap());
        known.rules.push(Rule {
            id: RuleId::new(Uuid::from_u128(5)),
            reach: Reach::Rig,
            limits: vec![Limit::Season {
                anchor: Anchor::FirstTrip,
                on,
            }],
            word: String::new(),
        });
        // The next such day more than sixty days ahead, searched day by day.
        let fits = |day: &NaiveDate| on.in_year(day.year()) == Some(*day);
        let season = (61..500).map(|n| last + Days::new(n)).find(fits).unwrap();
        expected = expected.min(season);
    }
    let months = u8::try_from(months).unwrap();
    (due(&book(months, None), &known, None), expected)
}

#[test]
fn one_notice_a_rig_and_day_the_nearest_and_never_early() {
    let mut chance = Chance(20_270_320);
    for case in 0..100_000_u32 {
        let many = if case % 100 == 0 { 60 } else { 4 };
        let rigs: Vec<(RigId, Vec<Due>)> = (0..=chance.below(many))
            .map(|n| {
                let (due, expected) = rig(&mut chance);
                assert_eq!(due[0].on, expected, "case {case}");
                (RigId::new(Uuid::from_u128(u128::from(n))), due)
            })
            .collect();
        let items = || {
            rigs.iter()
                .flat_map(|(rig, all)| all.iter().map(move |due| (*rig, due)))
        };
        let next = notices(items(), 0);
        assert!(next.len() <= MOST_NOTICES);
        let names: BTreeSet<String> = next.iter().map(|notice| notice.name()).collect();
        assert_eq!(names.len(), next.len(), "one a rig and day");
        let last = next.last().unwrap();
        let span = |rig: RigId, on: NaiveDate| (on, rig) <= (last.on, last.rig);
        for (rig, due) in items() {
            let times = next.iter().filter(|notice| {
                notice.rig == rig && notice.items.iter().any(|item| std::ptr::eq(*item, due))
            });
            assert_eq!(times.count(), usize::from(span(rig, due.on)), "case {case}");
        }
        // Wherever the phone has got to and whatever its clock was put to, the list is the same, and
        // the instant of a notice lies on the local day on which its items are due, not before.
        let zone = TZ_VARIANTS[usize::try_from(chance.below(500)).unwrap()];
        for notice in next.iter().take(2) {
            let at = notice.instant(&zone).unwrap();
            assert!(
                notice.items.iter().all(|item| at.date_naive() == item.on),
                "{zone} {at}"
            );
        }
    }
}

#[test]
fn told_early_it_is_as_early_as_was_asked() {
    let mut chance = Chance(3);
    let (all, _) = rig(&mut chance);
    let id = RigId::new(Uuid::from_u128(1));
    let next = notices(all.iter().map(|due| (id, due)), 14);
    assert_eq!(next[0].on + Days::new(14), all[0].on);
}
