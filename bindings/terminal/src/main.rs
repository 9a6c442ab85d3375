//! The `baywalk` command: the core in a terminal.

mod calc;

use std::io::{Read, Write};
use std::process::ExitCode;

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    match answer(&words) {
        Ok(text) => match writeln!(std::io::stdout(), "{text}") {
            Ok(()) => ExitCode::SUCCESS,
            Err(_) => ExitCode::FAILURE,
        },
        Err(fault) => {
            let _ = writeln!(std::io::stderr(), "{fault}");
            ExitCode::from(2)
        }
    }
}

/// Answers `calc`, `calc NAME --schema` and `calc NAME` with an object on standard input.
fn answer(words: &[&str]) -> Result<String, Box<dyn std::error::Error>> {
    match words {
        ["calc"] => {
            let lines: Vec<String> = calc::names()
                .map(|(name, about)| format!("{name}: {about}"))
                .collect();
            Ok(lines.join("\n"))
        }
        ["calc", name, "--schema"] => Ok(calc::schema(name)?),
        ["calc", name] => {
            let mut input = String::new();
            std::io::stdin().read_to_string(&mut input)?;
            Ok(calc::run(name, &input)?)
        }
        _ => Err("Expected calc, calc NAME or calc NAME --schema.".into()),
    }
}
