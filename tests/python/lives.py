"""Lives known by intervals: published sets, generated sets, and the Weibull likelihood written anew."""

import csv
import pathlib

import numpy as np
from scipy.optimize import minimize

# Synthetic terminals, in months: (held at, moved by or None, how many).
TERMS = [(0, 6, 4), (6, 18, 9), (18, 30, 11), (30, None, 36), (0, 9, 3), (9, 21, 4), (21, None, 8), (9, None, 5)]


def cosmesis(group):
    """One treatment group of the standard interval-censored set."""
    path = pathlib.Path(__file__).parent / "data" / "cosmesis.csv"
    lines = [line for line in path.read_text().splitlines() if not line.startswith("#")]
    rows = [row for row in csv.DictReader(lines) if row["group"] == group]
    return [(float(r["lower_months"]), float(r["upper_months"]) if r["upper_months"] else None, 1) for r in rows]


def given(lives):
    """The lives as the calculation takes them."""
    return [{"after": after, "by": by, "count": count} for after, by, count in lives]


def arrays(lives):
    """Lower ends, upper ends (infinite where it still held) and counts."""
    lower = np.array([after for after, _, _ in lives], float)
    upper = np.array([np.inf if by is None else by for _, by, _ in lives], float)
    return lower, upper, np.array([count for _, _, count in lives], float)


def generated(seed):
    """Joints checked about yearly for a few years, each from its own day on."""
    rng = np.random.default_rng(seed)
    count = int(rng.integers(25, 400))
    shape, scale = np.exp(rng.normal(0, 0.4)), np.exp(rng.normal(3.7, 0.7))
    ages = scale * rng.weibull(shape, count)
    lives = []
    for age in ages:
        checks = np.cumsum(np.round(rng.uniform(6, 18, int(rng.integers(2, 9))), 2))
        later = checks[checks >= age]
        earlier = checks[checks < age]
        after = float(earlier[-1]) if len(earlier) else 0.0
        lives.append((after, float(later[0]) if len(later) else None, 1))
    return lives


def weibull(lives):
    """The most likely (ln k, ln λ) and its log-likelihood, by scipy with the exact slope."""
    lower, upper, count = arrays(lives)
    kept = (lower > 0) | np.isfinite(upper)
    lower, upper, count = lower[kept], upper[kept], count[kept]

    def hazard(age, a, b):
        with np.errstate(divide="ignore", over="ignore"):
            z = np.exp(a) * (np.log(age) - b)
            h = np.exp(z)
        slope_a = np.where((age > 0) & np.isfinite(age), h * np.where(np.isfinite(z), z, 0), 0)
        return h, slope_a

    def minus(at):
        a, b = at
        k = np.exp(a)
        held, held_a = hazard(lower, a, b)
        last, last_a = hazard(np.where(np.isfinite(upper), upper, 1.0), a, b)
        moved = np.isfinite(upper)
        grown = np.where(moved, last - held, 1.0)
        value = np.where(moved, np.log(-np.expm1(-grown)), 0.0) - held
        pull = np.where(moved, 1 / np.expm1(grown), 0.0)
        in_a = pull * (last_a - held_a) - held_a
        in_b = -k * (pull * (last - held) - held)
        return -(count @ value), -np.array([count @ in_a, count @ in_b])

    middle = np.where(np.isfinite(upper), (lower + np.where(np.isfinite(upper), upper, 0)) / 2, lower)
    start = np.log(count @ middle / max(count @ np.isfinite(upper), 1))
    options = {"ftol": 1e-15, "gtol": 1e-9, "maxiter": 500}
    found = minimize(minus, [0.0, start], jac=True, method="L-BFGS-B", options=options)
    return found.x, -found.fun


def turnbull(lives, spans):
    """The log-likelihood of masses, and how far Kuhn and Tucker's condition is missed, straight from
    the definition: every life over every span."""
    lower, upper, count = arrays(lives)
    after = np.array([span["after"] for span in spans])
    by = np.array([np.inf if span["by"] is None else span["by"] for span in spans])
    mass = np.array([span["mass"] for span in spans])
    inside = (after[None, :] >= lower[:, None]) & (by[None, :] <= upper[:, None])
    chance = inside @ mass
    pull = (count / chance) @ inside / count.sum()
    missed = np.where(mass > 0, np.abs(pull - 1), pull - 1)
    return count @ np.log(chance), missed.max()
