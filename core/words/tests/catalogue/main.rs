//! The catalogue held against the tree: lists, keys and sentences.

#[cfg(test)]
mod keys;
#[cfg(test)]
mod lists;
#[cfg(test)]
mod sample;
#[cfg(test)]
mod sentences;
#[cfg(test)]
mod tree;
