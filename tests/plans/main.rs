//! The plan of the rigs that come with the tool, held against the custom of the trade.

mod sample;
