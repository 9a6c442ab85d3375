//! The torque card in words.

use crate::Words;
use baywalk_domain::rig::TorqueBasis;
use baywalk_domain::torque::{
    Action, Advice, Basis, Calculation, Caution, FoundBy, LeftBy, Missing, Target,
};
use baywalk_domain::units::{Stated, TorqueUnit};

/// The advice for one terminal in words, each part where a card shows it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct AdviceText {
    /// What to do, in a few words.
    pub action: String,
    /// How it is looked at first.
    pub look: String,
    /// How the tool is set for the check and pulled; `None` where nothing is checked by torque.
    pub check: Option<String>,
    /// The question that the hand answers.
    pub question: String,
    /// How what moved, is loose or apart is set right.
    pub left: String,
    /// The full value to set to, where setting is part of that and a figure can be trusted.
    pub set: Option<String>,
    /// Where the figure comes from, or that there is none.
    pub basis: String,
    /// What other published tables say, to compare and never to set by.
    pub others: Vec<String>,
    /// What to mind, the gravest first.
    pub cautions: Vec<String>,
    /// What is not known and would settle the advice.
    pub missing: Option<String>,
}

impl Words {
    /// The torque card in words.
    ///
    /// # Example
    /// ```
    /// use baywalk_domain::rig::{Drive, DriveKind, Fastening, FasteningKind, Terminal};
    /// use baywalk_domain::torque::{Past, Practice, advise};
    /// use baywalk_domain::units::StatedLength;
    /// use baywalk_words::Words;
    ///
    /// let mut terminal = Terminal::of(Fastening::of(FasteningKind::PressureScrew));
    /// terminal.fastening.drives.push(Drive {
    ///     across: Some(StatedLength::parse("3/16 in")?),
    ///     ..Drive::unsized_of(DriveKind::Allen)
    /// });
    /// let advice = advise(&terminal, Past::default(), &Practice::default());
    /// let card = Words::for_locales(&["en"]).advice(&advice);
    /// assert_eq!(card.action, "Check, set only what moved");
    /// assert_eq!(card.check.as_deref(), Some("Set the tool to 96 inch-pounds (10.8 N·m): 80 % of \
    ///     120, our rule. Turn right, slowly, stop at the click or when it moves."));
    /// assert_eq!(card.set.as_deref(), Some("SET TO 120 inch-pounds (13.6 N·m), one steady pull."));
    /// # Ok::<(), baywalk_domain::units::LengthFault>(())
    /// ```
    #[must_use]
    pub fn advice(&self, advice: &Advice) -> AdviceText {
        let target = advice.target.as_ref();
        AdviceText {
            action: self.code(advice.action),
            look: self.code(advice.found_by),
            check: self.check(advice),
            question: self.question(advice),
            left: self.code(advice.left_by),
            set: target
                .filter(|_| sets(advice))
                .map(|target| self.set(target)),
            basis: target.map_or_else(
                || self.without_figure(advice),
                |target| self.basis(&target.basis),
            ),
            others: advice
                .others
                .iter()
                .map(|other| self.other(other))
                .collect(),
            cautions: self.cautions(&advice.cautions),
            missing: self.missing(&advice.missing),
        }
    }

    /// Where a figure comes from.
    #[must_use]
    pub fn basis(&self, basis: &Basis) -> String {
        match basis {
            Basis::Maker { read, source } => {
                let key = match read {
                    TorqueBasis::Label => "advice-basis-label",
                    TorqueBasis::Document => "advice-basis-document",
                };
                self.fill(key, &[("source", source.into())])
            }
            Basis::Table { table, row, column } => {
                let known = table.table().map(|table| self.code(table.head().known));
                self.fill(
                    "advice-basis-table",
                    &[
                        ("table", self.code(*table).into()),
                        ("row", row.into()),
                        ("column", self.named_code("table-column", column).into()),
                        ("known", known.unwrap_or_default().into()),
                    ],
                )
            }
            Basis::Calculation(bolt) => self.calculation(bolt),
        }
    }

    /// Cautions in words, in the order given.
    #[must_use]
    pub fn cautions(&self, cautions: &[Caution]) -> Vec<String> {
        cautions.iter().map(|caution| self.code(*caution)).collect()
    }

    /// What stands in the place of a basis: a figure is wanted and not known, or none belongs here.
    fn without_figure(&self, advice: &Advice) -> String {
        self.say(if advice.missing.is_empty() {
            "advice-no-torque"
        } else {
            "advice-no-figure"
        })
    }

    fn check(&self, advice: &Advice) -> Option<String> {
        let (check, target) = (advice.check.as_ref()?, advice.target.as_ref()?);
        let mut args = vec![("check", self.torque(check).into())];
        if advice.found_by == FoundBy::FullValue {
            return Some(self.fill("advice-check-full", &args));
        }
        args.push(("percent", self.percent(check, &target.torque).into()));
        args.push(("target", target.torque.text().into()));
        Some(self.fill("advice-check", &args))
    }

    fn percent(&self, check: &Stated<TorqueUnit>, target: &Stated<TorqueUnit>) -> String {
        self.number(100.0 * check.value() / target.value(), 0)
    }

    fn question(&self, advice: &Advice) -> String {
        self.say(match advice.found_by {
            FoundBy::Look | FoundBy::Mark | FoundBy::SeatAndHeat => "advice-question-look",
            FoundBy::Tug | FoundBy::PullEach => "advice-question-tug",
            _ => "advice-question-check",
        })
    }

    fn set(&self, target: &Target) -> String {
        self.fill(
            "advice-set",
            &[("target", self.torque(&target.torque).into())],
        )
    }

    fn other(&self, other: &Target) -> String {
        let (torque, basis) = (self.torque(&other.torque), self.basis(&other.basis));
        let args = [("torque", torque.into()), ("basis", basis.into())];
        self.fill("advice-other", &args)
    }

    fn missing(&self, missing: &[Missing]) -> Option<String> {
        let what: Vec<String> = missing.iter().map(|what| self.code(*what)).collect();
        let args = [("what", what.join(", ").into())];
        (!what.is_empty()).then(|| self.fill("advice-missing", &args))
    }

    fn calculation(&self, bolt: &Calculation) -> String {
        let inch = TorqueUnit::InchPounds;
        let factor = |value: f64| self.number(value, 2);
        self.fill(
            "advice-basis-calculation",
            &[
                ("factor", factor(bolt.factor.typical).into()),
                ("diameter", self.shortest(bolt.diameter_mm, 2).into()),
                ("preload", self.number(bolt.preload_n, 0).into()),
                ("least", factor(bolt.factor.lowest).into()),
                ("most", factor(bolt.factor.highest).into()),
                ("low", self.torque_in(bolt.band.lowest, inch).into()),
                ("high", self.torque_in(bolt.band.highest, inch).into()),
            ],
        )
    }
}

/// Whether setting to the figure is part of how the terminal is set right.
fn sets(advice: &Advice) -> bool {
    let by_torque = !matches!(
        advice.left_by,
        LeftBy::Refer | LeftBy::OutOfService | LeftBy::StripAnew | LeftBy::RemakeSplice
    );
    let renewed_alone = advice.action == Action::LeaveAlone && advice.left_by == LeftBy::Replace;
    by_torque && advice.action != Action::Refer && !renewed_alone
}
