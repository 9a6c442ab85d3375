//! The one owner of storage: rig files, ledger, photos, backup.

pub mod rigfile;
