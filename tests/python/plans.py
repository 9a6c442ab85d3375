"""Tasks for a plan, and their best worth by two solvers: HiGHS and OR-Tools CP-SAT."""

import math
import random

import highspy
from ortools.sat.python import cp_model


def drawn(seed, points=None, bays=None, minutes=None, walks=None):
    """A task as `calc plan` takes it; seconds on foot keep the triangle inequality."""
    draw = random.Random(seed)
    count = bays or draw.randint(1, 15)
    points = points or draw.randint(count, 200)
    minutes = minutes or draw.choice([5, 10, 20, 30, 45, 60, 90, 120, 180])
    walks = seed % 2 == 1 if walks is None else walks
    must = draw.choice([0, 0, 0.01, 0.03])
    places = [(draw.uniform(0, 9), draw.uniform(0, 2.5)) for _ in range(count + 1)]
    # At 0.5 m/s, rounded up: rounding up keeps the triangle inequality of the straight lines.
    legs = [[math.ceil(2 * math.dist(a, b)) for b in places] for a in places]
    return {
        "seconds": 60 * minutes,
        "bays": [
            {"code": f"B{n}", "open": draw.randint(20, 240), "close": draw.randint(20, 180)}
            for n in range(count)
        ],
        "points": [
            {
                "code": f"P{n}",
                "bay": f"B{draw.randrange(count)}",
                "seconds": draw.randint(15, 180),
                "worth": draw.randint(1, 400),
                "must": draw.random() < must,
            }
            for n in range(points)
        ],
        "legs": legs if walks else None,
    }


def spent(task, bays, points):
    """The seconds of a round, added up anew."""
    place = {bay["code"]: n + 1 for n, bay in enumerate(task["bays"])}
    stops = [place[code] for code in bays]
    work = sum(task["bays"][n - 1]["open"] + task["bays"][n - 1]["close"] for n in stops)
    work += sum(point["seconds"] for point in task["points"] if point["code"] in points)
    legs = task["legs"]
    return work + (sum(legs[a][b] for a, b in zip([0, *stops], [*stops, 0])) if legs and stops else 0)


def highs(task):
    """The best worth by mixed-integer programming; None where nothing is feasible.

    Rounds are kept in one piece by a flow from the start that leaves one unit in each bay opened.
    """
    model = highspy.Highs()
    model.silent()
    model.setOptionValue("mip_rel_gap", 0.0)
    model.setOptionValue("mip_abs_gap", 0.5)
    count = len(task["bays"])
    opened = [model.addBinary() for _ in range(count)]
    number = {bay["code"]: n for n, bay in enumerate(task["bays"])}
    taken = []
    for point in task["points"]:
        take = model.addVariable(lb=1 if point["must"] else 0, ub=1, type=highspy.HighsVarType.kInteger)
        model.addConstr(take <= opened[number[point["bay"]]])
        taken.append(take)
    used = sum(p["seconds"] * t for p, t in zip(task["points"], taken))
    used += sum((b["open"] + b["close"]) * o for b, o in zip(task["bays"], opened))
    if task["legs"]:
        ways = [(a, b) for a in range(count + 1) for b in range(count + 1) if a != b]
        gone = {way: model.addBinary() for way in ways}
        flow = {way: model.addVariable(lb=0, ub=count) for way in ways}
        for n in range(1, count + 1):
            model.addConstr(sum(gone[n, b] for b in range(count + 1) if b != n) == opened[n - 1])
            model.addConstr(sum(gone[a, n] for a in range(count + 1) if a != n) == opened[n - 1])
            into = sum(flow[a, n] for a in range(count + 1) if a != n)
            out = sum(flow[n, b] for b in range(count + 1) if b != n)
            model.addConstr(into - out == opened[n - 1])
        model.addConstr(sum(gone[0, b] for b in range(1, count + 1)) <= 1)
        for way in ways:
            model.addConstr(flow[way] <= count * gone[way])
            used += task["legs"][way[0]][way[1]] * gone[way]
    model.addConstr(used <= task["seconds"])
    model.maximize(sum(p["worth"] * t for p, t in zip(task["points"], taken)))
    status = model.getModelStatus()
    if status == highspy.HighsModelStatus.kInfeasible:
        return None
    assert status == highspy.HighsModelStatus.kOptimal, status
    return round(model.getInfo().objective_function_value)


def cp_sat(task):
    """The best worth by constraint programming; None where nothing is feasible.

    A loop at the start would let a round skip the start, so it is allowed only where no bay is opened.
    """
    model = cp_model.CpModel()
    count = len(task["bays"])
    opened = [model.new_bool_var("") for _ in range(count)]
    number = {bay["code"]: n for n, bay in enumerate(task["bays"])}
    taken = []
    for point in task["points"]:
        take = model.new_bool_var("")
        model.add_implication(take, opened[number[point["bay"]]])
        if point["must"]:
            model.add(take == 1)
        taken.append(take)
    used = sum(p["seconds"] * t for p, t in zip(task["points"], taken))
    used += sum((b["open"] + b["close"]) * o for b, o in zip(task["bays"], opened))
    if task["legs"]:
        ways = [(a, b) for a in range(count + 1) for b in range(count + 1) if a != b]
        gone = {way: model.new_bool_var("") for way in ways}
        none = model.new_bool_var("")
        loops = [(0, 0, none)] + [(n + 1, n + 1, o.negated()) for n, o in enumerate(opened)]
        for one in opened:
            model.add_implication(none, one.negated())
        model.add_circuit([(a, b, arc) for (a, b), arc in gone.items()] + loops)
        used += sum(task["legs"][a][b] * arc for (a, b), arc in gone.items())
    model.add(used <= task["seconds"])
    model.maximize(sum(p["worth"] * t for p, t in zip(task["points"], taken)))
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    status = solver.solve(model)
    if status == cp_model.INFEASIBLE:
        return None
    assert status == cp_model.OPTIMAL, solver.status_name(status)
    return round(solver.objective_value)
