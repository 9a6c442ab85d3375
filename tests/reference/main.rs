//! Values that are published outside this project, written down a second time here and held
//! against what the project gives.
//!
//! No standard's own text was at hand: "second hand" means read in a copy or quotation of the named
//! standard, "from memory" means from memory of it; each check says which.

#[cfg(test)]
mod adapters;
#[cfg(test)]
mod annex_i;
#[cfg(test)]
mod bolts;
#[cfg(test)]
mod service;
#[cfg(test)]
mod studs;
#[cfg(test)]
mod tools;
#[cfg(test)]
mod units;
#[cfg(test)]
mod wires;
