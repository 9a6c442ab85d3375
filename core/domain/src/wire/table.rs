//! The tables of conductor resistance that stand in this crate.

use crate::published::tables;

tables! {
    /// The tables of conductor resistance.
    WireTable as "wire-table" {
        /// NEC chapter 9 table 8, at 75 °C.
        NecTable8 = "nec_ch9_table_8" from "tables/nec_table8.csv",
        /// IEC 60228, at 20 °C.
        Iec60228 = "iec_60228" from "tables/iec_60228.csv",
    }
}

impl WireTable {
    /// The temperature of its values in degrees Celsius.
    #[must_use]
    pub const fn celsius(self) -> f64 {
        match self {
            Self::NecTable8 => 75.0,
            Self::Iec60228 => 20.0,
        }
    }

    /// Ohms per metre in one of the table's unit.
    pub(super) const fn ohm_per_metre(self) -> f64 {
        match self {
            Self::NecTable8 => 1.0 / 304.8,
            Self::Iec60228 => 1.0 / 1000.0,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::WireTable;
    use crate::coded::Coded;
    use crate::published::Table;
    use crate::rig::WireSize;

    #[test]
    fn every_data_file_reads_whole_and_every_value_is_a_number() {
        for id in WireTable::ALL {
            let table = Table::read(id.text()).unwrap();
            for row in table.rows() {
                assert!(WireSize::parse(row.name()).is_ok(), "{}", row.name());
                for column in table.columns().iter().skip(1) {
                    if row.cell(column).is_some() {
                        assert!(row.number(column).is_some(), "{} {column}", row.name());
                    }
                }
            }
        }
    }
}
