//! The log-likelihood of a life under a Weibull law, with its slopes and curvatures.

use super::Life;

/// A life with its logarithms taken once.
#[derive(Debug, Clone, Copy)]
pub(super) struct Logged {
    /// The logarithm of the last age at which it held; `None` for 0.
    after: Option<f64>,
    /// The logarithm of the age by which it had moved.
    by: Option<f64>,
    /// The logarithm of the ratio of both ages, exact for narrow intervals.
    gap: f64,
    /// How many joints.
    count: f64,
}

impl Logged {
    /// Takes the logarithms; `None` for a life that tells nothing.
    pub(super) fn new(life: &Life) -> Option<Self> {
        let after = Some(life.after()).filter(|age| *age > 0.0);
        if after.is_none() && life.by().is_none() {
            return None;
        }
        let gap = after
            .zip(life.by())
            .map_or(0.0, |(after, by)| ((by - after) / after).ln_1p());
        Some(Self {
            after: after.map(f64::ln),
            by: life.by().map(f64::ln),
            gap,
            count: f64::from(life.count()),
        })
    }
}

/// A sum of log-likelihoods with slopes and curvatures in a = ln k and b = ln λ.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Terms {
    /// The sum.
    pub(super) value: f64,
    /// Its slope in a.
    pub(super) a: f64,
    /// Its slope in b.
    pub(super) b: f64,
    /// Its curvature in a.
    pub(super) aa: f64,
    /// Its mixed curvature.
    pub(super) ab: f64,
    /// Its curvature in b.
    pub(super) bb: f64,
}

impl Terms {
    /// The sum over lives. With z = k (ln t − b) the cumulative hazard is H = exp z, and a life in
    /// the interval (L, R] adds −H(L) + ln(1 − exp(−(H(R) − H(L)))).
    pub(super) fn of(lives: &[Logged], a: f64, b: f64) -> Self {
        let k = a.exp();
        let mut sum = Self::default();
        for life in lives {
            let held = life.after.map_or(Self::default(), |age| hazard(k, age, b));
            let Some(by) = life.by else {
                sum.add_held(life.count, &held);
                continue;
            };
            let gained = match life.after {
                Some(after) => gained(k, &held, k * (after - b), k * life.gap),
                None => hazard(k, by, b),
            };
            sum.add_moved(life.count, &held, &gained);
        }
        sum
    }

    /// Adds a joint that held throughout.
    fn add_held(&mut self, count: f64, held: &Self) {
        self.value -= count * held.value;
        self.a -= count * held.a;
        self.b -= count * held.b;
        self.aa -= count * held.aa;
        self.ab -= count * held.ab;
        self.bb -= count * held.bb;
    }

    /// Adds a joint that moved while its hazard grew from `held` by `gained`.
    fn add_moved(&mut self, count: f64, held: &Self, gained: &Self) {
        let slope = 1.0 / gained.value.exp_m1();
        let bend = slope * (1.0 + slope);
        self.value += count * ((-(-gained.value).exp_m1()).ln() - held.value);
        self.a += count * (slope * gained.a - held.a);
        self.b += count * (slope * gained.b - held.b);
        self.aa += count * (slope * gained.aa - bend * gained.a * gained.a - held.aa);
        self.ab += count * (slope * gained.ab - bend * gained.a * gained.b - held.ab);
        self.bb += count * (slope * gained.bb - bend * gained.b * gained.b - held.bb);
    }
}

/// The cumulative hazard at an age.
fn hazard(k: f64, age: f64, b: f64) -> Terms {
    let z = k * (age - b);
    let value = z.exp();
    Terms {
        value,
        a: value * z,
        b: -k * value,
        aa: value * z * (z + 1.0),
        ab: -k * value * (z + 1.0),
        bb: k * k * value,
    }
}

/// What the cumulative hazard gains from an age at which it is `held` and z, to an age further on by
/// `dz`; no difference of near numbers is taken.
fn gained(k: f64, held: &Terms, z: f64, dz: f64) -> Terms {
    let growth = dz.exp_m1();
    let later = z + dz;
    let value = held.value * growth;
    let a = held.value * (growth * later + dz);
    Terms {
        value,
        a,
        b: -k * value,
        aa: held.value * (growth * later * (later + 1.0) + dz * (later + z + 1.0)),
        ab: -k * (a + value),
        bb: k * k * value,
    }
}
