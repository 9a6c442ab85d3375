//! Scripts: walks as they were entered, one act a line, to be replayed.
//!
//! The first line is the head: `{"script": 1, "seed": "wren-2027"}`. Each further line is one act
//! with its time, calling things by people's codes. The act's name in the ledger comes from the
//! seed and the number of the line, so that a replay that was cut off goes on where it stopped and
//! two replays give the same ledger.

mod about;
mod act;
mod book;
mod bring;
mod fault;
mod found;
#[cfg(test)]
mod hostile;
mod line;
mod run;
mod timing;
mod written;

pub(crate) use fault::ScriptFault;
pub(crate) use line::Script;
pub(crate) use run::{Step, run, words};
