#!/usr/bin/env python3
"""The rebalancing against SciPy on the same models: SLSQP and COBYLA with their own differences, from several starts.

    python3 rebalance_scipy.py SERVER

SERVER is served_rebalance (tests/oracle/served/rebalance.cpp). Ours may be better; where SciPy is better by more than 1e-6 of the
cost, the test fails. Costs of nothing are compared to 1e-6 squared noticeable differences.
"""
import json
import subprocess
import sys

import numpy
from scipy.optimize import minimize

PROBLEMS = range(200, 320)
RELATIVE, ABSOLUTE = 1e-6, 1e-6
KEPT = 1e-8  # what a limit may be broken by


class Served:
    """One problem at a time, evaluated by the server."""

    def __init__(self, path):
        self.process = subprocess.Popen([path, *map(str, PROBLEMS)], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True)
        self.known = {}

    def next(self):
        self.known = {}
        return json.loads(self.process.stdout.readline())

    def at(self, y):
        key = tuple(y)
        if key not in self.known:
            self.process.stdin.write(" ".join(f"{v:.17g}" for v in y) + "\n")
            self.process.stdin.flush()
            self.known[key] = numpy.array(json.loads(self.process.stdout.readline()))
        return self.known[key]

    def done(self):
        self.process.stdin.write("\n")
        self.process.stdin.flush()


def best_of_scipy(served, least, count):
    """The least cost that keeps every limit, from several starts; None where none was found."""
    limits = len(served.at(least)) - 2
    bounds = [(low, 1.0) for low in least]
    constraints = [{"type": "ineq", "fun": lambda y, i=i: -served.at(y)[2 + i]} for i in range(limits)]
    random = numpy.random.default_rng(count)
    starts = [numpy.maximum(least, share) for share in (0.0, 0.3, 0.7, 1.0)] + [numpy.maximum(least, random.random(len(least))) for _ in range(4)]
    best, where = None, None
    for start in starts:
        for options in ({"method": "SLSQP", "options": {"ftol": 1e-12, "maxiter": 300}},):
            found = minimize(lambda y: served.at(y)[0] + served.at(y)[1], start, bounds=bounds, constraints=constraints, **options)
            y = numpy.clip(found.x, least, 1.0)
            there = served.at(y)
            if not numpy.all(numpy.isfinite(there)):  # nothing of what is measured is left in such a batch
                continue
            if max(there[2:], default=0.0) > KEPT:
                continue
            if best is None or there[0] + there[1] < best:
                best, where = there[0] + there[1], y
    return best, where


def main():
    served = Served(sys.argv[1])
    compared = alike = better = unmet = 0
    worse, largest = [], 0.0
    for number in PROBLEMS:
        problem = served.next()
        least = numpy.array(problem["least"])
        if len(least) == 0:
            served.done()
            continue
        ours, violation = problem["cost"]
        other, where = best_of_scipy(served, least, number)
        served.done()
        if other is None or violation > 1e-4:
            unmet += other is None and violation > 1e-4
            if (other is None) != (violation > 1e-4):
                compared += 1
                if other is not None:
                    worse.append(f"problem {number}: ours breaks a limit by {violation}, SciPy reaches {other:.6f}")
                else:
                    better += 1
            continue
        compared += 1
        gap = ours - other
        largest = max(largest, gap)
        allowed = max(RELATIVE * other, ABSOLUTE)
        if gap > allowed:
            worse.append(f"problem {number}: ours {ours:.8f}, SciPy {other:.8f} at {where}, ours broke {violation:.2g}")
        elif gap < -allowed:
            better += 1
        else:
            alike += 1
    print(f"{compared} problems: {alike} alike, {better} better than SciPy found, {len(worse)} worse, {unmet} that neither can meet; "
          f"SciPy ahead by {largest:.2g} at most")
    print("\n".join(worse))
    return 1 if worse or compared < 75 else 0


if __name__ == "__main__":
    sys.exit(main())
