//! Readings while power comes back, and how they are judged.

use crate::Words;
use baywalk_domain::service::{Ask, AskSeen, Fault, FaultSeen, ServiceSeen, Standing};
use baywalk_domain::supply::{Judged, Measured, SafeAct};

/// How many faults are named in one sentence, the likeliest first.
const MOST_TOLD: usize = 3;

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

    /// What the circuit of a service says: the safe act first where one is needed, how the service
    /// stands, what explains the readings, and what to read next.
    ///
    /// # Example
    /// ```
    /// use baywalk_domain::service::{Fault, FaultSeen, ServiceSeen, Standing};
    /// use baywalk_domain::supply::SafeAct;
    /// use baywalk_words::Words;
    /// let (fault, at) = (Fault::OpenNeutral, None);
    /// let seen = ServiceSeen {
    ///     standing: Standing::Faulty,
    ///     act: SafeAct::SupplyAway,
    ///     cautions: Vec::new(),
    ///     faults: vec![FaultSeen { fault, at }],
    ///     next: Vec::new(),
    /// };
    /// let text = Words::for_locales(&["en"]).service_seen(&seen);
    /// assert!(text.starts_with("Supply breaker off, then unplug."), "{text}");
    /// assert!(text.ends_with("Open neutral."), "{text}");
    /// ```
    #[must_use]
    pub fn service_seen(&self, seen: &ServiceSeen) -> String {
        let act = (seen.act != SafeAct::GoOn).then(|| self.code(seen.act));
        let wrong = seen.faults.iter().filter(|one| one.fault != Fault::Healthy);
        let told: Vec<String> = wrong
            .take(MOST_TOLD)
            .map(|one| self.fault_seen(one))
            .collect();
        let key = match seen.standing {
            Standing::Faulty => "walk-service-faults",
            _ => "walk-service-hidden",
        };
        let faults = [("faults", told.join("; ").into())];
        let faults = (!told.is_empty()).then(|| self.fill(key, &faults));
        let next = seen
            .next
            .first()
            .filter(|_| seen.standing != Standing::Sound);
        let cautions = seen.cautions.iter().map(|one| self.code(*one));
        let standing = Some(format!("{}.", self.code(seen.standing)));
        let parts = [act, standing, faults].into_iter().flatten();
        let next = next.map(|next| self.ask_seen(next));
        parts
            .chain(cautions)
            .chain(next)
            .collect::<Vec<_>>()
            .join(" ")
    }

    fn fault_seen(&self, one: &FaultSeen) -> String {
        let fault = self.code(one.fault);
        match one.at {
            None => fault,
            Some(at) => self.fill(
                "walk-service-fault-at",
                &[("fault", fault.into()), ("at", self.code(at).into())],
            ),
        }
    }

    fn ask_seen(&self, next: &AskSeen) -> String {
        let ask = self.code(next.ask);
        match next.pair.filter(|_| next.ask == Ask::ReadPair) {
            None => ask,
            Some(pair) => self.fill(
                "walk-service-ask-pair",
                &[("ask", ask.into()), ("pair", self.code(pair).into())],
            ),
        }
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
