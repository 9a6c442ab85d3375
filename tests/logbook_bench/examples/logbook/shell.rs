//! What is asked of the system's own commands.

use std::path::Path;
use std::process::Command;

/// Runs a command; gives what it printed.
pub(crate) fn run(name: &str, args: &[&str]) -> String {
    let done = Command::new(name).args(args).output().unwrap();
    let told = String::from_utf8_lossy(&done.stderr);
    assert!(done.status.success(), "{name} {args:?}: {told}");
    String::from_utf8(done.stdout).unwrap()
}

/// Copies a folder and waits until it is on the disk.
pub(crate) fn copy(from: &Path, to: &Path) {
    run("cp", &["-r", text(from), text(to)]);
    run("sync", &["-f", text(to)]);
}

/// Lets go of what the system has in memory of a file.
pub(crate) fn forget(file: &Path) {
    let file = format!("if={}", file.display());
    run("dd", &[&file, "iflag=nocache", "count=0", "status=none"]);
}

pub(crate) fn load() -> String {
    let load = std::fs::read_to_string("/proc/loadavg").unwrap_or_default();
    load.split(' ').take(3).collect::<Vec<_>>().join(" ")
}

/// The bytes of the files of a folder.
pub(crate) fn size(folder: &Path) -> u64 {
    let said = run("du", &["-sb", text(folder)]);
    said.split('\t').next().unwrap().parse().unwrap()
}

pub(crate) fn text(path: &Path) -> &str {
    path.to_str().unwrap()
}
