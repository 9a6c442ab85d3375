//! Numbers and quantities as a locale writes them.

use crate::Words;
use baywalk_domain::units::{Stated, Torque, TorqueUnit, Unit};

impl Words {
    /// A number with so many decimals and the locale's decimal mark; there is no thousands mark.
    ///
    /// # Example
    /// ```
    /// use baywalk_words::Words;
    /// assert_eq!(Words::for_locales(&["en"]).number(1234.56, 1), "1234.6");
    /// assert_eq!(Words::for_locales(&["es-CO"]).number(1234.56, 1), "1234,6");
    /// assert_eq!(Words::for_locales(&["es-MX"]).number(-0.04, 1), "0.0");
    /// ```
    #[must_use]
    pub fn number(&self, value: f64, decimals: usize) -> String {
        let digits = format!("{value:.decimals$}");
        let zero = |text: &str| text.chars().all(|c| c == '0' || c == '.');
        let signed = match digits.strip_prefix('-') {
            Some(body) if zero(body) => body.to_owned(),
            _ => digits,
        };
        signed.replace('.', &self.mark.to_string())
    }

    /// A number with at most so many decimals, zeros at its end left out.
    pub(crate) fn shortest(&self, value: f64, most: usize) -> String {
        let text = self.number(value, most);
        if text.contains(self.mark) {
            text.trim_end_matches('0')
                .trim_end_matches(self.mark)
                .to_owned()
        } else {
            text
        }
    }

    /// A quantity as it was stated: the typed text unchanged, and the word of its unit.
    ///
    /// # Example
    /// ```
    /// use baywalk_domain::units::{Stated, VoltageUnit};
    /// use baywalk_words::Words;
    /// let typed = Stated::parse("121.30", VoltageUnit::Volts)?;
    /// assert_eq!(Words::for_locales(&["es-CO"]).typed(&typed), "121.30 V");
    /// # Ok::<(), baywalk_domain::units::StatedFault>(())
    /// ```
    #[must_use]
    pub fn typed<U: Unit>(&self, stated: &Stated<U>) -> String {
        self.figure(stated.text(), stated.unit())
    }

    /// A torque as it was stated, with the same torque in N·m behind it; one stated in N·m has
    /// inch-pounds behind it. The second figure is rounded by 1 % at most.
    ///
    /// # Example
    /// ```
    /// use baywalk_domain::units::{Stated, TorqueUnit};
    /// use baywalk_words::Words;
    /// let words = Words::for_locales(&["en"]);
    /// let label = Stated::parse("20", TorqueUnit::InchPounds)?;
    /// assert_eq!(words.torque(&label), "20 inch-pounds (2.26 N·m)");
    /// let metric = Stated::parse("2.5", TorqueUnit::NewtonMetres)?;
    /// assert_eq!(words.torque(&metric), "2.5 N·m (22.1 inch-pounds)");
    /// # Ok::<(), baywalk_domain::units::StatedFault>(())
    /// ```
    #[must_use]
    pub fn torque(&self, stated: &Stated<TorqueUnit>) -> String {
        let also = match stated.unit() {
            TorqueUnit::NewtonMetres => TorqueUnit::InchPounds,
            _ => TorqueUnit::NewtonMetres,
        };
        let number = self.torque_number(stated.quantity(), also);
        self.fill(
            "unit-torque",
            &[
                ("number", stated.text().into()),
                ("unit", self.code(stated.unit()).into()),
                ("also", number.into()),
                ("alsounit", self.code(also).into()),
            ],
        )
    }

    /// A computed torque in a unit, rounded by 1 % at most.
    #[must_use]
    pub fn torque_in(&self, torque: Torque, unit: TorqueUnit) -> String {
        self.figure(&self.torque_number(torque, unit), unit)
    }

    fn torque_number(&self, torque: Torque, unit: TorqueUnit) -> String {
        let value = torque.in_unit(unit);
        let decimals = match value {
            v if v < 5.0 => 2,
            v if v < 50.0 => 1,
            v if v < 100.0 && unit == TorqueUnit::NewtonMetres => 1,
            _ => 0,
        };
        self.number(value, decimals)
    }

    fn figure<U: Unit>(&self, number: &str, unit: U) -> String {
        self.fill(
            "unit-figure",
            &[("number", number.into()), ("unit", self.code(unit).into())],
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn torque(text: &str, unit: TorqueUnit) -> String {
        let stated = Stated::parse(text, unit).unwrap();
        Words::for_locales(&["en"]).torque(&stated)
    }

    /// N·m by the exact factor 0.112 984 829 (NIST SP 811, appendix B.8, from memory).
    #[test]
    fn torque_has_both_units() {
        let inch = TorqueUnit::InchPounds;
        assert_eq!(torque("45", inch), "45 inch-pounds (5.1 N·m)");
        assert_eq!(torque("9", inch), "9 inch-pounds (1.02 N·m)");
        assert_eq!(torque("275", inch), "275 inch-pounds (31.1 N·m)");
        assert_eq!(
            torque("8", TorqueUnit::FootPounds),
            "8 foot-pounds (10.8 N·m)"
        );
        assert_eq!(
            torque("150", TorqueUnit::FootPounds),
            "150 foot-pounds (203 N·m)"
        );
        let metre = TorqueUnit::NewtonMetres;
        assert_eq!(torque("25", metre), "25 N·m (221 inch-pounds)");
        assert_eq!(torque("0,4", metre), "0,4 N·m (3.54 inch-pounds)");
    }

    #[test]
    fn the_shortest_number_keeps_what_counts() {
        let words = Words::for_locales(&["en"]);
        assert_eq!(words.shortest(100.0, 2), "100");
        assert_eq!(words.shortest(0.4425, 2), "0.44");
        assert_eq!(words.shortest(0.0, 2), "0");
        assert_eq!(Words::for_locales(&["es"]).shortest(2.50, 2), "2,5");
    }
}
