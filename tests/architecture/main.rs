//! The rules of the house, read off the tree.

#![expect(
    clippy::unwrap_used,
    reason = "a test that can't go on stops with the reason"
)]

mod layers;
mod shells;
mod sources;
mod tree;
