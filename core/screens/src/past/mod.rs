//! Past: one terminal through the years, which kinds loosen, how the interval was chosen.

mod chart;
mod facts;
mod screen;

pub use chart::{Subject, chart};
pub use screen::{PastPoint, PastScreen, PastView, ToldChart, past};
