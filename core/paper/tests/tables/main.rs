//! Tables: the form of CSV, text that would be run, text that tries to get out of its cell.
//!
//! Form: RFC 4180. What runs: OWASP, "CSV Injection" (from memory).

#[cfg(test)]
mod facts;
#[cfg(test)]
mod form;
#[cfg(test)]
mod guard;
