//! Pushing things apart on a line.

/// Something with a middle and half a width on a line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Span {
    /// Its middle.
    pub(crate) middle: f64,
    /// Half its width.
    pub(crate) half: f64,
}

/// Moves spans no farther than needed so that each keeps its place in the row, none touch, and all
/// lie between two ends: one pass to the right, one to the left. Where they can't all have their
/// room, gap and width shrink alike.
pub(crate) fn spread(spans: &mut [Span], (low, high): (f64, f64), gap: f64) {
    let widths: f64 = spans.iter().map(|span| span.half * 2.0).sum();
    let need = widths + gap * crate::count::measure(spans.len().saturating_sub(1));
    let shrink = ((high - low) / need).clamp(0.0, 1.0);
    let gap = gap * shrink;
    let mut edge = low - gap;
    for span in spans.iter_mut() {
        span.half *= shrink;
        span.middle = span.middle.max(edge + gap + span.half);
        edge = span.middle + span.half;
    }
    let mut edge = high + gap;
    for span in spans.iter_mut().rev() {
        span.middle = span.middle.min(edge - gap - span.half);
        edge = span.middle - span.half;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_has_room_stays_where_it_is() {
        let mut spans = [10.0, 50.0].map(|middle| Span { middle, half: 5.0 });
        let before = spans;
        spread(&mut spans, (0.0, 100.0), 4.0);
        assert_eq!(spans, before);
    }

    #[test]
    fn what_has_too_little_room_shrinks_alike() {
        let mut spans = [50.0; 4].map(|middle| Span { middle, half: 20.0 });
        spread(&mut spans, (0.0, 86.0), 4.0);
        for pair in spans.windows(2) {
            let free = pair[1].middle - pair[1].half - pair[0].middle - pair[0].half;
            assert!((free - 2.0).abs() < 1e-9, "{free}");
        }
        assert!((spans[0].middle - spans[0].half).abs() < 1e-9);
    }
}
