//! The stretches between nose, wheels and tail, and which low bay stands in which.

use super::place::{GAP, Placed};
use super::scale::Scale;
use crate::count::measure;
use baywalk_domain::rig::RigKind;

/// The narrowest bay, with room for one line of a pattern.
const LEAST: f64 = 9.0;

/// A stretch by its ends, with its bays in order.
pub(super) type Stretch<'a> = ((f64, f64), Vec<Placed<'a>>);

/// Gives each bay, nose to tail, to the nearest stretch; what is too much for one goes to its
/// neighbour. Where there are too many for all, each takes its share by its length.
pub(super) fn share_out(bays: Vec<Placed<'_>>, scale: Scale, kind: RigKind) -> Vec<Stretch<'_>> {
    let count = measure(bays.len());
    let ends = ends(scale, kind);
    let mut stretches: Vec<Stretch<'_>> = ends.iter().map(|ends| (*ends, Vec::new())).collect();
    for bay in bays {
        let nearest = stretches.iter_mut().min_by(|(one, _), (other, _)| {
            let far = |(from, to): &(f64, f64)| (from - bay.middle).max(bay.middle - to).max(0.0);
            far(one).total_cmp(&far(other))
        });
        if let Some((_, here)) = nearest {
            here.push(bay);
        }
    }
    let whole: f64 = ends.iter().map(|(from, to)| to - from).sum();
    let room = |(from, to): &(f64, f64)| ((to - from + GAP) / (LEAST + GAP)).floor();
    let short = count > ends.iter().map(room).sum::<f64>();
    let most = |ends: &(f64, f64)| match short {
        true => (count * (ends.1 - ends.0) / whole).ceil(),
        false => room(ends),
    };
    even_out(&mut stretches, &most);
    stretches
}

/// Moves bays from a stretch that is too full to its neighbour, tailward first, in their order.
fn even_out(stretches: &mut [Stretch<'_>], most: &dyn Fn(&(f64, f64)) -> f64) {
    let over = |(ends, bays): &Stretch<'_>| measure(bays.len()) > most(ends);
    for at in 1..stretches.len() {
        if let Some([one, next]) = stretches.get_mut(at - 1..=at) {
            while over(one) {
                next.1.splice(0..0, one.1.pop());
            }
        }
    }
    for at in (1..stretches.len()).rev() {
        if let Some([one, next]) = stretches.get_mut(at - 1..=at) {
            while over(next) {
                one.1.extend((!next.1.is_empty()).then(|| next.1.remove(0)));
            }
        }
    }
}

/// The ends of the stretches between nose, wheels and tail that have room for a bay.
fn ends(scale: Scale, kind: RigKind) -> Vec<(f64, f64)> {
    let clear = scale.arch() + 3.0;
    let mut from = scale.nose(kind);
    let mut found = Vec::new();
    let wheels = scale.axles(kind).map(|axle| (axle - clear, axle + clear));
    for (to, next) in wheels.into_iter().chain([(scale.width - 5.0, scale.width)]) {
        if to - from > 18.0 {
            found.push((from, to));
        }
        from = next;
    }
    found
}
