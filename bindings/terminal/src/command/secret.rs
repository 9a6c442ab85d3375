//! The passphrase: typed without being shown, or the first line of standard input.

use baywalk_logbook::backup::Passphrase;
use baywalk_screens::{Problem, ProblemKind};
use baywalk_words::Words;
use std::io::IsTerminal;

/// Asks for the passphrase of a backup; twice where it is a new one and a person types it.
pub(super) fn ask(words: &Words, new: bool) -> Result<Passphrase, Problem> {
    let typed = read(words, &words.say("backup-ask-passphrase"))?;
    if new && std::io::stdin().is_terminal() {
        let again = read(words, &words.say("backup-ask-again"))?;
        if typed != again {
            let sentence = words.say("backup-not-the-same");
            return Err(Problem::new(ProblemKind::Input, sentence));
        }
    }
    let none = || Problem::new(ProblemKind::Input, words.say("backup-empty-passphrase"));
    Passphrase::new(&typed).ok_or_else(none)
}

fn read(words: &Words, question: &str) -> Result<String, Problem> {
    let typed = if std::io::stdin().is_terminal() {
        rpassword::prompt_password(format!("{question} "))
    } else {
        let mut text = String::new();
        let read = std::io::stdin().read_line(&mut text);
        read.map(|_| text.trim_end_matches(['\n', '\r']).to_owned())
    };
    typed.map_err(|error| {
        let args = [("why", error.to_string().into())];
        Problem::new(ProblemKind::Input, words.fill("backup-unread", &args))
    })
}
