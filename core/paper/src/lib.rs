#![doc = include_str!("../README.md")]

mod drawn;
mod html;
mod pdf;
mod plain;
mod sheet;

pub mod calendar;
pub mod chart;
pub mod labels;
pub mod photo;
pub mod report;
pub mod table;

pub use pdf::{Paper, Unwritten};
pub use sheet::Sheet;
