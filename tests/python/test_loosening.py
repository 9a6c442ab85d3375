"""`calc loosening` against published interval-censored sets, scipy and lifelines."""

import warnings

import jsonschema
import numpy as np
import pytest
from scipy.stats import beta, norm

from lives import TERMS, cosmesis, generated, given, turnbull, weibull

# Weibull laws of published and synthetic sets (computed by scipy, lifelines and R survreg alike).
LAWS = {
    "radiation": (cosmesis("radiation"), 1.1216129, 57.513096, -64.731471, 0.213664, 0.225985),
    "terms": (TERMS, 1.261992, 47.670808, -81.9208176, 0.0369653206**0.5, 0.0345184607**0.5),
}


@pytest.mark.parametrize("name", LAWS)
def test_a_published_law(calc, name):
    lives, shape, scale, log_likelihood, error_shape, error_scale = LAWS[name]
    law = calc("loosening", lives=given(lives))["law"]
    assert law["shape"] == pytest.approx(shape, rel=1e-6)
    assert law["scale"] == pytest.approx(scale, rel=1e-6)
    assert law["log_likelihood"] == pytest.approx(log_likelihood, abs=1e-6)
    assert law["error_ln_shape"] == pytest.approx(error_shape, abs=1e-6)
    assert law["error_ln_scale"] == pytest.approx(error_scale, abs=1e-6)


def test_chances_and_ages_of_the_law(calc):
    """S(12), S(24), median and 10 % age of the radiation group; F and ages of the synthetic set."""
    law = calc("loosening", lives=given(cosmesis("radiation")), ages=[12, 24], chances=[0.5, 0.1])["law"]
    assert law["moved_by"] == pytest.approx([1 - 0.841606, 1 - 0.687138], abs=1e-6)
    assert law["age_at"] == pytest.approx([41.481169, 7.734149], abs=1e-5)
    law = calc("loosening", lives=given(TERMS), ages=[12, 24], chances=[0.05, 0.1])["law"]
    assert law["moved_by"] == pytest.approx([0.160861, 0.343350], abs=1e-6)
    assert law["age_at"] == pytest.approx([4.53009, 8.01354], abs=1e-5)
    assert law["covariance"] == pytest.approx(-0.0228968548, abs=1e-8)


# Masses without a law: the interval package's vignette to four digits, further digits computed.
RADIATION = {
    (4, 5): 0.046347, (6, 7): 0.033363, (7, 8): 0.088667, (11, 12): 0.070753, (24, 25): 0.092646,
    (33, 34): 0.081786, (38, 40): 0.120880, (46, 48): 0.465558,
}
FREE_TERMS = {
    (0, 6): 0.067790, (6, 9): 0.075107, (9, 18): 0.077420, (18, 21): 0.186422, (30, None): 0.593261,
}


@pytest.mark.parametrize(
    ("lives", "masses", "log_likelihood"),
    [(cosmesis("radiation"), RADIATION, -58.060022), (TERMS, FREE_TERMS, -81.077067)],
)
def test_published_masses_without_a_law(calc, lives, masses, log_likelihood):
    found = calc("loosening", lives=given(lives))["npmle"]
    held = {(s["after"], s["by"]): s["mass"] for s in found["spans"] if s["mass"] > 1e-6}
    assert set(held) == set(masses)
    for span, mass in held.items():
        assert mass == pytest.approx(masses[span], abs=1e-6), span
    assert found["log_likelihood"] == pytest.approx(log_likelihood, abs=1e-6)


@pytest.mark.parametrize("seed", range(100))
def test_a_generated_set_by_scipy_and_by_the_definition(calc, seed):
    lives = generated(seed)
    found = calc("loosening", lives=given(lives))
    assert found["moved"] >= 5, "the generator makes sets that bear a law"
    (a, b), log_likelihood = weibull(lives)
    assert np.log(found["law"]["shape"]) == pytest.approx(a, abs=1e-6)
    assert np.log(found["law"]["scale"]) == pytest.approx(b, abs=1e-6)
    assert found["law"]["log_likelihood"] == pytest.approx(log_likelihood, abs=1e-6)
    free, gap = turnbull(lives, found["npmle"]["spans"])
    assert gap < 1e-8
    assert found["npmle"]["log_likelihood"] == pytest.approx(free, abs=1e-8)
    assert free >= log_likelihood, "no law is likelier than none"


@pytest.mark.parametrize("seed", [1, 2, 3, 4])
def test_lifelines(calc, seed):
    from lifelines import WeibullFitter

    lives = generated(seed)
    law = calc("loosening", lives=given(lives))["law"]
    lower, upper = ([life[i] for life in lives] for i in (0, 1))
    upper = [np.inf if by is None else by for by in upper]
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        peer = WeibullFitter().fit_interval_censoring(np.array(lower), np.array(upper))
    assert law["shape"] == pytest.approx(peer.rho_, rel=1e-4)
    assert law["scale"] == pytest.approx(peer.lambda_, rel=1e-4)
    assert law["log_likelihood"] == pytest.approx(peer.log_likelihood_, abs=1e-4)


def test_exact_ages_are_tiny_intervals(calc):
    """lifelines on ages known exactly: the same law."""
    from lifelines import WeibullFitter

    ages = 40 * np.random.default_rng(8).weibull(1.4, 60)
    law = calc("loosening", lives=[{"after": age, "by": age} for age in ages])["law"]
    peer = WeibullFitter().fit(ages)
    assert law["shape"] == pytest.approx(peer.rho_, rel=1e-4)
    assert law["scale"] == pytest.approx(peer.lambda_, rel=1e-4)


def test_closed_forms(calc):
    """Two checks of 100; and one check of 20 with 3 moved, held to an even hazard by belief."""
    twice = [(0, 12, 10), (12, 24, 20), (24, None, 70)]
    law = calc("loosening", lives=given(twice))["law"]
    assert law["shape"] == pytest.approx(np.log(np.log(0.7) / np.log(0.9)) / np.log(2), rel=1e-7)
    assert law["scale"] == pytest.approx(43.1227611, abs=1e-6)
    even = {"shape": {"mean": 0, "deviation": 1e-7}}
    law = calc("loosening", lives=given([(0, 12, 30), (12, None, 170)]), prior=even)["law"]
    assert 1 / law["scale"] == pytest.approx(0.013543244, abs=1e-8)


@pytest.mark.parametrize(("moved", "joints"), [(0, 1), (0, 30), (0, 100), (3, 20), (1, 1), (7, 300), (150, 300), (999, 4000)])
@pytest.mark.parametrize("confidence", [0.9, 0.95])
def test_the_proportion_by_the_beta_law(calc, moved, joints, confidence):
    """Clopper and Pearson's limits by scipy; 3 of 20 at 95 %: 0.0320709 to 0.3789268 (computed)."""
    lives = [(0, 12, moved)] * (moved > 0) + [(12, None, joints - moved)] * (joints > moved)
    found = calc("loosening", lives=given(lives), confidence=confidence)
    tail = (1 - confidence) / 2
    least = beta.ppf(tail, moved, joints - moved + 1) if moved else 0
    most = beta.ppf(1 - tail, moved + 1, joints - moved) if moved < joints else 1
    assert found["interval"] == pytest.approx([least, most], abs=1e-9)
    assert found["share"] == pytest.approx(moved / joints)


@pytest.mark.parametrize(
    ("lives", "why"),
    [
        ([(12, None, 50)], "none_moved"),
        ([(6, 12, 1), (24, None, 50)], "few_moved"),
        ([(0, 12, 4), (12, None, 16)], "few_moved"),
        ([(0, 12, 9), (12, None, 16)], "one_age"),
        ([(6, 18, 30)], "one_age"),
        ([(0, 12, 30)], "one_age"),
        ([(0, 12, 9), (12, None, 6), (36, None, 3)], "from_the_start"),
    ],
)
def test_what_bears_no_law_says_why(calc, lives, why):
    found = calc("loosening", lives=given(lives))
    assert (found["law"], found["no_law"]) == (None, why)
    total = sum(span["mass"] for span in found["npmle"]["spans"])
    assert total == pytest.approx(1)


@pytest.mark.parametrize("lives", [[(0, 12, 9), (12, None, 16)], [(6, 18, 30)], [(0, 12, 9), (12, None, 6), (36, None, 3)]])
def test_a_weak_belief_mends_what_bears_no_law(calc, lives):
    law = calc("loosening", lives=given(lives), prior={"weak": True})["law"]
    assert all(np.isfinite(law[name]) for name in ("shape", "scale", "error_ln_shape", "error_ln_scale"))
    # Nineteen in twenty shapes of the belief lie in 0.37 to 2.7; the lives can pull it further.
    assert abs(np.log(law["shape"])) < 3


def test_a_belief_by_quadrature(calc):
    """The highest point and curvature of likelihood times belief, by a grid in numpy."""
    lives = [(0, 12, 6), (12, 24, 3), (24, None, 20)]
    belief = {"shape": {"mean": 0.0, "deviation": 0.5}, "scale": {"mean": 4.0, "deviation": 1.0}}
    law = calc("loosening", lives=given(lives), prior=belief)["law"]

    def log_posterior(a, b):
        h = lambda age: (age / np.exp(b)) ** np.exp(a)
        value = 6 * np.log(-np.expm1(-h(12))) + 3 * np.log(np.exp(-h(12)) - np.exp(-h(24))) - 20 * h(24)
        return value + norm.logpdf(a, 0, 0.5) + norm.logpdf(b, 4, 1)

    a, b = np.log(law["shape"]), np.log(law["scale"])
    top = log_posterior(a, b)
    for da, db in [(1e-3, 0), (-1e-3, 0), (0, 1e-3), (0, -1e-3), (1e-3, 1e-3)]:
        assert log_posterior(a + da, b + db) < top
    step = 1e-4
    bend = -(log_posterior(a + step, b) - 2 * top + log_posterior(a - step, b)) / step**2
    cross = -(
        log_posterior(a + step, b + step) - log_posterior(a + step, b - step)
        - log_posterior(a - step, b + step) + log_posterior(a - step, b - step)
    ) / (4 * step**2)
    other = -(log_posterior(a, b + step) - 2 * top + log_posterior(a, b - step)) / step**2
    spread = np.linalg.inv([[bend, cross], [cross, other]])
    assert law["error_ln_shape"] == pytest.approx(spread[0][0] ** 0.5, rel=1e-4)
    assert law["error_ln_scale"] == pytest.approx(spread[1][1] ** 0.5, rel=1e-4)


@pytest.mark.parametrize(
    "text",
    [
        '{"lives": []}', '{"lives": [{"after": -1, "by": 3}]}', '{"lives": [{"after": 9, "by": 3}]}',
        '{"lives": [{"after": 0, "by": 0}]}', '{"lives": [{"after": 1, "by": 3, "count": 0}]}',
        '{"lives": [{"after": 1, "by": 1e99}]}', '{"lives": [{"after": 1}], "confidence": 1}',
        '{"lives": [{"after": 1}], "prior": {"weak": true, "shape": {"mean": 0, "deviation": 1}}}',
        '{"lives": [{"after": 1}], "prior": {"shape": {"mean": 0, "deviation": 0}}}',
    ],
)
def test_what_can_not_be_is_refused_in_a_sentence(refused, text):
    assert refused("loosening", text).strip().endswith(".")


def test_the_shapes_are_told(schemas):
    for schema in (schemas("loosening")["input"], schemas("loosening")["output"]):
        jsonschema.Draft202012Validator.check_schema(schema)
