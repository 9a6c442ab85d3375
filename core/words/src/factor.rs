//! What a rank is made of, in words.

use crate::Words;
use baywalk_domain::ranking::{Factor, Finding};

impl Words {
    /// One factor of a rank: what was found, how much it counts, and where that comes from.
    ///
    /// # Example
    /// ```
    /// use baywalk_domain::ranking::{Factor, Finding, Nearby, WeightBasis};
    /// use baywalk_words::Words;
    /// let (found, basis) = (Finding::Nearby(Nearby::Fuel), WeightBasis::Practice);
    /// let factor = Factor { found, hundredths: 120, basis };
    /// assert_eq!(Words::for_locales(&["en"]).factor(&factor),
    ///     "Beside it: fuel, × 1.2 (common practice, no source)");
    /// ```
    #[must_use]
    pub fn factor(&self, factor: &Factor) -> String {
        let found = match factor.found {
            Finding::Fastening(kind) => self.code(kind),
            Finding::Look(kind) => self.code(kind),
            Finding::Age(band) => self.code(band),
            Finding::Distance(band) => self.code(band),
            Finding::History(case) => self.code(case),
            Finding::Current(band, true) => self.code(band),
            Finding::Current(band, false) => {
                self.fill("plan-typical", &[("current", self.code(band).into())])
            }
            Finding::Conductor(case) => self.code(case),
            Finding::Behind(band) => self.code(band),
            Finding::Nearby(case) => self.code(case),
            Finding::Priority(priority) => self.code(priority),
        };
        let args = [
            ("factor", self.code(factor.kind()).into()),
            ("found", found.into()),
            ("times", self.hundredths(factor.hundredths).into()),
            ("basis", self.code(factor.basis).into()),
        ];
        self.fill("plan-factor", &args)
    }

    /// Hundredths as a number with at most two decimals.
    #[must_use]
    pub fn hundredths(&self, hundredths: u32) -> String {
        self.shortest(f64::from(hundredths) / 100.0, 2)
    }
}
