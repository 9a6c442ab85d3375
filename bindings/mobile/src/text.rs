//! The words of the shells themselves: titles and keys that stand on no card.

use crate::{Baywalk, Fault};
use std::collections::HashMap;

/// The keys of the catalogue that a shell shows by itself.
const SHELL: [&str; 2] = ["shell-closed", "shell-back"];

#[uniffi::export]
impl Baywalk {
    /// The words of the shell, by their keys, in the person's language.
    ///
    /// # Errors
    /// None today; a shell treats one as any other.
    pub fn text(&self) -> Result<HashMap<String, String>, Fault> {
        let say = |key: &&str| ((*key).to_owned(), self.words.say(key));
        Ok(SHELL.iter().map(say).collect())
    }
}
