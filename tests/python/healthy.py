"""How near any healthy service comes to the true readings of a service, in meter errors.

What a sound service may be stands here once: level, balance of the lines, ways, joints, offset of the
neutral, loads against their nameplates, drift. The nearest one is a minimax over these, by linear
programs on a nodal solution of its own; nothing is asked of the project.
"""

import itertools

import numpy as np
import services
from scipy.optimize import linprog

# Volts of ANSI C84.1 range B at the service (from memory); the other bounds are ours.
LEVEL = (110.0, 127.0)
UNBALANCE, OFFSET, WAY, JOINT = 0.01, 2.0, (0.005, 0.25), 0.05
NAMEPLATE, DRIFT, BESIDE, LINES = 0.1, 0.01, 20.0 / 120.0**2, 6000.0 / 240.0**2
ROUNDS, SETTLED = 4, 0.01


class Healthy:
    """The healthy services that a survey may have met: bounds of all that is not known."""

    def __init__(self, given):
        self.single = given["service"].startswith("30A")
        coach, states = given["place"] == "coach", given["states"]
        watts = [[state.get("load_1", 0.0), state.get("load_2", 0.0)] for state in states]
        self.loads = np.array(watts) / 120.0**2
        self.read = [(at, *services.PAIRS[pair]) for at, state in enumerate(states) for pair in state["volts"]]
        beside, lines = (BESIDE, 0.0 if self.single else LINES) if coach else (0.0, 0.0)
        self.low, self.high = np.array(
            [LEVEL, (-UNBALANCE, UNBALANCE), (-OFFSET, OFFSET), WAY, *[(0.0, JOINT)] * 3]
            + [(0.0, beside), (0.0, beside), (0.0, lines)]
            + [(-DRIFT, DRIFT) if at else (0.0, 0.0) for at in range(len(states))]
            + [(-NAMEPLATE, NAMEPLATE) if load else (0.0, 0.0) for load in self.loads.ravel()]
        ).T

    def readings(self, many):
        """The signed readings of many services, one row a service."""
        states = len(self.loads)
        level, unbalance, offset, way = many[:, :4].T[..., None]
        off = many[:, 10 + states :].reshape(-1, states, 2)
        line = level * (1.0 + many[:, 10 : 10 + states])
        emf = np.stack([line, -line * (1.0 + unbalance), offset + 0.0 * line], -1)
        ways = np.repeat(1.0 / (way + many[:, 4:7])[:, None], states, 1)
        if self.single:
            ways[..., 1] = 1e-12
        legs = self.loads * (1.0 + off) + many[:, None, 7:9]
        y = ways[..., None] * np.eye(3)
        for a, b, siemens in [(0, 2, legs[..., 0]), (1, 2, legs[..., 1]), (0, 1, many[:, 9, None])]:
            y[..., a, a] += siemens
            y[..., b, b] += siemens
            y[..., a, b] -= siemens
            y[..., b, a] -= siemens
        nodes = np.linalg.solve(y, (ways * emf)[..., None])[..., 0]
        nodes = np.concatenate([nodes, np.zeros((*line.shape, 1))], -1)
        return np.stack([nodes[:, state, a] - nodes[:, state, b] for state, a, b in self.read], -1)

    def nearest(self, true, errors):
        """The largest distance from the nearest healthy service's readings; below 1 the search stops.

        A meter shows no sign. In a healthy service only neutral to ground may have either: it is tried
        both ways in every state, unless the other pairs alone are further than an error away.
        """
        signs = np.array([-1.0 if a == 1 else 1.0 for _, a, b in self.read])
        either = [at for at, (_, a, b) in enumerate(self.read) if (a, b) == (2, 3)]
        plain = [at for at in range(len(signs)) if at not in either]
        bound = self.minimax(true * signs, errors, plain) if plain else 0.0
        if bound > 1.0 or not either:
            return bound
        best = np.inf
        for ways in itertools.product((1.0, -1.0), repeat=len(either)):
            signs[either] = ways
            best = min(best, self.minimax(true * signs, errors, [*range(len(signs))]))
            if best <= 1.0:
                break
        return best

    def minimax(self, true, errors, rows):
        """The least that the largest distance over some readings can be, in meter errors."""
        moving = np.flatnonzero(self.high > self.low)
        width = self.high - self.low
        shares = np.full(len(width), 0.2)
        shares[[1, 2, *range(10, len(width))]] = 0.5
        best = np.inf
        for _ in range(ROUNDS):
            step = np.where(shares > 0.5, -1e-4, 1e-4)
            moved = shares + np.diag(step)[moving]
            many = self.readings(self.low + width * np.vstack([shares, moved]))[:, rows]
            off = (true[rows] - many[0]) / errors[rows]
            before, best = best, min(best, np.max(np.abs(off)))
            if best <= 1.0 or before - best < SETTLED * best:
                break
            slopes = ((many[1:] - many[0]) / step[moving, None]).T / errors[rows, None]
            one = np.ones((len(rows), 1))
            found = linprog(
                np.r_[np.zeros(len(moving)), 1.0],
                A_ub=np.block([[slopes, -one], [-slopes, -one]]),
                b_ub=np.r_[off, -off],
                bounds=[*zip(-shares[moving], 1.0 - shares[moving]), (0.0, None)],
            )
            assert found.success, found.message
            shares[moving] = np.clip(shares[moving] + found.x[:-1], 0.0, 1.0)
        return best
