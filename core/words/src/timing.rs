//! When to look again: rules and what is due, in words.

use crate::Words;
use crate::words::sentence;
use baywalk_domain::due::{Asked, Bound, Due, DueReason, Forecast, Limit, Reach, Rule, YearDay};
use baywalk_domain::rig::Book;
use baywalk_domain::units::{DistanceUnit, Stated};

impl Words {
    /// What a rule or an event is about, by name.
    #[must_use]
    pub fn reach<'b>(&self, reach: Reach, book: impl Into<Option<&'b Book>>) -> String {
        match reach {
            Reach::Rig => self.say("timing-yearly"),
            Reach::Bay(bay) => self.bay_name(bay, book),
            Reach::Point(point) => self.point_name(point, book),
            Reach::Kind(kind) => {
                self.fill("timing-about-kind", &[("kind", self.code(kind).into())])
            }
        }
    }

    /// A rule of the owner: what it is about, its limits, the owner's word.
    #[must_use]
    pub fn rule<'b>(&self, rule: &Rule, book: impl Into<Option<&'b Book>>) -> String {
        let limits: Vec<String> = rule.limits.iter().map(|limit| self.limit(limit)).collect();
        let key = if limits.len() > 1 {
            "timing-rule"
        } else {
            "timing-rule-one"
        };
        let args = [
            ("about", sentence(&self.reach(rule.reach, book)).into()),
            ("limits", limits.join(", ").into()),
        ];
        let text = self.fill(key, &args);
        if rule.word.trim().is_empty() {
            return text;
        }
        let args = [("rule", text.into()), ("word", (&rule.word).into())];
        self.fill("timing-with-word", &args)
    }

    /// One limit of a rule.
    #[must_use]
    pub fn limit(&self, limit: &Limit) -> String {
        let every = |figure: String| self.fill("timing-every", &[("figure", figure.into())]);
        match limit {
            Limit::Months(months) => self.fill("timing-months", &[("months", (*months).into())]),
            Limit::Distance(far) => every(self.typed(far)),
            Limit::Hours(long) => every(self.typed(long)),
            Limit::Season { anchor, on } => self.fill(
                "timing-season",
                &[
                    ("day", on.day().into()),
                    ("month", self.month_of(*on).into()),
                    ("anchor", self.code(*anchor).into()),
                ],
            ),
            Limit::After {
                event,
                days,
                distance,
            } => {
                let args = [
                    ("days", (*days).into()),
                    ("event", self.code(*event).into()),
                ];
                let after = self.fill("timing-after", &args);
                self.with_distance(after, distance.as_ref())
            }
            Limit::Chance(percent) => self.fill("timing-chance", &[("percent", (*percent).into())]),
        }
    }

    fn with_distance(&self, after: String, far: Option<&Stated<DistanceUnit>>) -> String {
        match far {
            Some(far) => {
                let args = [
                    ("after", after.into()),
                    ("distance", self.typed(far).into()),
                ];
                self.fill("timing-after-far", &args)
            }
            None => after,
        }
    }

    fn month_of(&self, day: YearDay) -> String {
        self.month(usize::from(day.month()).saturating_sub(1))
    }

    /// Something that is due: what it is, the day, and which limit comes first.
    #[must_use]
    pub fn due_item<'b>(&self, due: &Due, book: impl Into<Option<&'b Book>>) -> String {
        if due.asked == Asked::Walk {
            return self.due(due.on, due.reason, due.at());
        }
        if due.asked == Asked::SecondLook {
            return self.second_look(due.on);
        }
        let mut args = vec![
            ("about", sentence(&self.reach(due.reach, book)).into()),
            ("reason", self.code(due.reason).into()),
            ("date", self.date(due.on).into()),
        ];
        match due.at() {
            _ if due.reason == DueReason::NeverWalked => self.fill("timing-due-never", &args),
            Some(at) => {
                args.push(("at", self.typed(at).into()));
                self.fill("timing-due-at", &args)
            }
            None => self.fill("timing-due", &args),
        }
    }

    /// That something was put off, until when and why; `None` where it was not.
    #[must_use]
    pub fn put_off(&self, due: &Due) -> Option<String> {
        let put = due.put_off.as_ref()?;
        let args = [
            ("date", self.date(put.on).into()),
            ("until", self.date(put.until).into()),
            ("why", (&put.why).into()),
        ];
        Some(self.fill("timing-put-off", &args))
    }

    /// What one limit comes to: the day with its range, and the reading at which it is.
    #[must_use]
    pub fn bound(&self, bound: &Bound) -> String {
        let limit = sentence(&self.aspect(bound.reason, "limit"));
        let text = match bound.day {
            None => self.fill("timing-bound-unknown", &[("limit", limit.into())]),
            Some(day) => self.forecast(&limit, day),
        };
        let at = bound.at.as_ref().map(|at| self.typed(at));
        match at.or_else(|| bound.hours.as_ref().map(|hours| self.typed(hours))) {
            Some(at) if bound.day.is_some() => self.fill(
                "timing-bound-at",
                &[("bound", text.into()), ("at", at.into())],
            ),
            _ => text,
        }
    }

    fn forecast(&self, limit: &str, day: Forecast) -> String {
        let mut args = vec![
            ("limit", limit.into()),
            ("date", self.date(day.on).into()),
            ("from", self.date(day.from).into()),
        ];
        match day.to {
            Some(to) if to == day.from => self.fill("timing-bound", &args),
            Some(to) => {
                args.push(("to", self.date(to).into()));
                self.fill("timing-bound-range", &args)
            }
            None => self.fill("timing-bound-open", &args),
        }
    }
}
