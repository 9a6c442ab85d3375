#![doc = include_str!("../README.md")]

mod drawn;
mod sheet;

pub mod calendar;
pub mod chart;
pub mod report;
pub mod table;
