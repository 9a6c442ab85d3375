//! Opening to a first screen, beside reading the same pages: each time in a process of its own, with
//! the file in the system's memory or not.

use crate::shell::{self, text};
use crate::times::Times;
use baywalk_domain::ids::RigId;
use baywalk_logbook::store::DATABASE;
use baywalk_screens::Core;
use baywalk_screens::rig::rig;
use baywalk_screens::rigs::rigs;
use baywalk_words::Words;
use std::collections::BTreeSet;
use std::fs::File;
use std::os::unix::fs::FileExt;
use std::path::Path;
use std::time::Instant;

/// The word that makes this program do one opening and print how long it took.
pub(crate) const CHILD: &str = "open-once";

const ROUNDS: usize = 31;
const PAGE: usize = 4096;

/// One opening: what to show, the folder, the rig; or the pages to read. A new logbook is opened
/// first, so that the program itself is in memory.
pub(crate) fn child(args: &[String]) {
    let [what, store, rest] = args else { return };
    let store = Path::new(store);
    let words = || Words::for_locales(&["en"]);
    let fresh = tempfile::tempdir_in(store.parent().unwrap()).unwrap();
    drop(rigs(&Core::open(fresh.path(), words()).unwrap()).unwrap());
    let words = words();
    let begun = Instant::now();
    match what.as_str() {
        "read" => read(&store.join(DATABASE), rest),
        what => show(
            &Core::open(store, words).unwrap(),
            what,
            rest.parse().unwrap(),
        ),
    }
    println!("{}", begun.elapsed().as_nanos());
}

fn show(core: &Core, what: &str, of: RigId) {
    match what {
        "rigs" => drop(rigs(core).unwrap()),
        "rig" => drop(rig(core, of).unwrap()),
        "act" => drop(core.logbook.moved_running(of).unwrap()),
        _ => {
            let point = core.logbook.book(of).unwrap().points.first().unwrap().id;
            let begun = Instant::now();
            let past = core.logbook.point_past(point).unwrap();
            println!(
                "past of {} walks {} ns",
                past.len(),
                begun.elapsed().as_nanos()
            );
        }
    }
}

fn read(file: &Path, pages: &str) {
    let file = File::open(file).unwrap();
    let mut page = vec![0; PAGE];
    for at in pages.split(',').map(|at| at.parse().unwrap()) {
        file.read_exact_at(&mut page, at).unwrap();
    }
}

pub(crate) fn run(store: &Path, of: RigId) {
    println!("\nopened to a first screen, medians of {ROUNDS}");
    for what in ["rigs", "rig", "act", "past"] {
        let (reads, pages) = pages(store, what, of);
        if what == "past" {
            println!("past of a point: {} pages with its book", pages.len());
            println!("{}", once(&[CHILD, what, text(store), &of.to_string()]).0);
            continue;
        }
        let list: Vec<String> = pages.iter().map(ToString::to_string).collect();
        let list = list.join(",");
        let of = of.to_string();
        let opening = [CHILD, what, text(store), &of];
        let reading = [CHILD, "read", text(store), &list];
        println!("{what}: {reads} reads, {} pages", pages.len());
        for cold in [true, false] {
            let (mut opened, mut limit) = (Times::default(), Times::default());
            for _ in 0..ROUNDS {
                for (times, args) in [(&mut opened, &opening), (&mut limit, &reading)] {
                    if cold {
                        shell::forget(&store.join(DATABASE));
                    }
                    times.add(std::time::Duration::from_nanos(once(args).1));
                }
            }
            let (time, least) = (opened.median(), limit.median());
            let name = if cold { "cold" } else { "warm" };
            println!(
                "  {name} {time:.0} µs, pages alone {least:.0} µs, {:.2}",
                time / least
            );
        }
    }
}

/// Runs this program once; gives what it printed and the last number of it.
fn once(args: &[&str]) -> (String, u64) {
    let program = std::env::current_exe().unwrap();
    let said = shell::run(text(&program), args);
    let last = said.trim().lines().last().unwrap().parse().unwrap();
    (said.trim().to_owned(), last)
}

/// How many reads of the database an opening makes, and where.
fn pages(store: &Path, what: &str, of: RigId) -> (usize, BTreeSet<u64>) {
    let program = std::env::current_exe().unwrap();
    let traced = store.with_file_name("traced");
    let of = of.to_string();
    let args = ["-f", "-y", "-e", "trace=pread64", "-o", text(&traced)];
    let opening = [text(&program), CHILD, what, text(store), &of];
    shell::run("strace", &[&args[..], &opening[..]].concat());
    let said = std::fs::read_to_string(&traced).unwrap();
    let file = format!("{}>", store.join(DATABASE).display());
    let of_file = said.lines().filter(|line| line.contains(&file));
    let ats: Vec<u64> = of_file.filter_map(at).collect();
    let page = u64::try_from(PAGE).unwrap();
    (ats.len(), ats.iter().map(|at| at / page * page).collect())
}

/// Where a read starts: the last number of the call.
fn at(line: &str) -> Option<u64> {
    let call = line.split(") = ").next()?;
    call.rsplit(", ").next()?.parse().ok()
}
