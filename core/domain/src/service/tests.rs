use super::circuit::{Circuit, Feed};
use super::*;
