//! Charts: what they tell and draw with nothing, with little, and with enough.

#[cfg(test)]
mod kinds;
#[cfg(test)]
mod rest;
