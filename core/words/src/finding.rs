//! Findings, what was decided, and when the next walk is due.

use crate::Words;
use baywalk_domain::due::DueReason;
use baywalk_domain::finding::{FindingKind, FollowUp, Raised};
use baywalk_domain::rig::Book;
use baywalk_domain::units::{DistanceUnit, Stated};
use chrono::NaiveDate;

impl Words {
    /// A finding: what it is about, what it is, what to do.
    #[must_use]
    pub fn finding<'b>(&self, raised: &Raised, book: impl Into<Option<&'b Book>>) -> String {
        let text = self.fill(
            "walk-finding",
            &[
                ("what", self.about(raised.about, book).into()),
                ("finding", self.code(raised.kind).into()),
                ("do", self.what_to_do(raised.kind).into()),
            ],
        );
        crate::words::sentence(&text)
    }

    /// What to do about a kind of finding.
    ///
    /// # Example
    /// ```
    /// use baywalk_domain::finding::FindingKind;
    /// use baywalk_words::Words;
    /// assert_eq!(Words::for_locales(&["en"]).what_to_do(FindingKind::OutOfService),
    ///     "Keep it off and tagged until it is mended.");
    /// ```
    #[must_use]
    pub fn what_to_do(&self, kind: FindingKind) -> String {
        self.aspect(kind, "do")
    }

    /// What was decided about a finding, until when, with its note.
    #[must_use]
    pub fn follow_up(&self, follow_up: &FollowUp) -> String {
        let decision = self.code(follow_up.decision);
        let text = match follow_up.by {
            Some(day) => self.fill(
                "walk-follow-up-by",
                &[
                    ("decision", decision.into()),
                    ("date", self.date(day).into()),
                ],
            ),
            None => decision,
        };
        if follow_up.note.trim().is_empty() {
            return text;
        }
        let args = [("text", text.into()), ("note", (&follow_up.note).into())];
        self.fill("walk-with-note", &args)
    }

    /// When the next walk is due, and by which limit.
    #[must_use]
    pub fn due(
        &self,
        on: NaiveDate,
        reason: DueReason,
        at: Option<&Stated<DistanceUnit>>,
    ) -> String {
        let mut args = vec![("reason", self.code(reason).into())];
        if reason == DueReason::NeverWalked {
            return self.fill("walk-due-never", &args);
        }
        args.push(("date", self.date(on).into()));
        match at {
            Some(odometer) => {
                args.push(("at", self.typed(odometer).into()));
                self.fill("walk-due-odometer", &args)
            }
            None => self.fill("walk-due", &args),
        }
    }

    /// When what was set or remade is looked at again.
    #[must_use]
    pub fn second_look(&self, on: NaiveDate) -> String {
        self.fill("walk-second-look", &[("date", self.date(on).into())])
    }
}
