//! Whole walks through the crates together.

mod sample;
