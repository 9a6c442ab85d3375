//! The tables of torque that stand in this crate.

use crate::published::tables;

tables! {
    /// The tables of torque, threads and bolt materials.
    TableId as "table" {
        /// NEC Annex I table I.1: slotted heads No. 10 and larger, hexagon heads.
        AnnexI1 = "nec_annex_i1" from "tables/annex_i1.csv",
        /// NEC Annex I table I.2: slotted heads smaller than No. 10.
        AnnexI2 = "nec_annex_i2" from "tables/annex_i2.csv",
        /// NEC Annex I table I.3: socket screws.
        AnnexI3 = "nec_annex_i3" from "tables/annex_i3.csv",
        /// NETA table 100.12.1: steel.
        NetaSteel = "neta_100_12_1" from "tables/neta_steel.csv",
        /// NETA tables 100.12.2 to 100.12.4: bronze, aluminium, stainless.
        NetaOther = "neta_100_12_2" from "tables/neta_other.csv",
        /// NEMA CC 1 bolts.
        NemaCc1 = "nema_cc1" from "tables/nema_cc1.csv",
        /// One switch maker's studs.
        SwitchMaker = "switch_maker" from "tables/switch_maker.csv",
        /// One telecom plant maker's studs.
        TelecomMaker = "telecom_maker" from "tables/telecom_maker.csv",
        /// One power supply maker's studs with spring washers.
        SupplyMaker = "supply_maker" from "tables/supply_maker.csv",
        /// One battery maker's terminals.
        BatteryMaker = "battery_maker" from "tables/battery_maker.csv",
        /// IEC metric terminal screws.
        IecMetric = "iec_60947_1_4" from "tables/iec_metric.csv",
        /// Standard pitches of threads.
        Threads = "threads" from "tables/threads.csv",
        /// Proof stress of bolt grades.
        ProofStress = "proof_stress" from "tables/proof_stress.csv",
        /// Nut factors.
        NutFactors = "nut_factors" from "tables/nut_factors.csv",
    }
}

#[cfg(test)]
mod tests {
    use super::TableId;
    use crate::coded::Coded;
    use crate::published::Table;
    use crate::units::TorqueUnit;

    #[test]
    fn every_data_file_reads_whole_and_every_value_is_a_value() {
        for id in TableId::ALL {
            let table = Table::read(id.text()).unwrap();
            assert!(table.rows().count() > 0, "{id:?}");
            for row in table.rows() {
                assert!(!row.name().is_empty(), "{id:?}");
                for column in table.columns().iter().skip(1) {
                    let torques = TorqueUnit::from_code(table.head().unit).is_ok();
                    let words = ["largest", "form", "unit", "series"].contains(column);
                    if torques && !words && row.cell(column).is_some() {
                        assert!(
                            row.torque(column).is_some(),
                            "{id:?} {} {column}",
                            row.name()
                        );
                    } else if !words && row.cell(column).is_some() {
                        assert!(
                            row.number(column).is_some(),
                            "{id:?} {} {column}",
                            row.name()
                        );
                    }
                }
            }
        }
    }
}
