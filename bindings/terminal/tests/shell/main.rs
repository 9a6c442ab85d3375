//! The command tried as a person would: whole walks, wrong input, kills, two at once.

#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test that can't go on stops with the reason"
)]

mod bad_input;
mod by_hand;
mod calc;
mod cut_off;
mod kept_safe;
mod kills;
mod listings;
mod past;
mod photos;
mod plans;
mod prompts;
mod replay;
mod second_look;
mod set_up;
mod timing;
mod together;

use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};
use tempfile::TempDir;

/// The script of the sample walk.
const WREN: &str = include_str!("../../scripts/wren.jsonl");

/// A store in a folder of its own, and the command on it.
struct Shell {
    folder: TempDir,
}

impl Shell {
    fn new() -> Self {
        Self {
            folder: tempfile::tempdir().unwrap(),
        }
    }

    fn store(&self) -> PathBuf {
        self.folder.path().join("store")
    }

    fn path(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    fn write(&self, name: &str, text: &str) -> PathBuf {
        let path = self.path(name);
        std::fs::write(&path, text).unwrap();
        path
    }

    fn command(&self, args: &[&str]) -> Command {
        let mut command = Command::new(env!("CARGO_BIN_EXE_baywalk"));
        command
            .arg("--store")
            .arg(self.store())
            .args(if args.contains(&"--language") {
                &[][..]
            } else {
                &["--language", "en"]
            })
            .args(args);
        command.stdin(Stdio::null());
        command
    }

    fn run(&self, args: &[&str]) -> Output {
        self.command(args).output().unwrap()
    }

    fn typed(&self, args: &[&str], input: &str) -> Output {
        let mut child = self
            .command(args)
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .stderr(Stdio::piped())
            .spawn()
            .unwrap();
        child
            .stdin
            .take()
            .unwrap()
            .write_all(input.as_bytes())
            .unwrap();
        child.wait_with_output().unwrap()
    }

    /// Runs what must go well, and gives what it printed.
    fn ok(&self, args: &[&str]) -> String {
        let output = self.run(args);
        assert!(output.status.success(), "{args:?}: {}", said(&output));
        String::from_utf8(output.stdout).unwrap()
    }

    /// Runs what must fail with an exit code, and gives what it said.
    fn fails(&self, args: &[&str], code: i32) -> String {
        let output = self.run(args);
        let text = String::from_utf8_lossy(&output.stderr).into_owned();
        assert_eq!(
            output.status.code(),
            Some(code),
            "{args:?}: {}",
            said(&output)
        );
        text
    }

    fn replay(&self, script: &Path) -> Output {
        self.run(&["walk", "--script", script.to_str().unwrap()])
    }

    /// Number and digest of the newest entry; the digest stands for every byte before it.
    fn head(&self) -> (u64, String) {
        let value: serde_json::Value =
            serde_json::from_str(&self.ok(&["verify", "--json"])).unwrap();
        assert_eq!(value["whole"], true);
        (
            value["entries"].as_u64().unwrap(),
            value["digest"].as_str().unwrap().to_owned(),
        )
    }
}

fn said(output: &Output) -> String {
    format!(
        "{:?}\n{}\n{}",
        output.status,
        String::from_utf8_lossy(&output.stdout),
        String::from_utf8_lossy(&output.stderr)
    )
}
