//! How a photo of 12 megapixels is taken in, beside `vipsthumbnail` (Debian `libvips-tools`) that makes
//! the same two sizes, and `sha256sum`: `cargo run --release -p baywalk-tests --example photo_bench`.
//! Each run is a process of its own, measured by `/usr/bin/time` (Debian `time`).

#![expect(
    clippy::unwrap_used,
    clippy::print_stdout,
    clippy::indexing_slicing,
    reason = "an example that can't go on stops with the reason, and prints what it measured"
)]

use baywalk_logbook::ledger::Digest;
use baywalk_logbook::photo::make;
use baywalk_tests::mutate::Numbers;
use jpeg_encoder::{ColorType, Encoder};
use std::path::{Path, PathBuf};
use std::process::Command;

const ROUNDS: usize = 7;

/// Seconds of the wall clock, seconds of processors, megabytes at most.
type Cost = [f64; 3];

fn main() {
    let args: Vec<String> = std::env::args().skip(1).collect();
    if let [file, folder] = args.as_slice() {
        return take(Path::new(file), Path::new(folder));
    }
    println!(
        "load {}",
        std::fs::read_to_string("/proc/loadavg").unwrap().trim()
    );
    let folder = tempfile::tempdir().unwrap();
    for (width, height) in [(4032, 3024), (8160, 6120)] {
        let file = folder.path().join(format!("{width}.jpg"));
        std::fs::write(&file, synthetic(width, height)).unwrap();
        let bytes = file.metadata().unwrap().len();
        let (mut ours, mut peer) = (Vec::new(), Vec::new());
        for _ in 0..ROUNDS {
            ours.push(taken_in(&file, folder.path()));
            peer.push(by_peer(&file, folder.path()));
        }
        let (ours, peer) = (median(&ours), median(&peer));
        println!("{width} × {height}, {bytes} bytes, medians of {ROUNDS}");
        println!(
            "  taken in       {:.3} s, {:.3} s of processors, {:.0} MB",
            ours[0], ours[1], ours[2]
        );
        println!(
            "  vipsthumbnail  {:.3} s, {:.3} s of processors, {:.0} MB",
            peer[0], peer[1], peer[2]
        );
        println!(
            "  ÷              {:.2}, {:.2}, {:.2}",
            ours[0] / peer[0],
            ours[1] / peer[1],
            ours[2] / peer[2]
        );
    }
}

/// Takes one photo in, in this process: both sizes, without what tells of it, and its digest.
fn take(file: &Path, folder: &Path) {
    let made = make(std::fs::read(file).unwrap(), false).unwrap();
    let digest = Digest::of(&made.master);
    std::fs::write(folder.join(format!("{digest}.jpg")), &made.master).unwrap();
    std::fs::write(folder.join(format!("{digest}-small.jpg")), &made.thumbnail).unwrap();
}

fn taken_in(file: &Path, folder: &Path) -> Cost {
    let own = std::env::current_exe().unwrap();
    timed(&[own, file.to_owned(), folder.to_owned()])
}

/// Both sizes by the peer, one after another, and a digest; the larger of their peaks.
fn by_peer(file: &Path, folder: &Path) -> Cost {
    let size = |edge: u32, name: &str| {
        let out = folder.join(name).display().to_string() + "[Q=80,strip]";
        let args = ["vipsthumbnail", "--size", &edge.to_string(), "-o", &out].map(PathBuf::from);
        timed(&[&args[..], &[file.to_owned()]].concat())
    };
    let sum = timed(&[PathBuf::from("sha256sum"), file.to_owned()]);
    let parts = [size(1600, "large.jpg"), size(320, "small.jpg"), sum];
    let add = |place: usize| parts.iter().map(|part| part[place]).sum();
    [
        add(0),
        add(1),
        parts.iter().map(|part| part[2]).fold(0.0, f64::max),
    ]
}

fn timed(command: &[PathBuf]) -> Cost {
    let output = Command::new("/usr/bin/time")
        .args(["-f", "%e %U %S %M"])
        .args(command)
        .output()
        .unwrap();
    let said = String::from_utf8(output.stderr).unwrap();
    let last = said.lines().last().unwrap();
    let numbers: Vec<f64> = last.split(' ').map(|text| text.parse().unwrap()).collect();
    [numbers[0], numbers[1] + numbers[2], numbers[3] / 1024.0]
}

fn median(costs: &[Cost]) -> Cost {
    [0, 1, 2].map(|place| {
        let mut one: Vec<f64> = costs.iter().map(|cost| cost[place]).collect();
        one.sort_by(f64::total_cmp);
        one[one.len() / 2]
    })
}

/// A photo of waves of many lengths, edges and grain, about as large as one of a camera.
fn synthetic(width: u16, height: u16) -> Vec<u8> {
    let mut numbers = Numbers::new(1);
    let mut pixels = Vec::new();
    for y in 0..height {
        for x in 0..width {
            let (fx, fy) = (f64::from(x), f64::from(y));
            let wave = |length: &f64| (fx / length).sin() * (fy / length).cos() * length.sqrt();
            let waves: f64 = [7.0, 31.0, 127.0, 511.0].iter().map(wave).sum();
            let edge = if (x / 190 + y / 210) % 2 == 0 {
                18.0
            } else {
                -18.0
            };
            let grain = f64::from(u8::try_from(numbers.any() & 15).unwrap()) - 7.5;
            let level = (128.0 + waves + edge + grain).clamp(0.0, 255.0);
            #[expect(
                clippy::cast_possible_truncation,
                clippy::cast_sign_loss,
                reason = "within a byte by the line before"
            )]
            let level = level as u8;
            pixels.extend([level, level.wrapping_add(9), 255 - level]);
        }
    }
    let mut bytes = Vec::new();
    Encoder::new(&mut bytes, 88)
        .encode(&pixels, width, height, ColorType::Rgb)
        .unwrap();
    bytes
}
