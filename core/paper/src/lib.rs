#![doc = include_str!("../README.md")]

mod glyph;
mod sheet;

pub mod report;
