//! The words of the shells themselves: titles and keys that stand on no card.

use crate::{Baywalk, Fault};
use std::collections::HashMap;

/// The keys of the catalogue that a shell shows by itself.
const SHELL: [&str; 82] = [
    "told-recorded",
    "shell-photo",
    "shell-pins",
    "shell-pin-where",
    "shell-pin-before",
    "shell-pin-out",
    "shell-pin-next",
    "shell-pins-done",
    "shell-again",
    "shell-set-up",
    "shell-set-up-here",
    "shell-facts",
    "shell-retire",
    "shell-retire-sure",
    "shell-first-walk",
    "shell-text-sample",
    "shell-passphrase",
    "shell-restore",
    "shell-restore-now",
    "set-up-bay",
    "set-up-device-new",
    "set-up-terminal",
    "set-up-look-new",
    "shell-when",
    "shell-plan",
    "shell-plan-minutes",
    "shell-plan-make",
    "shell-plan-follow",
    "shell-plan-leave",
    "shell-plan-anew",
    "shell-calendar",
    "shell-language",
    "shell-language-phone",
    "shell-language-en",
    "shell-language-es",
    "shell-awake",
    "shell-awake-note",
    "shell-cloud",
    "shell-cloud-note",
    "shell-closed",
    "shell-back",
    "shell-back-to-card",
    "shell-to-card",
    "shell-more",
    "shell-enter",
    "shell-erase",
    "shell-separator",
    "shell-rigs",
    "shell-rig",
    "shell-add-rig",
    "shell-rig-name",
    "shell-close-to",
    "shell-torque",
    "shell-safe",
    "shell-result",
    "shell-begin",
    "shell-go-on",
    "shell-second-look",
    "shell-label-first",
    "shell-papers",
    "shell-hand-on",
    "shell-out-of-service",
    "shell-not-judged",
    "shell-alive",
    "shell-had-moved",
    "shell-findings",
    "shell-verify",
    "shell-back-up",
    "shell-look",
    "shell-look-day",
    "shell-look-dark",
    "shell-look-night",
    "shell-hand",
    "shell-hand-right",
    "shell-hand-left",
    "shell-advise",
    "shell-anew",
    "shell-label-number",
    "shell-notice-channel",
    "shell-notice-open",
    "shell-notice-no-time",
    "shell-notice-part-missing",
];

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
