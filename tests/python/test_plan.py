"""`calc plan` against the optimum of two solvers, HiGHS and OR-Tools CP-SAT, on tasks drawn by seed.

BAYWALK_PLANS sets how many tasks are drawn; half of them with the round on foot.
"""

import json
import os

import pytest

import plans

COUNT = int(os.environ.get("BAYWALK_PLANS", "100"))


@pytest.mark.parametrize("seed", range(COUNT))
def test_the_plan_is_the_optimum_of_both_solvers(calc, seed):
    task = plans.drawn(seed)
    told = calc("plan", **task)
    best = plans.cp_sat(task)
    assert plans.highs(task) == best
    must = {point["code"] for point in task["points"] if point["must"]}
    assert told["proof"] == "best" and told["bound"] == told["worth"]
    assert told["seconds"] == plans.spent(task, told["bays"], told["points"])
    assert must <= set(told["points"])
    assert {p["bay"] for p in task["points"] if p["code"] in told["points"]} == set(told["bays"])
    assert told["worth"] == sum(p["worth"] for p in task["points"] if p["code"] in told["points"])
    if best is None:
        assert told["over"] == told["seconds"] - task["seconds"] > 0
        assert set(told["points"]) == must
        return
    assert told["over"] is None and told["seconds"] <= task["seconds"]
    assert told["worth"] == best


@pytest.mark.parametrize("seed", range(8))
def test_a_bay_left_out_has_the_worth_that_a_solver_finds_with_it_opened(calc, seed):
    task = plans.drawn(seed, points=40, bays=6, minutes=20)
    told = calc("plan", **task)
    assert {out["bay"] for out in told["left_out"]} == {b["code"] for b in task["bays"]} - set(told["bays"])
    for out in told["left_out"]:
        inside = [point for point in task["points"] if point["bay"] == out["bay"]]
        with_it = [
            plans.cp_sat({**task, "points": [{**p, "must": p["must"] or p is one} for p in task["points"]]})
            for one in inside
        ]
        found = max((worth for worth in with_it if worth is not None), default=None)
        if out["why"] == "worth_less":
            assert out["with_it"] >= (found or 0)
            assert out["with_it"] <= told["worth"]
        elif out["why"] == "no_time":
            assert found is None and out["missing"] > 0
        else:
            assert inside == []


def test_nose_to_tail_is_never_worth_more(calc):
    for seed in range(20):
        task = plans.drawn(seed)
        task["points"] = [{**point, "must": False} for point in task["points"]]
        told = calc("plan", **task)
        nose = told["nose_to_tail"]
        assert nose["worth"] <= told["worth"] and nose["seconds"] <= task["seconds"]
        assert nose["seconds"] == plans.spent(task, nose["bays"], nose["points"])


@pytest.mark.parametrize(
    ("change", "word"),
    [
        ({"points": [{"code": "P", "bay": "B9", "seconds": 1, "worth": 1}]}, "B9"),
        ({"points": [{"code": "P", "bay": "B", "seconds": 0, "worth": 1}]}, "0 s"),
        ({"bays": [{"code": "B", "open": 1, "close": 1}] * 2}, "twice"),
        ({"legs": [[0]]}, "table of ways"),
        ({"seconds": 99_999}, "99999 s"),
    ],
)
def test_what_can_not_be_planned_is_refused_with_what_was_found(refused, change, word):
    task = {"seconds": 60, "bays": [{"code": "B", "open": 1, "close": 1}], "points": [], "legs": None}
    assert word in refused("plan", json.dumps({**task, **change}))
