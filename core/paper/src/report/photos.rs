//! The photos of a walk: number, what each shows and when, caption, pins, digest.

use super::view::View;
use crate::photo::Photo;
use crate::sheet::Block;
use baywalk_domain::finding::About;
use baywalk_domain::ids::{BayId, PointId};
use baywalk_domain::rig::Point;
use baywalk_domain::walk::Act;

/// The photos of a place, under a line that says so; nothing where there are none.
pub(super) fn blocks(view: &View<'_>, here: &dyn Fn(About) -> bool) -> Vec<Block> {
    let photos = view.facts.walk.photos.iter().enumerate();
    let shown = photos.filter(|(_, (about, _, _))| here(*about));
    let shown: Vec<Photo> = shown
        .map(|(place, (about, digest, caption))| photo(view, place, *about, digest, caption))
        .collect();
    if shown.is_empty() {
        return Vec::new();
    }
    vec![Block::Text(view.say("report-photos")), Block::Photos(shown)]
}

fn photo(view: &View<'_>, place: usize, about: About, digest: &str, caption: &str) -> Photo {
    let lines = [
        caption.to_owned(),
        pins(view, about, digest),
        view.fill("report-digest", &[("digest", digest)]),
    ];
    let told = lines.into_iter().filter(|line| !line.trim().is_empty());
    let mut head = vec![
        number(view, place),
        view.words.about(about, view.facts.book),
    ];
    head.extend(when(view, about, digest));
    Photo {
        head: head.join(", "),
        lines: told.collect(),
        digest: digest.to_owned(),
    }
}

/// Whether a photo of a point was taken before it was left as it is now, or after.
fn when(view: &View<'_>, about: About, digest: &str) -> Option<String> {
    let About::Point(point) = about else {
        return None;
    };
    let taken = |act: &Act| matches!(act, Act::Photo { digest: taken, .. } if taken == digest);
    let left = |act: &Act| matches!(act, Act::Left { point: left, .. } if *left == point);
    let place = view.standing().position(taken)?;
    let last = view
        .standing()
        .collect::<Vec<_>>()
        .iter()
        .rposition(|act| left(act))?;
    let key = if place < last {
        "report-photo-found"
    } else {
        "report-photo-left"
    };
    Some(view.say(key))
}

/// The bay that a photo belongs to.
pub(super) fn home(view: &View<'_>, about: About) -> Option<BayId> {
    let book = view.facts.book;
    match about {
        About::Bay(bay) => Some(bay),
        About::Point(point) => book.point(point).and_then(|point| book.bay_of(point)),
        About::Rig | About::Source(_) | About::Reading(_) => None,
    }
}

/// The numbers of the photos of a point.
pub(super) fn numbers(view: &View<'_>, point: PointId) -> Vec<String> {
    let photos = view.facts.walk.photos.iter().enumerate();
    let here = photos.filter(|(_, (about, _, _))| *about == About::Point(point));
    here.map(|(place, _)| number(view, place)).collect()
}

fn number(view: &View<'_>, place: usize) -> String {
    view.fill("report-photo", &[("number", &(place + 1).to_string())])
}

/// The points that are pinned on a photo of their bay, where this is the one that shows it.
fn pins(view: &View<'_>, about: About, digest: &str) -> String {
    let book = view.facts.book;
    let About::Bay(bay) = about else {
        return String::new();
    };
    let shown = book.bay_photo(bay).filter(|photo| photo.photo == digest);
    let pinned = |point: &&Point| shown.is_some_and(|photo| photo.pin(point.id).is_some());
    let points = book.points_of(bay);
    let codes: Vec<&str> = points
        .iter()
        .copied()
        .filter(pinned)
        .map(|point| point.code.as_str())
        .collect();
    if codes.is_empty() {
        String::new()
    } else {
        view.fill("report-pins", &[("pins", &codes.join(", "))])
    }
}
