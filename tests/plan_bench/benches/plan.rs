//! The planner by the clock, on the tasks of a folder: one file a task, whole numbers parted by
//! blanks: seconds at hand; how many bays, and the seconds of each; how many points, and of each the
//! bay, the seconds and the worth; the ways between all places, or none.
//!
//! `bench.py` writes the tasks, calls this, and sets two solvers beside it.
#![expect(
    clippy::unwrap_used,
    clippy::print_stdout,
    reason = "a bench that can't go on stops with the reason, and tells what it found"
)]

use baywalk_domain::plan::{BayTask, Legs, PointTask, Proof, Task, plan};
use criterion::Criterion;
use std::hint::black_box;
use std::time::Duration;

fn read(text: &str) -> Task {
    let mut numbers = text.split_whitespace().map(|word| word.parse().unwrap());
    let mut next = || -> u32 { numbers.next().unwrap() };
    let seconds = next();
    let bay = |seconds| BayTask {
        seconds,
        points: Vec::new(),
        must: false,
    };
    let count = next();
    let mut bays: Vec<BayTask> = (0..count).map(|_| bay(next())).collect();
    for _ in 0..next() {
        let place = usize::try_from(next()).unwrap();
        let (seconds, worth, must) = (next(), next(), false);
        let bay = bays.get_mut(place).unwrap();
        bay.points.push(PointTask {
            seconds,
            worth,
            must,
        });
    }
    let places = next();
    let rows: Vec<Vec<u32>> = (0..places)
        .map(|_| (0..places).map(|_| next()).collect())
        .collect();
    let legs = (places > 0).then(|| Legs::new(rows).unwrap());
    Task::new(bays, legs, seconds).unwrap()
}

fn main() {
    let folder = std::env::var("BAYWALK_TASKS").unwrap_or_default();
    let mut criterion = Criterion::default()
        .without_plots()
        .sample_size(20)
        .warm_up_time(Duration::from_millis(200))
        .measurement_time(Duration::from_millis(1_000));
    // Without a folder, as where all benches are only tried, there is nothing to measure.
    let Ok(files) = std::fs::read_dir(&folder) else {
        return;
    };
    let mut paths: Vec<_> = files.map(|file| file.unwrap().path()).collect();
    paths.sort();
    for path in paths {
        let task = read(&std::fs::read_to_string(&path).unwrap());
        let name = path.file_stem().unwrap().to_string_lossy().into_owned();
        let found = plan(&task);
        let proved = found.proof == Proof::Best;
        println!("worth {name} {} {} {proved}", found.worth, found.bound);
        criterion.bench_function(&name, |bench| bench.iter(|| plan(black_box(&task))));
    }
    criterion.final_summary();
}
