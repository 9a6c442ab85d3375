//! What a person typed and can't be taken: every fault of the domain in whole sentences.

use crate::Words;
use baywalk_domain::coded::{Coded, UnknownCode};
use baywalk_domain::rig::{
    BookFault, CodeFault, FeedFault, TerminalFault, ThreadFault, WireSizeFault,
};
use baywalk_domain::torque::{AdapterFault, BoltFault, SettingFault};
use baywalk_domain::units::{
    CurrentUnit, DecimalFault, DistanceUnit, HourUnit, LengthFault, LengthUnit, OutOfRange,
    StatedFault, TorqueUnit, VoltageUnit,
};

impl Words {
    /// A word that is not in its list, with the words that would have been taken.
    #[must_use]
    pub fn unknown_code(&self, fault: &UnknownCode) -> String {
        let expected = fault.expected.join(", ");
        let args = [
            ("found", (&fault.found).into()),
            ("expected", expected.into()),
        ];
        self.fill("fault-unknown-code", &args)
    }

    /// A text that is no number.
    #[must_use]
    pub fn decimal_fault(&self, fault: &DecimalFault) -> String {
        self.fill("fault-number", &[("found", (&fault.found).into())])
    }

    /// A number that the quantity can't have.
    #[must_use]
    pub fn out_of_range(&self, fault: &OutOfRange) -> String {
        self.fill(
            "fault-range",
            &[
                ("found", self.shortest(fault.found, 3).into()),
                ("unit", self.unit_word(fault.unit).into()),
                ("quantity", self.quantity_word(fault.quantity).into()),
                ("least", self.shortest(fault.least, 2).into()),
                ("most", self.shortest(fault.most, 2).into()),
            ],
        )
    }

    /// A number with its unit that can't be taken.
    #[must_use]
    pub fn stated_fault(&self, fault: &StatedFault) -> String {
        match fault {
            StatedFault::Number(number) => self.decimal_fault(number),
            StatedFault::Unit(unit) => self.unknown_code(unit),
            StatedFault::Range(range) => self.out_of_range(range),
        }
    }

    /// A length that can't be taken.
    #[must_use]
    pub fn length_fault(&self, fault: &LengthFault) -> String {
        match fault {
            LengthFault::Form { found } => self.fill("fault-length", &[("found", found.into())]),
            LengthFault::Unit(unit) => self.unknown_code(unit),
            LengthFault::Range(range) => self.out_of_range(range),
        }
    }

    /// A text that names no thread.
    #[must_use]
    pub fn thread_fault(&self, fault: &ThreadFault) -> String {
        self.fill("fault-thread", &[("found", (&fault.found).into())])
    }

    /// A text that is no conductor size.
    #[must_use]
    pub fn wire_size_fault(&self, fault: &WireSizeFault) -> String {
        self.fill("fault-wire-size", &[("found", (&fault.found).into())])
    }

    /// A text that is no code.
    #[must_use]
    pub fn code_fault(&self, fault: &CodeFault) -> String {
        self.fill("fault-code", &[("found", (&fault.found).into())])
    }

    /// A text that names nothing that a set can be wired to.
    #[must_use]
    pub fn feed_fault(&self, fault: &FeedFault) -> String {
        match fault {
            FeedFault::Code(code) => self.code_fault(code),
            FeedFault::Set { found } => self.fill("fault-feed", &[("found", found.into())]),
        }
    }

    /// A terminal that can't be so.
    #[must_use]
    pub fn terminal_fault(&self, fault: &TerminalFault) -> String {
        match fault {
            TerminalFault::TorqueOnClamp { kind } => self.fill(
                "fault-terminal-torque-on-clamp",
                &[("kind", self.code(*kind).into())],
            ),
            TerminalFault::NoneAllowed => self.say("fault-terminal-none-allowed"),
            TerminalFault::RangeReversed => self.say("fault-terminal-range-reversed"),
            TerminalFault::HalfSet => self.say("fault-terminal-half-set"),
        }
    }

    /// A book that can't be so.
    ///
    /// # Example
    /// ```
    /// use baywalk_domain::rig::BookFault;
    /// use baywalk_words::Words;
    /// let text = Words::for_locales(&["en"]).book_fault(&BookFault::Months { months: 14 });
    /// assert!(text.starts_with("A rule of 14 months can't be."));
    /// ```
    #[must_use]
    pub fn book_fault(&self, fault: &BookFault) -> String {
        match fault {
            BookFault::CodeTaken { code } => {
                self.fill("fault-code-taken", &[("code", code.as_str().into())])
            }
            BookFault::Missing { of, what } => {
                let what = self.record_word(what);
                let args = [("code", of.as_str().into()), ("what", what.into())];
                self.fill("fault-missing-record", &args)
            }
            BookFault::NotWired { of, to } => {
                let args = [("code", of.as_str().into()), ("to", to.into())];
                self.fill("fault-not-wired", &args)
            }
            BookFault::NoSuchSet { of } => {
                self.fill("fault-no-such-set", &[("code", of.as_str().into())])
            }
            BookFault::Terminal { of, fault } => {
                let fault = self.terminal_fault(fault);
                let args = [("code", of.as_str().into()), ("fault", fault.into())];
                self.fill("fault-at-record", &args)
            }
            BookFault::ToolScale { of } => {
                self.fill("fault-tool-scale", &[("code", of.as_str().into())])
            }
            BookFault::Pin { bay } => self.fill("fault-pin", &[("code", bay.as_str().into())]),
            BookFault::NoPhoto { bay } => {
                self.fill("fault-no-photo", &[("code", bay.as_str().into())])
            }
            BookFault::NoBay => self.say("refused-not-in-book"),
            BookFault::EmptyName => self.say("fault-empty-name"),
            BookFault::Months { months } => {
                self.fill("fault-months", &[("months", (*months).into())])
            }
        }
    }

    /// Why no torque is calculated for a bolt.
    #[must_use]
    pub fn bolt_fault(&self, fault: &BoltFault) -> String {
        match fault {
            BoltFault::Pitch { thread } => {
                self.fill("fault-bolt-pitch", &[("thread", thread.into())])
            }
            BoltFault::Grade { grade } => {
                self.fill("fault-bolt-grade", &[("grade", self.code(*grade).into())])
            }
            BoltFault::Diameter { grade, most_mm } => {
                let most = self.shortest(*most_mm, 2);
                let args = [("grade", self.code(*grade).into()), ("most", most.into())];
                self.fill("fault-bolt-diameter", &args)
            }
            BoltFault::Finish { finish } => self.fill(
                "fault-bolt-finish",
                &[("finish", self.code(*finish).into())],
            ),
            BoltFault::Range(range) => self.out_of_range(range),
        }
    }

    /// Why a tool is not set to a torque.
    #[must_use]
    pub fn setting_fault(&self, fault: &SettingFault) -> String {
        let (key, misfit) = match fault {
            SettingFault::OutsideRange(misfit) => ("fault-setting-outside", misfit),
            SettingFault::TooCoarse(misfit) => ("fault-setting-coarse", misfit),
            SettingFault::Tool(misfit) => ("fault-setting-tool", misfit),
            SettingFault::Range(range) => return self.out_of_range(range),
        };
        self.fill(
            key,
            &[
                ("wanted", self.typed(&misfit.wanted).into()),
                ("least", self.typed(&misfit.least).into()),
                ("most", self.typed(&misfit.most).into()),
                ("step", self.typed(&misfit.step).into()),
            ],
        )
    }

    /// Why an adapter is not taken.
    #[must_use]
    pub fn adapter_fault(&self, fault: &AdapterFault) -> String {
        match fault {
            AdapterFault::Angle(range) => self.out_of_range(range),
            AdapterFault::NoLever { left_mm, lever_mm } => {
                let (left, lever) = (self.shortest(*left_mm, 1), self.shortest(*lever_mm, 1));
                let args = [("left", left.into()), ("lever", lever.into())];
                self.fill("fault-adapter-lever", &args)
            }
        }
    }

    /// What a kind of record is called.
    pub(crate) fn record_word(&self, what: &str) -> String {
        self.say(match what {
            "source" => "refusal-what-source",
            "bay" => "refusal-what-bay",
            "device" => "refusal-what-device",
            "point" => "refusal-what-point",
            "tool" => "refusal-what-tool",
            "rule" => "refusal-what-rule",
            "event" => "refusal-what-event",
            _ => "refusal-what-record",
        })
    }

    fn quantity_word(&self, quantity: &str) -> String {
        self.say(match quantity {
            "torque" => "fault-quantity-torque",
            "voltage" => "fault-quantity-voltage",
            "current" => "fault-quantity-current",
            "distance" => "fault-quantity-distance",
            "engine-hours" => "fault-quantity-hours",
            "length" => "fault-quantity-length",
            "temperature" => "fault-quantity-temperature",
            "check-percent" => "fault-quantity-check-percent",
            "adapter-angle" => "fault-quantity-angle",
            _ => "fault-quantity-other",
        })
    }

    /// The word of a unit by its code; a unit of no list is its own word.
    fn unit_word(&self, code: &str) -> String {
        fn of<U: Coded>(words: &Words, code: &str) -> Option<String> {
            U::from_code(code).ok().map(|unit| words.code(unit))
        }
        of::<TorqueUnit>(self, code)
            .or_else(|| of::<VoltageUnit>(self, code))
            .or_else(|| of::<CurrentUnit>(self, code))
            .or_else(|| of::<DistanceUnit>(self, code))
            .or_else(|| of::<HourUnit>(self, code))
            .or_else(|| of::<LengthUnit>(self, code))
            .unwrap_or_else(|| code.to_owned())
    }
}
