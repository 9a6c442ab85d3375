//! Screw threads by their trade names.

/// A screw thread: unified (`#10-32`, `1/4-20`) or ISO metric (`M6`, `M8x1.25`).
///
/// The pitch may be left out, as it often is on a label; what needs it says so.
///
/// # Example
/// ```
/// use baywalk_domain::rig::Thread;
/// let stud = Thread::parse("1/4-20")?;
/// assert!((stud.diameter_mm() - 6.35).abs() < 1e-9);
/// assert_eq!(stud.pitch_mm().map(|p| (p * 100.0).round()), Some(127.0));
/// assert_eq!(Thread::parse("M6")?.pitch_mm(), None);
/// assert!(Thread::parse("6 mm-ish").is_err());
/// # Ok::<(), baywalk_domain::rig::ThreadFault>(())
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Thread {
    text: String,
    metric: bool,
    diameter_mm: f64,
    pitch_mm: Option<f64>,
}

/// Why a text names no thread.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{found:?} names no thread; expected such as #10-32, 1/4-20, M6 or M8x1.25")]
pub struct ThreadFault {
    /// What was found.
    pub found: String,
}

impl Thread {
    /// Reads the trade name of a thread.
    ///
    /// # Errors
    /// [`ThreadFault`] where the text names none between 1 and 30 mm.
    pub fn parse(text: &str) -> Result<Self, ThreadFault> {
        let trimmed = text.trim();
        metric(trimmed)
            .or_else(|| unified(trimmed))
            .filter(|(_, diameter, pitch)| {
                (1.0..=30.0).contains(diameter) && pitch.is_none_or(|p| (0.1..4.0).contains(&p))
            })
            .map(|(metric, diameter_mm, pitch_mm)| Self {
                text: trimmed.to_owned(),
                metric,
                diameter_mm,
                pitch_mm,
            })
            .ok_or_else(|| ThreadFault {
                found: text.to_owned(),
            })
    }

    /// The name as it was typed.
    #[must_use]
    pub fn text(&self) -> &str {
        &self.text
    }

    /// Whether it is an ISO metric thread.
    #[must_use]
    pub fn is_metric(&self) -> bool {
        self.metric
    }

    /// Nominal diameter in millimetres.
    #[must_use]
    pub fn diameter_mm(&self) -> f64 {
        self.diameter_mm
    }

    /// Pitch in millimetres, where the name tells it.
    #[must_use]
    pub fn pitch_mm(&self) -> Option<f64> {
        self.pitch_mm
    }
}

/// Reads `M6` and `M8x1.25`.
fn metric(text: &str) -> Option<(bool, f64, Option<f64>)> {
    let body = text.strip_prefix(['M', 'm'])?;
    match body.split_once(['x', 'X', '×']) {
        Some((diameter, pitch)) => Some((true, number(diameter)?, Some(number(pitch)?))),
        None => Some((true, number(body)?, None)),
    }
}

/// Reads `#10`, `#10-32`, `1/4` and `1/4-20`.
fn unified(text: &str) -> Option<(bool, f64, Option<f64>)> {
    let (size, threads) = match text.split_once('-') {
        Some((size, threads)) => (size, Some(number(threads)?)),
        None => (text, None),
    };
    let inches = match size.strip_prefix('#') {
        Some(gauge) => 0.013f64.mul_add(f64::from(gauge.parse::<u8>().ok()?), 0.060),
        None => {
            let (over, under) = size.split_once('/')?;
            number(over)? / number(under)?
        }
    };
    Some((
        false,
        inches * 25.4,
        threads.map(|per_inch| 25.4 / per_inch),
    ))
}

fn number(text: &str) -> Option<f64> {
    crate::units::Decimal::parse(text)
        .ok()
        .map(|n| n.value())
        .filter(|n| *n > 0.0)
}
