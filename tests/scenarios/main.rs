//! Whole walks through the crates together.

mod learned;
mod sample;
mod when;
