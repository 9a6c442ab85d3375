"""Random services with faults, solved by an independent nodal solution.

The circuit is written here from Kirchhoff's and Ohm's laws with numpy; nothing of it is read from
the project. Each conductor of the supply is a source behind its way. What is open leaks to the other
terminals, resistively or through the capacitance of its cable; the meter is a resistor across the
pair that it reads and is off by up to its class, independently at each reading. 120/240 V split phase
and 208Y/120 V are the only published figures (ANSI C84.1 nominal voltages, from memory); the spreads
are ours.
"""

import numpy as np

PAIRS = {"l1_n": (0, 2), "l2_n": (1, 2), "l1_l2": (0, 1), "l1_g": (0, 3), "l2_g": (1, 3), "n_g": (2, 3)}
ONE_LEG = ("l1_n", "l1_g", "n_g")
FAULTS_30 = [
    "healthy", "low_service", "high_service", "weak_neutral", "open_neutral", "weak_leg", "open_leg",
    "line_neutral_swapped", "line_ground_swapped", "open_ground", "neutral_ground_mixed",
]
FAULTS_50 = [*FAULTS_30, "supply_208", "one_leg_adapter"]
CONDUCTOR = {"neutral": 2, "line_1": 0, "line_2": 1}


def decades(rng, least, most):
    return float(np.exp(rng.uniform(np.log(least), np.log(most))))


def source(rng, fault):
    """Phasors behind L1, L2, N and G."""
    level = rng.uniform(111.0, 126.5)
    if fault == "low_service":
        level = rng.uniform(60.0, 109.0)
    if fault == "high_service":
        level = rng.uniform(128.0, 150.0)
    second = level * rng.uniform(0.994, 1.006)
    # The neutral of a shared supply carries the current of others: a volt or so against ground.
    emf = np.array([level, -second, rng.uniform(-1.5, 1.5), 0.0], dtype=complex)
    if fault == "supply_208":
        emf[1] = second * np.exp(2j * np.pi / 3)
    if fault == "one_leg_adapter":
        emf[1] = level
    return emf


def leaks(rng, single):
    """Admittance of what leaks between each pair of terminals; 120 kΩ or more in all."""
    share = rng.dirichlet(np.full(6, 0.7))
    if single:
        share[[1, 2, 4]] = 0.0
    kind = 1j if rng.random() < 0.7 else 1.0
    return kind * share / decades(rng, 1.2e5, 2e7)


def service(rng, fault, single):
    """A service with one fault: sources, ways, the order of conductors, what is open or bonded."""
    made = {
        "emf": source(rng, fault),
        "ohms": rng.uniform(0.005, 0.15) + rng.uniform(0.0, 0.04, 4),
        "order": [0, 1, 2, 3],
        "open": np.array([False, single, False, False]),
        "bond": 0.0,
        "joint": None,
        "at": None,
        "lines": 0.0,
        "beside": rng.uniform(0.0, 15.0, 2) / 120.0**2,
        "leak": leaks(rng, single),
    }
    leg = 0 if single else int(rng.integers(2))
    line = f"line_{leg + 1}"
    if fault in ("weak_neutral", "weak_leg"):
        made["at"] = "neutral" if fault == "weak_neutral" else line
        made["joint"] = decades(rng, 0.2, 200.0)
        made["ohms"][CONDUCTOR[made["at"]]] += made["joint"]
    if fault == "open_neutral":
        made["at"], made["open"][2] = "neutral", True
    if fault == "open_ground":
        made["at"], made["open"][3] = "ground", True
    if fault == "open_leg":
        both = not single and rng.random() < 0.2
        made["at"] = "both_lines" if both else line
        made["open"][[0, 1] if both else [leg]] = True
        if not (both or single) and rng.random() < 0.3:
            # A 240 V load in the coach feeds the open line back from the other.
            made["lines"] = decades(rng, 200.0, 6000.0) / 240.0**2
    if fault in ("line_neutral_swapped", "line_ground_swapped"):
        other = 2 if fault == "line_neutral_swapped" else 3
        made["at"], order = line, made["order"]
        order[leg], order[other] = order[other], order[leg]
    if fault == "neutral_ground_mixed":
        made["at"] = "ground"
        if rng.random() < 0.5:
            made["order"] = [0, 1, 3, 2]
        else:
            made["bond"] = 50.0
    return made


def volts(emf, way, between, pair, ohms):
    """What a meter of some ohms shows at a pair: currents into each node sum to zero."""
    y = np.diag(way + 1e-15).astype(complex)
    for a, b, siemens in [*between, (*pair, 1.0 / ohms)]:
        y[a, a] += siemens
        y[b, b] += siemens
        y[a, b] -= siemens
        y[b, a] -= siemens
    nodes = np.linalg.solve(y, way * emf)
    return abs(nodes[pair[0]] - nodes[pair[1]])


def readings(made, loads, drift, pairs, ohms, coach):
    emf = made["emf"].copy()
    emf[:2] *= 1.0 + drift
    way = np.where(made["open"], 0.0, 1.0 / made["ohms"])
    beside = made["beside"] if coach else np.zeros(2)
    between = [(0, 2, loads[0] + beside[0]), (1, 2, loads[1] + beside[1]), (2, 3, made["bond"])]
    between += [(0, 1, made["lines"] if coach else 0.0)]
    if made["open"].any():
        between += [(*PAIRS[pair], leak) for pair, leak in zip(PAIRS, made["leak"])]
    order = made["order"]
    return {pair: volts(emf[order], way[order], between, PAIRS[pair], ohms) for pair in pairs}


def error(meter, value):
    return meter["percent"] / 100.0 * value + meter["counts"] * meter["resolution"]


def meter_of(rng):
    percent = round(rng.uniform(0.5, 1.5), 2)
    return {"percent": percent, "counts": float(rng.integers(2, 4)), "resolution": 0.1, "input": 10e6}


def plan(rng, single, whole):
    """Watts on each leg, state by state, and how likely each pair is read."""
    one, two = rng.uniform(600.0, 1800.0, 2).round(0)
    states = [(0.0, 0.0), (one, 0.0)] + ([] if single else [(0.0, two)])
    if whole:
        return states, 1.0
    if not single and rng.random() < 0.3:
        return [(one, two)], 0.7
    return [state for state in states if rng.random() < 0.6] or states[:1], 0.7


def survey(rng, fault, single, whole):
    """A survey as the door takes it, the service behind it, and what a meter without error shows."""
    meter, coach = meter_of(rng), bool(rng.random() < 0.7)
    made = service(rng, fault, single)
    planned, likely = plan(rng, single, whole)
    states, shown = [], []
    for at, watts in enumerate(planned):
        loads = [w / 120.0**2 * rng.uniform(0.92, 1.08) for w in watts]
        drift = rng.uniform(-0.008, 0.008) if at else 0.0
        here = [pair for pair in PAIRS if not single or pair in ONE_LEG]
        here = [pair for pair in here if rng.random() < likely] or ["l1_n"]
        true = readings(made, loads, drift, here, meter["input"], coach)
        shown.append(true)
        # Half a count is left for rounding to the last digit.
        off = {p: rng.uniform(-1.0, 1.0) * (error(meter, v) - 0.05) for p, v in true.items()}
        state = {"volts": {p: round(max(0.0, v + off[p]), 1) for p, v in true.items()}}
        state.update({key: w for key, w in zip(("load_1", "load_2"), watts) if w})
        states.append(state)
    kind = "30A-120V" if single else "50A-120/240V"
    given = {"service": kind, "place": "coach" if coach else "outlet", "meter": meter, "states": states}
    return given, made, shown
