//! Many like devices, as outlets: which of them are this year's, and what they say of the rest.

use baywalk_domain::coded::Coded;
use baywalk_domain::ids::DeviceId;
use baywalk_domain::rig::{Book, Code, DeviceKind, FasteningKind, Point};
use baywalk_domain::sampling::{Rotation, said};
use baywalk_words::{Arg, Words};
use std::collections::BTreeMap;

/// From how many like devices on a sample is told. Ours.
const FEWEST: usize = 8;
/// The years within which all are seen. Ours.
const YEARS: u32 = 4;
/// The confidence of what the sample says of the rest. Ours.
const CONFIDENCE: f64 = 0.95;

/// The kinds of device of which a rig has many, each with little behind it; all others are gone through
/// each year. Ours.
const SAMPLED: [DeviceKind; 1] = [DeviceKind::Outlet];

/// What is told of each kind of like devices.
pub(super) fn alike(words: &Words, book: &Book, year: i32) -> Vec<String> {
    let kinds = like_devices(book);
    let told = kinds.into_iter().filter(|(_, codes)| codes.len() >= FEWEST);
    told.filter_map(|(kind, codes)| line(words, (book, year), kind, &codes))
        .collect()
}

/// The codes of like devices, in order: of one kind, with one fastening throughout.
fn like_devices(book: &Book) -> BTreeMap<(DeviceKind, FasteningKind), Vec<&Code>> {
    let mut kinds: BTreeMap<_, Vec<&Code>> = BTreeMap::new();
    let devices = book.devices.iter().filter(|device| !device.retired);
    for device in devices.filter(|device| SAMPLED.contains(&device.kind)) {
        if let Some(fastening) = fastening(book, device.id) {
            let kind = (device.kind, fastening);
            kinds.entry(kind).or_default().push(&device.code);
        }
    }
    for codes in kinds.values_mut() {
        codes.sort_unstable();
    }
    kinds
}

/// What all terminals in use of a device are fastened by; `None` where it has none, or more than one.
fn fastening(book: &Book, device: DeviceId) -> Option<FasteningKind> {
    let points = book.points.iter().filter(|point| point.device == device);
    let terminals = points
        .filter(|point| !point.retired)
        .filter_map(Point::terminal);
    let mut kinds = terminals.map(|terminal| terminal.fastening.kind);
    let first = kinds.next()?;
    kinds.all(|kind| kind == first).then_some(first)
}

fn line(
    words: &Words,
    (book, year): (&Book, i32),
    (device, fastening): (DeviceKind, FasteningKind),
    codes: &[&Code],
) -> Option<String> {
    let seed = seed(book, device, fastening);
    let year = u32::try_from(year).ok()?;
    let sample = Rotation::of(codes.len(), None, YEARS, seed).ok()?;
    let mut places = sample.of_year(year);
    places.sort_unstable();
    let these: Vec<&str> = places
        .iter()
        .filter_map(|place| codes.get(*place))
        .map(|code| code.as_str())
        .collect();
    let number = |count: usize| u32::try_from(count).unwrap_or(u32::MAX);
    let (all, seen) = (number(codes.len()), number(these.len()));
    let said = said(all, seen, 0, CONFIDENCE).ok()?;
    let args: [(&str, Arg<'_>); 8] = [
        ("device", words.code(device).into()),
        ("fastening", words.code(fastening).into()),
        ("all", all.into()),
        ("seen", seen.into()),
        ("devices", these.join(", ").into()),
        ("years", YEARS.into()),
        ("most", said.most_of_rest.into()),
        ("percent", words.number(100.0 * CONFIDENCE, 0).into()),
    ];
    Some(words.fill("plan-alike", &args))
}

/// What the order is mixed by: the rig and the kind, so that it is the same on every phone.
fn seed(book: &Book, device: DeviceKind, fastening: FasteningKind) -> u64 {
    let label = format!("{} {}", device.code(), fastening.code());
    let name = uuid::Uuid::new_v5(&book.rig.id.uuid(), label.as_bytes());
    name.as_u64_pair().0
}
