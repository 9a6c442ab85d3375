//! Readings while power comes back, and how they are judged.

use crate::Words;
use baywalk_domain::supply::{Judged, Measured};

impl Words {
    /// What came of a reading.
    #[must_use]
    pub fn measured(&self, measured: &Measured) -> String {
        match measured {
            Measured::Volts(volts) => self.typed(volts),
            Measured::Works => self.say("walk-measured-works"),
            Measured::Fails => self.say("walk-measured-fails"),
            Measured::Not(why) => self.fill("walk-measured-not", &[("why", why.into())]),
        }
    }

    /// A verdict in whole sentences: the safe act first, then how the reading stands, what is
    /// expected and where those limits come from.
    ///
    /// # Example
    /// ```
    /// use baywalk_domain::supply::{Judged, LimitBasis, SafeAct, Verdict};
    /// use baywalk_words::Words;
    /// let judged = Judged {
    ///     verdict: Verdict::Watch,
    ///     act: SafeAct::GoOn,
    ///     limits: Some((110.0, 127.0)),
    ///     basis: LimitBasis::AnsiB,
    /// };
    /// assert_eq!(Words::for_locales(&["en"]).verdict(&judged),
    ///     "Go on. Near a limit: 110 to 127 V is expected (ANSI C84.1 range B, from memory).");
    /// ```
    #[must_use]
    pub fn verdict(&self, judged: &Judged) -> String {
        let (act, verdict) = (self.code(judged.act), self.code(judged.verdict));
        let mut args = vec![("act", act.into()), ("verdict", verdict.into())];
        let Some(limits) = judged.limits else {
            return self.fill("walk-verdict-test", &args);
        };
        let range = [("range", self.volts_between(limits).into())];
        args.push(("expected", self.fill("walk-expected", &range).into()));
        args.push(("basis", self.code(judged.basis).into()));
        self.fill("walk-verdict", &args)
    }

    /// Limits in volts; from zero, only the upper one is told.
    fn volts_between(&self, (least, most): (f64, f64)) -> String {
        let unit = self.code(baywalk_domain::units::VoltageUnit::Volts);
        let most = self.shortest(most, 1);
        if least > 0.0 {
            let least = self.shortest(least, 1);
            let args = [
                ("least", least.into()),
                ("most", most.into()),
                ("unit", unit.into()),
            ];
            self.fill("unit-between", &args)
        } else {
            self.fill(
                "unit-at-most",
                &[("most", most.into()), ("unit", unit.into())],
            )
        }
    }
}
