//! What a terminal still needs before it may be touched.

use crate::Words;
use baywalk_domain::rig::{Book, Check};
use baywalk_domain::walk::Needs;

impl Words {
    /// What a terminal still needs before it may be touched, as whole sentences.
    #[must_use]
    pub fn needs<'b>(&self, needs: &Needs, book: impl Into<Option<&'b Book>>) -> String {
        let book = book.into();
        let text = match needs {
            Needs::OpenBay(bay) => self.fill(
                "walk-needs-open",
                &[("bay", self.bay_name(*bay, book).into())],
            ),
            Needs::Source(source) => {
                let source = self.source_name(*source, book);
                self.fill("walk-needs-source", &[("source", source.into())])
            }
            Needs::Sets(device) => {
                let device = self.device_name(*device, book);
                self.fill("walk-needs-sets", &[("device", device.into())])
            }
            Needs::Pairs { device, left, next } => self.fill(
                "walk-needs-pairs",
                &[
                    ("device", self.device_name(*device, book).into()),
                    ("left", (*left).into()),
                    ("pair", self.pair(next).into()),
                ],
            ),
            Needs::LiveAgain(supply) => {
                let supply = self.code(*supply);
                self.fill("walk-needs-live-again", &[("supply", supply.into())])
            }
            Needs::FoundLive(device) => {
                let device = self.device_name(*device, book);
                self.fill("walk-needs-found-live", &[("device", device.into())])
            }
            Needs::Lapsed(lapse) => {
                self.fill("walk-needs-lapsed", &[("lapse", self.code(*lapse).into())])
            }
        };
        crate::words::sentence(&text)
    }

    /// A pair of conductors that must read dead.
    ///
    /// # Example
    /// ```
    /// use baywalk_domain::rig::{Check, Conductor, SupplyKind};
    /// use baywalk_words::Words;
    /// let pair = Check {
    ///     set: "shore in".into(),
    ///     from: Conductor::L1,
    ///     other_set: "shore in".into(),
    ///     to: Conductor::N,
    ///     supply: SupplyKind::Ac,
    /// };
    /// assert_eq!(Words::for_locales(&["en"]).pair(&pair), "L1 to N, shore in, AC");
    /// ```
    #[must_use]
    pub fn pair(&self, check: &Check) -> String {
        let (from, to) = (self.code(check.from), self.code(check.to));
        let mut args = vec![
            ("from", from.into()),
            ("to", to.into()),
            ("set", check.set.as_str().into()),
            ("supply", self.code(check.supply).into()),
        ];
        if check.set == check.other_set {
            self.fill("walk-pair", &args)
        } else {
            args.push(("other", check.other_set.as_str().into()));
            self.fill("walk-pair-between", &args)
        }
    }
}
