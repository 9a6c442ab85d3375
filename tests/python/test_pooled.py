"""`calc pooled` and the posterior of `calc loosening` against scipy and lifelines."""

import warnings

import numpy as np
import pytest
from scipy.optimize import minimize
from scipy.stats import norm

from lives import generated, given


def members(seed, joints=240):
    """Joints of three kinds, with a trait of two values and one that is a number."""
    rng = np.random.default_rng(seed)
    group = rng.integers(0, 3, joints)
    metal, pace = rng.integers(0, 2, joints), rng.normal(0, 0.8, joints)
    scale = np.exp(np.array([3.4, 3.9, 4.3])[group] - 0.5 * metal - 0.6 * pace)
    ages = scale * rng.weibull(1.3, joints)
    lives = []
    for age, g, m, p in zip(ages, group, metal, pace):
        checks = np.cumsum(np.round(rng.uniform(6, 18, 5), 2))
        later, earlier = checks[checks >= age], checks[checks < age]
        lives.append({
            "group": int(g), "traits": [float(m), float(p)],
            "after": float(earlier[-1]) if len(earlier) else 0.0, "by": float(later[0]) if len(later) else None,
        })
    return lives


def by_scipy(lives):
    """The most likely terms, by scipy over a likelihood written anew."""
    after = np.array([life["after"] for life in lives])
    by = np.array([np.inf if life["by"] is None else life["by"] for life in lives])
    rows = np.array([[float(life["group"] == g) for g in range(3)] + life["traits"] for life in lives])

    def minus(at):
        k, log_scale = np.exp(at[0]), rows @ at[1:]
        with np.errstate(divide="ignore"):
            held = np.exp(k * (np.log(after) - log_scale))
            last = np.exp(k * (np.log(np.where(np.isfinite(by), by, 1.0)) - log_scale))
        moved = np.isfinite(by)
        return -np.sum(np.where(moved, np.log(-np.expm1(-np.where(moved, last - held, 1.0))), 0.0) - held)

    found = minimize(minus, [0.0, 3.5, 3.5, 3.5, 0.0, 0.0], method="BFGS", options={"gtol": 1e-7})
    found = minimize(minus, found.x, method="Nelder-Mead", options={"xatol": 1e-9, "fatol": 1e-12, "maxiter": 20000})
    return found.x, -found.fun


@pytest.mark.parametrize("seed", range(10))
def test_groups_that_stand_alone_by_scipy(calc, seed):
    lives = members(seed)
    found = calc("pooled", lives=lives)
    terms, log_likelihood = by_scipy(lives)
    assert found["terms"] == pytest.approx(terms, abs=1e-5)
    assert found["log_likelihood"] == pytest.approx(log_likelihood, abs=1e-6)


@pytest.mark.parametrize("seed", [1, 2])
def test_traits_and_errors_by_lifelines(calc, seed):
    import pandas
    from lifelines import WeibullAFTFitter

    lives = members(seed)
    found = calc("pooled", lives=lives)
    table = pandas.DataFrame({
        "lower": [life["after"] for life in lives],
        "upper": [np.inf if life["by"] is None else life["by"] for life in lives],
        "one": [float(life["group"] == 1) for life in lives], "two": [float(life["group"] == 2) for life in lives],
        "metal": [life["traits"][0] for life in lives], "pace": [life["traits"][1] for life in lives],
    })
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        peer = WeibullAFTFitter().fit_interval_censoring(table, "lower", "upper")
    at = peer.params_
    base = at["lambda_", "Intercept"]
    theirs = [at["rho_", "Intercept"], base, base + at["lambda_", "one"], base + at["lambda_", "two"],
              at["lambda_", "metal"], at["lambda_", "pace"]]
    assert found["terms"] == pytest.approx(theirs, abs=1e-3)
    errors = peer.standard_errors_
    assert found["errors"][0] == pytest.approx(errors["rho_", "Intercept"], rel=1e-2)
    assert found["errors"][4:] == pytest.approx([errors["lambda_", "metal"], errors["lambda_", "pace"]], rel=1e-2)


def test_a_kind_with_few_is_drawn_to_the_others(calc):
    lives = [{"group": 0, "after": 0, "by": 12, "count": 8}, {"group": 0, "after": 24, "by": None, "count": 30},
             {"group": 1, "after": 12, "by": None, "count": 2}]
    asked = [{"group": 0, "age": 12}, {"group": 1, "age": 12}]
    found = calc("pooled", lives=lives, weak=True, asked=asked)
    first, second = found["asked"]
    assert abs(second["mean"] - first["mean"]) < 0.5 * first["mean"], "drawn"
    wide = [answer["interval"][1] - answer["interval"][0] for answer in found["asked"]]
    assert wide[1] > 1.2 * wide[0], "and known less surely"


@pytest.mark.parametrize("seed", [3, 5, 8])
def test_the_posterior_by_a_finer_grid(calc, seed):
    """Means and intervals over likelihood times belief, on a grid in numpy that covers all of it."""
    lives = generated(seed)[:40]
    found = calc("loosening", lives=given(lives), prior={"weak": True}, posterior=True, ages=[12, 36])
    after = np.array([life[0] for life in lives])
    by = np.array([np.inf if life[1] is None else life[1] for life in lives])
    a, b = np.meshgrid(np.linspace(-3, 3, 601), np.linspace(0, 12, 601), indexing="ij")
    log = norm.logpdf(a, 0, 0.5) + norm.logpdf(b, 6.04, 1.5)
    with np.errstate(all="ignore"):
        for held, moved in zip(after, by):
            h = np.exp(np.exp(a) * (np.log(held) - b)) if held else 0.0
            log += -h
            if np.isfinite(moved):
                log += np.log(-np.expm1(-(np.exp(np.exp(a) * (np.log(moved) - b)) - h)))
    weight = np.exp(log - np.nanmax(log))
    weight = np.nan_to_num(weight) / np.nansum(weight)
    for n, age in enumerate([12, 36]):
        chance = -np.expm1(-np.exp(np.exp(a) * (np.log(age) - b)))
        assert found["posterior"]["moved_by"][n] == pytest.approx((weight * chance).sum(), rel=1e-4)
        order = np.argsort(chance, axis=None)
        whole = np.cumsum(weight.ravel()[order])
        ends = [chance.ravel()[order][np.searchsorted(whole, p)] for p in (0.05, 0.95)]
        assert found["posterior"]["moved_by_interval"][n] == pytest.approx(ends, rel=0.02)
