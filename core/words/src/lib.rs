#![doc = include_str!("../README.md")]

mod advice;
mod arg;
mod catalogue;
mod date;
mod factor;
mod fault;
mod finding;
mod found;
mod key;
mod name;
mod needs;
mod number;
mod reading;
mod refusal;
mod timing;
mod tool;
mod words;

pub use advice::AdviceText;
pub use arg::Arg;
pub use words::Words;
