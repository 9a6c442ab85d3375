//! One bay: its outline, its pattern, its lid.

use super::place::{Lane, Placed};
use super::scale::Scale;
use super::standing::Standing;
use crate::count::measure;
use crate::mesh::Rectangle;
use crate::{Dash, Drawing, Path, Role, hatch};
use baywalk_domain::rig::Side;
use baywalk_domain::walk::{BayStage, Grade};

/// Height that a grade which is not held gets at least, so that one of fifty shows.
const LEAST_BAND: f64 = 13.0;
/// The grades that stand out, from the bottom.
const ODD: [Grade; 3] = [Grade::Moved, Grade::Loose, Grade::Apart];

/// Upper edge and height of a lane's bays.
pub(super) fn height(lane: Lane, scale: Scale) -> (f64, f64) {
    let times = scale.times;
    match lane {
        Lane::Low => (scale.floor() + 6.0 * times, 40.0 * times),
        Lane::Inside => (scale.roof() + 7.0 * times, 33.0 * times),
        Lane::Roof => (scale.roof() - 12.0 * times, 12.0 * times),
    }
}

/// Draws a bay.
pub(super) fn draw(drawing: &mut Drawing, placed: &Placed<'_>, standing: &Standing, scale: Scale) {
    let (top, height) = height(placed.lane, scale);
    let (x, width) = (placed.middle - placed.width / 2.0, placed.width);
    let role = if standing.next { Role::Next } else { Role::Ink };
    drawing.fill(Role::Face, Path::rectangle(x, top, width, height));
    pattern(drawing, standing, (x, top, width, height));
    let line = if standing.next { 3.5 } else { 1.8 };
    let outline = Path::rectangle(x, top, width, height);
    if placed.bay.side == Side::Right {
        drawing.dashed(role, line, Dash { on: 4.0, off: 3.0 }, outline);
    } else {
        drawing.stroke(role, line, outline);
    }
    match standing.stage {
        BayStage::Shut => {}
        BayStage::Open => {
            let (lean, rise) = ((7.0 * scale.times).min(x - 2.0), 13.0 * scale.times);
            let lid = Path::from((x, top))
                .to(x - lean, top - rise)
                .to(x + width - lean, top - rise)
                .to(x + width, top);
            drawing.fill(Role::Face, lid.clone());
            drawing.stroke(role, 2.5, lid);
        }
        BayStage::Closed => {
            let lid = Path::line((x - 0.9, top + 1.1), (x + width + 0.9, top + 1.1));
            drawing.stroke(role, 4.0, lid);
        }
    }
}

/// The grades from the bottom: held and looked at by their share, then what stands out.
fn pattern(drawing: &mut Drawing, standing: &Standing, (x, top, width, height): Rectangle) {
    let inner = height - 2.0;
    let (left, room) = (x + 1.0, width - 2.0);
    let count = |grade: &Grade| measure(standing.count(*grade));
    let calm = [Grade::Held, Grade::LookedAt];
    let told = calm.iter().chain(&ODD).map(count).sum::<f64>();
    if told <= 0.0 || room <= 0.0 {
        return;
    }
    let filled = inner * (told / measure(standing.total).max(told));
    let odd: Vec<Grade> = ODD.into_iter().filter(|grade| count(grade) > 0.0).collect();
    let kinds = measure(odd.len());
    let calm_count = calm.iter().map(count).sum::<f64>();
    let least = LEAST_BAND.min(inner / (kinds + 1.0));
    // Nothing but what stands out takes all that is filled.
    let band = if calm_count > 0.0 || kinds < 1.0 {
        least
    } else {
        least.max(filled / kinds)
    };
    let rest = (filled - band * kinds).max(0.0);
    let calm_bands = calm
        .iter()
        .map(|grade| (*grade, rest * count(grade) / calm_count.max(1.0)));
    let bands = calm_bands.chain(odd.iter().map(|grade| (*grade, band)));
    let mut bottom = top + height - 1.0;
    for (grade, tall) in bands.filter(|(_, tall)| *tall > 0.0) {
        hatch::fill(drawing, grade, (left, bottom - tall, room, tall));
        bottom -= tall;
        if bottom > top + 2.0 {
            drawing.stroke(Role::Ink, 1.0, Path::line((x, bottom), (x + width, bottom)));
        }
    }
}
