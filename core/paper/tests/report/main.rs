//! The report of a walk that was put together by hand: what it says, in both languages, that it is
//! one well-formed file, and that no text from people gets out of its place.

#[cfg(test)]
mod book;
#[cfg(test)]
mod content;
#[cfg(test)]
mod form;
#[cfg(test)]
mod golden;
#[cfg(test)]
mod hostile;
#[cfg(test)]
mod labels;
#[cfg(test)]
mod pdf;
#[cfg(test)]
mod scene;
#[cfg(test)]
mod walk;
