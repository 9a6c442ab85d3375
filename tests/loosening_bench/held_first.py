"""How well one shape serves lives from the setting on and lives from the day a joint was first found held.

    BAYWALK=target/release/baywalk tests/.venv/bin/python tests/loosening_bench/held_first.py

Joints by known laws; three in four are first seen at an age that nobody knows. All are checked each year for five years.
Told is what `calc pooled` tells with a trait for the first found ones, as the due days have it.
"""

import json
import pathlib
import sys

import numpy as np

sys.path.append(str(pathlib.Path(__file__).parents[1] / "python"))
from conftest import call  # noqa: E402

YEAR, YEARS = 12, 5


def lives(ages, trait):
    """Lives by yearly checks, counted together."""
    years = np.bincount(np.minimum(ages // YEAR, YEARS).astype(int), minlength=YEARS + 1)
    moved = [
        {"group": 0, "traits": [trait], "after": YEAR * n, "by": YEAR * (n + 1), "count": int(count)}
        for n, count in enumerate(years[:YEARS])
        if count
    ]
    return moved + [{"group": 0, "traits": [trait], "after": YEAR * YEARS, "by": None, "count": int(years[YEARS])}]


print("shape  joints            true within 1, 3 years   told")
for shape in (0.6, 1.0, 1.5, 2.5):
    rng = np.random.default_rng(1)
    new = 80 * rng.weibull(shape, 200_000)
    whole, first_seen = 80 * rng.weibull(shape, 200_000), rng.uniform(0, 120, 200_000)
    left = (whole - first_seen)[whole > first_seen]
    asked = [{"group": 0, "traits": [trait], "age": age} for trait in (0.0, 1.0) for age in (YEAR, 3 * YEAR)]
    given = {"lives": lives(new[:500], 0.0) + lives(left[:1500], 1.0), "weak": True, "asked": asked}
    answer = call("pooled", json.dumps(given))
    assert answer.returncode == 0, answer.stderr
    told = [chance["mean"] for chance in json.loads(answer.stdout)["asked"]]
    for name, ages, mean in (("set", new, told[:2]), ("first found held", left, told[2:])):
        true = [np.mean(ages <= years * YEAR) for years in (1, 3)]
        print(f"{shape:<6} {name:<17} {true[0]:.3f}, {true[1]:.3f}             {mean[0]:.3f}, {mean[1]:.3f}")
