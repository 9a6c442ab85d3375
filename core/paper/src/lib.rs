#![doc = include_str!("../README.md")]

mod drawn;
mod sheet;

pub mod calendar;
pub mod report;
