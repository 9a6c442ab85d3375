"""`calc sample` against scipy.stats.hypergeom, and against its own promises over the years."""

import json
import random

import pytest
from scipy.stats import hypergeom

LIKE = {"years": 4, "year": 0, "seed": 7}


def codes(count):
    return [f"P{n}" for n in range(count)]


def most_loose(count, seen, loose, confidence):
    """The largest number of loose ones under which so few would be seen more often than 1 - confidence."""
    fits = [
        bad
        for bad in range(loose, count - seen + loose + 1)
        if hypergeom.cdf(loose, count, bad, seen) > 1 - confidence
    ]
    return max(fits, default=loose)


@pytest.mark.parametrize("seed", range(120))
def test_the_bound_is_that_of_the_hypergeometric_law(calc, seed):
    draw = random.Random(seed)
    count = draw.choice([1, 2, 5, 14, 40, 100, 300])
    seen = draw.randint(1, count)
    loose = min(seen, draw.choice([0, 0, 0, 1, 2, 5]))
    confidence = draw.choice([0.8, 0.9, 0.95, 0.99])
    told = calc("sample", points=codes(count), **LIKE, seen=seen, loose=loose, confidence=confidence)
    assert told["most"] == most_loose(count, seen, loose, confidence)
    assert told["most_of_rest"] == told["most"] - loose
    assert told["likely"] == pytest.approx(hypergeom.cdf(loose, count, told["most"], seen), abs=1e-10)


def test_a_large_lot_keeps_its_precision(calc):
    told = calc("sample", points=codes(10_000), **LIKE, seen=300, loose=2, confidence=0.95)
    cdf = lambda bad: hypergeom.cdf(2, 10_000, bad, 300)
    assert cdf(told["most"]) > 0.05 >= cdf(told["most"] + 1)
    assert told["likely"] == pytest.approx(cdf(told["most"]), rel=1e-8)


@pytest.mark.parametrize("seed", range(40))
def test_all_are_seen_within_the_years_whenever_one_begins(calc, seed):
    draw = random.Random(seed)
    count, years, begin = draw.randint(1, 60), draw.randint(1, 9), draw.randint(0, 20)
    seen = set()
    for year in range(begin, begin + years):
        told = calc("sample", points=codes(count), years=years, year=year, seed=seed)
        assert len(set(told["points"])) == len(told["points"]) == told["each"] == -(-count // years)
        assert told["more"] == []
        seen |= set(told["points"])
    assert seen == set(codes(count))


def test_the_same_seed_draws_the_same_and_another_draws_another(calc):
    draw = lambda seed: calc("sample", points=codes(40), years=4, year=1, seed=seed)["points"]
    assert draw(7) == draw(7)
    assert len({tuple(draw(seed)) for seed in range(20)}) == 20


def test_a_loose_one_doubles_the_sample_up_to_all(calc):
    sizes = []
    for loose in range(5):
        told = calc("sample", points=codes(40), years=10, year=3, seed=1, loose=min(loose, 4), seen=4)
        both = told["points"] + told["more"]
        assert len(set(both)) == len(both)
        sizes.append(len(both))
    assert sizes == [4, 8, 16, 32, 40]


@pytest.mark.parametrize(
    ("change", "word"),
    [
        ({"points": []}, "0 like points"),
        ({"years": 0}, "0 years"),
        ({"each": 2}, "expected 3 to 12"),
        ({"loose": 9}, "9 loose of 3 seen"),
        ({"confidence": 1.0}, "a confidence of 1"),
    ],
)
def test_what_can_not_be_sampled_is_refused_with_what_was_found(refused, change, word):
    assert word in refused("sample", json.dumps({"points": codes(12), **LIKE, **change}))
